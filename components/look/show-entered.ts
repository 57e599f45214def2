/** Shows in a field that got the focus what was entered in it, to be typed over, in place of how that is read. */
export function showEntered(field: HTMLInputElement, entered: string): void {
  field.value = entered;
  field.select();
}
