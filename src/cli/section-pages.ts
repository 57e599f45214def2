/**
 * The pages, from 1, on which the sections of a load table begin, by the bookmarks of its PDF.
 * @param document as Chromium, Chrome or Edge prints it, in which bookmarks and pages can be read as they stand.
 * @returns `undefined` where it has not as many bookmarks as sections.
 */
export function sectionPages(document: Uint8Array, sections: number): number[] | undefined {
  const text = Buffer.from(document.buffer, document.byteOffset, document.byteLength).toString('latin1');
  const places = new Map(pagesOf(text).map((page, index) => [page, index + 1]));
  // The title of the whole, which holds the others, names its first one.
  const marks = [...text.matchAll(/\n<<\/Title [^\n]*\n\/Dest \[(\d+) 0 R[^\n]*\n((?:\/[^\n]*\n?)*)/g)]
    .filter(([, , others]) => !others!.includes('/First'));
  const pages = marks.map(([, page]) => places.get(page!));
  return pages.length === sections && pages.every((page) => page !== undefined) ? pages : undefined;
}

/** The objects of all pages in their order: a tree, whose root is nobody's kid. */
function pagesOf(text: string): string[] {
  const kids = new Map([...text.matchAll(/\n(\d+) 0 obj\n<<\/Type \/Pages\n[^>]*?\/Kids \[([^\]]*)\]/g)]
    .map(([, node, refs]) => [node!, [...refs!.matchAll(/(\d+) 0 R/g)].map(([, kid]) => kid!)] as const));
  const below = new Set([...kids.values()].flat());
  const walk = (node: string): string[] => kids.get(node)?.flatMap(walk) ?? [node];
  return [...kids.keys()].filter((node) => !below.has(node)).flatMap(walk);
}
