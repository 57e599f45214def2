import { vi } from 'vitest';

/** Files that are handed to the person from now on, in place of a download. `vi.restoreAllMocks` ends it. */
export function savedFiles(): File[] {
  const files: File[] = [];
  let last: Blob | undefined;
  const make = URL.createObjectURL.bind(URL);
  vi.spyOn(URL, 'createObjectURL').mockImplementation((blob) => make(last = blob as Blob));
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function click(this: HTMLAnchorElement) {
    files.push(new File([last!], this.download));
  });
  return files;
}
