import { html, type TemplateResult } from 'lit';

/** A sentence of which one part stands out, as the tag that it is about; as it is where it has no such part. */
export function standingOut(sentence: string, part: string): TemplateResult {
  const at = part === '' ? -1 : sentence.indexOf(part);
  return at < 0 ? html`${sentence}` : html`${sentence.slice(0, at)}<b>${part}</b>${sentence.slice(at + part.length)}`;
}
