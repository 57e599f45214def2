/** How often what a heading stands over is there: 3 for «Flat type A (x3)» and «3 × Flat A»; else 1. */
export function headingFactor(heading: string): number {
  const found = /(?<![^\s(])(?:[x×]\s?(\d{1,3})|(\d{1,3})\s?[x×])(?![^\s):])/iu.exec(heading);
  return Number(found?.[1] ?? found?.[2] ?? 1);
}
