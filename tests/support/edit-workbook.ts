import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { columnLetters } from '../../src/schedule/index.ts';

/** What is entered into a cell of a worksheet; rows and columns from 0. */
export interface CellEdit {
  readonly title: string;
  readonly row: number;
  readonly column: number;
  readonly value: string | number | boolean | null;
}

/**
 * Enters values into cells of a workbook, as a person would, and takes away every figure that its formulas had, so that
 * only a program that works them out has any.
 */
export function editWorkbook(bytes: Uint8Array, edits: readonly CellEdit[]): Uint8Array {
  const parts = unzipSync(bytes);
  const titles = [...strFromU8(parts['xl/workbook.xml']!).matchAll(/<sheet name="([^"]*)"/g)].map(([, title]) => unescaped(title!));
  return zipSync(Object.fromEntries(Object.entries(parts).map(([path, content]) => {
    const number = /^xl\/worksheets\/sheet(\d+)\.xml$/.exec(path)?.[1];
    if (number === undefined) return [path, content];
    const title = titles[Number(number) - 1];
    let text = strFromU8(content).replace(/(<c r="[A-Z]+\d+"[^>]*?)(?: t="\w+")?>(<f>[^<]*<\/f>)<v>[^<]*<\/v>/g, '$1>$2');
    for (const edit of edits.filter((each) => each.title === title)) {
      const place = `${columnLetters(edit.column)}${edit.row + 1}`;
      const cell = new RegExp(`<c r="${place}"( s="\\d+")[^>]*?(?:/>|>.*?</c>)`);
      if (!cell.test(text)) throw new Error(`${edit.title}: there is no cell ${place} to edit.`);
      text = text.replace(cell, (_all, style: string) => `<c r="${place}"${style}${inner(edit.value)}`);
    }
    return [path, strToU8(text)];
  })));
}

function inner(value: CellEdit['value']): string {
  if (value === null) return '/>';
  if (typeof value === 'number') return `><v>${value}</v></c>`;
  if (typeof value === 'boolean') return ` t="b"><v>${Number(value)}</v></c>`;
  return ` t="inlineStr"><is><t>${value.replace(/&/g, '&amp;').replace(/</g, '&lt;')}</t></is></c>`;
}

const unescaped = (text: string) => text.replace(/&lt;/g, '<').replace(/&quot;/g, '"').replace(/&amp;/g, '&');
