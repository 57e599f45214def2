/** How much a page zooms an element by its styles; 1 where it does not, or where the browser cannot tell. */
export function zoomOf(element: Element): number {
  return (element as { readonly currentCSSZoom?: number }).currentCSSZoom ?? 1;
}
