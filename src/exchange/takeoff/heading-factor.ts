/**
 * How often what a heading stands over is there: 3 for «Flat type A (x3)» and «3 × Flat A»; 1 for others, also for a
 * size such as «2 x 3 m».
 */
export function headingFactor(heading: string): number {
  const found = /(?<![^\s(])(?:(?<!\d\s?)[x×]\s?(\d{1,3})|(\d{1,3})\s?[x×](?!\s?\d))(?![^\s):])/iu.exec(heading);
  return Number(found?.[1] ?? found?.[2] ?? 1);
}
