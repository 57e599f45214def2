import type { Report } from './model/index.ts';
import type { Paper } from './paper.ts';
import type { Words } from '../words/index.ts';

/** On narrow paper long headings take smaller type; elsewhere short texts stay on one line. */
const NARROW = '@media print { table.long { font-size: 6.5pt; } table.long :is(th, td) { padding: 0.5mm 0.7mm; } }\n';
const ROOMY = '@media print { table:not(.widest) td.short { white-space: nowrap; } }\n';

/**
 * What stands at the foot of each printed page: what it is, when and by what it was made, which schedule, which page of
 * how many.
 */
export function pageStyles({ words, title, subject, details, issue }: Report, paper: Paper | undefined): string {
  const revision = details.find(({ key }) => key === 'revision')?.text ?? '';
  const what = [title, subject, ...(revision === '' ? [] : [words.say('revision {revision}', { revision })])]
    .filter((part) => part !== '').join(' – ');
  const lines = [
    what, words.say('Generated {date} by {software}', { date: issue.generated, software: issue.software }),
    `${words.say('SHA-256 of the schedule')} ${issue.digest}`,
  ];
  return `@page {
  ${paper === undefined ? '' : `size: ${paper.replace('-', ' ')};`}
  margin: 11mm 11mm 17mm;
  @bottom-left { content: ${lines.map(cssText).join(' "\\a" ')}; width: 84%; }
  @bottom-right { content: ${pageNumber(words)}; width: 16%; text-align: right; }
}
${paper === undefined ? '' : paper === 'A4-portrait' ? NARROW : ROOMY}`;
}

/** The number of a page and how many there are, which only the printer knows, as CSS. */
function pageNumber(words: Words): string {
  const parts = words.say('Page {page} of {pages}', { page: '|page|', pages: '|pages|' })
    .split('|').filter((part) => part !== '');
  return parts.map((part) => part === 'page' || part === 'pages' ? `counter(${part})` : cssText(part)).join(' ');
}

/** A text as a string of CSS, safe inside a style element. */
function cssText(text: string): string {
  return `"${text.replace(/[^\p{L}\p{N} .,:()–-]/gu, (sign) => `\\${sign.codePointAt(0)!.toString(16)} `)}"`;
}
