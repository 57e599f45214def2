import type { Report } from './model/index.ts';

/** Sizes and ways round of paper that the load table is laid out for. */
export const PAPERS = ['A4-landscape', 'A4-portrait', 'A3-landscape', 'A3-portrait'] as const;
export type Paper = (typeof PAPERS)[number];

/** What stands at the foot of each printed page: what it is, when and by what it was made, which schedule, which page of how many. */
export function pageStyles({ title, subject, details, issue }: Report, paper: Paper | undefined): string {
  const revision = details.find((detail) => detail.title === 'Revision')?.text ?? '';
  const what = [title, subject, ...(revision === '' ? [] : [`revision ${revision}`])].filter((part) => part !== '').join(' – ');
  const lines = [what, `Generated ${issue.generated} by ${issue.software}`, `SHA-256 of the schedule ${issue.digest}`];
  return `@page {
  ${paper === undefined ? '' : `size: ${paper.replace('-', ' ')};`}
  margin: 11mm 11mm 17mm;
  @bottom-left { content: ${lines.map(cssText).join(' "\\a" ')}; width: 84%; }
  @bottom-right { content: 'Page ' counter(page) ' of ' counter(pages); width: 16%; text-align: right; }
}
${paper === undefined || paper === 'A4-portrait' ? '' : '@media print { table:not(.widest) td.short { white-space: nowrap; } }\n'}`;
}

/** A text as a string of CSS, safe inside a style element. */
function cssText(text: string): string {
  return `"${text.replace(/[^\p{L}\p{N} .,:()–-]/gu, (sign) => `\\${sign.codePointAt(0)!.toString(16)} `)}"`;
}
