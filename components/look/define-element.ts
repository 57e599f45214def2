/** Defines an element unless the page has one of that name already. */
export function defineElement(tag: string, element: CustomElementConstructor): void {
  if (customElements.get(tag) === undefined) customElements.define(tag, element);
}
