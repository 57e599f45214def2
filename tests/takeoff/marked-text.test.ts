import { strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { readHtmlTables } from '../../src/exchange/index.ts';
import { readQuantity } from '../../src/exchange/takeoff/quantity.ts';
import { makeWorkbook } from '../support/make-workbook.ts';
import { read, tablesOfWorkbook } from './support.ts';

/** What becomes of the lines of devices: quantity, outcome, flag and type. */
function outcomes(source: Parameters<typeof read>[0]): string[] {
  return read(source).lines.filter(({ nameKey }) => nameKey !== undefined)
    .map(({ qty, outcome, flag, type }) => `${outcome} ${qty} ${flag ?? '-'} ${type ?? '-'}`);
}

describe('a quantity with a footnote', () => {
  it.each([
    ['4¹', 4], ['12²', 12], ['4 ¹', 4], ['4¹⁾', 4], ['4¹,²', 4], ['12①', 12], ['4₁', 4], ['ca. 4¹', 4], ['2 x 6¹', 12], ['1 200³', 1200],
  ])('%s is proposed to be %d', (text, proposal) => {
    const quantity = readQuantity(text, '', ',');
    expect(quantity).toMatchObject({ qty: proposal, proposal });
    expect(quantity.doubt).toBe(`“${text}” probably means ${proposal}. Confirm it, or say how many there are.`);
  });

  // Half of what is written is no proposal, and a bracket may be that of a footnote.
  it.each([['12½', null], ['½', null], ['¹', null], ['41)', 41], ['10-12¹', null], ['3 + 1½', null], ['12 m²', null]])('%s is none, and nothing is proposed', (text, qty) => {
    const quantity = readQuantity(text);
    expect(quantity).toMatchObject({ qty });
    expect(quantity.proposal).toBeUndefined();
    expect(quantity.doubt).toBe(`“${text}” is not a plain count. Say how many there are.`);
  });

  it('is asked about in a page and in a workbook too, where a format raises the digits', async () => {
    const page = '<table><tr><th>Device<th>Qty</tr><tr><td>Router<td>4<sup>2</sup></tr><tr><td>Light sensor<td>4<sup>1)</sup></tr></table>';
    const asked = ['undecided 4 proposal Router', 'undecided 4 proposal Light sensor'];
    expect(outcomes(readHtmlTables(page))).toEqual(asked);
    expect(outcomes(await tablesOfWorkbook(rich(
      ['4', '<vertAlign val="superscript"/>2'], ['4', '<vertAlign val="subscript"/>1)'])))).toEqual(asked);
  });

  it('keeps what letters say', () => {
    expect(readHtmlTables('<table><tr><td>CO<sub>2</sub> sensor</td><td>1<sup>st</sup> floor</td><td>m<sup>2</sup></td></tr></table>')[0]!.cells)
      .toEqual([['CO₂ sensor', '1st floor', 'm²']]);
  });
});

describe('a part that is struck through', () => {
  const asked = ['undecided 6 proposal Router', 'undecided 3 struck Light sensor', 'undecided 5 struck Router'];
  const rows = (old: (text: string) => string) => [
    ['Device', 'Qty', 'Room'], ['Router', `${old('4')}6`, 'Hall'], [`${old('Router ')}Light sensor`, '3', 'Hall'], [old('Router'), '5', 'Hall'],
  ];

  it.each<[string, (text: string) => string]>([
    ['<s>', (text) => `<s>${text}</s>`], ['<del>', (text) => `<del><b>${text}</b></del>`], ['a font', (text) => `<font style="text-decoration:line-through">${text}</font>`],
    ['a class', (text) => `<span class=x1>${text}</span>`],
  ])('by %s is not read together with the rest', (_, old) => {
    const body = rows(old).map((cells) => `<tr>${cells.map((cell) => `<td>${cell}</td>`).join('')}</tr>`).join('');
    expect(outcomes(readHtmlTables(`<style>.x1 {text-decoration:line-through}</style><table>${body}</table>`))).toEqual(asked);
  });

  it.each([true, false])('of a workbook neither, whether texts are shared (%s) or not', async (isShared) => {
    const book = rich(['<strike/>4', '6'], ['<strike val="1"/>R', '<strike val="0"/>A &amp; B'], ['<strike/>x &lt; y']);
    const own = isShared ? book : inline(['<strike/>4', '6'], ['<strike val="1"/>R', '<strike val="0"/>A &amp; B'], ['<strike/>x &lt; y']);
    const [table] = await tablesOfWorkbook(own);
    expect((table!.cells as string[][]).slice(1).map(([, , text]) => text)).toEqual(['4̶6', 'R̶A & B', 'x < y']);
    expect([...table!.struckRows!]).toEqual([3]);
  });

  it('is said, and what is left is taken by decision', () => {
    const list = 'Device;Qty;Room\nRouter;4̶6;Hall\nRouter;3;H̶a̶l̶l̶ Bar\nLight sensor;7̶;Bar';
    const { lines } = read(list);
    expect(lines[1]!.reason).toContain('“4̶6” probably means 6. Confirm it, or say how many there are.');
    expect(lines[2]!.reason).toContain('“H̶a̶l̶l̶ Bar” is struck through in part. Take what is left of it if it counts, or leave it out.');
    expect(lines[3]).toMatchObject({ outcome: 'undecided', qty: null });
    expect(read(list, { decisions: { lines: { 2: 'take', 3: 'take', 4: 'leave-out' } } }).rows)
      .toEqual([{ type: 'Router', area: 'Hall', qty: 6 }, { type: 'Router', area: 'Bar', qty: 3 }]);
  });
});

/** Texts made of runs; what stands before a text is its format. */
function runs(parts: readonly string[]): string {
  return parts.map((part) => {
    const [, format = '', text = ''] = /^((?:<[^>]*>)*)(.*)$/.exec(part)!;
    return `<r>${format === '' ? '' : `<rPr>${format}</rPr>`}<t xml:space="preserve">${text}</t></r>`;
  }).join('');
}

/** Routers and light sensors with a text of runs as quantity and behind it. */
function rich(...texts: readonly (readonly string[])[]): Uint8Array {
  const plain = ['Device', 'Qty', 'Room', 'Router', 'Light sensor'];
  const shared = [...plain.map((text) => `<t>${text}</t>`), ...texts.map(runs)];
  return workbook((place) => `t="s"><v>${plain.length + place}</v>`, (text) => `t="s"><v>${plain.indexOf(text)}</v>`, texts.length,
    shared.map((text) => `<si>${text}</si>`).join(''));
}

function inline(...texts: readonly (readonly string[])[]): Uint8Array {
  return workbook((place) => `t="inlineStr"><is>${runs(texts[place]!)}</is>`, (text) => `t="inlineStr"><is><t>${text}</t></is>`, texts.length, '');
}

function workbook(
  textAt: (place: number) => string, plain: (text: string) => string, count: number, shared: string,
): Uint8Array {
  const cells = (row: number, ...inner: string[]) =>
    `<row r="${row}">${inner.map((cell, column) => `<c r="${'ABC'[column]!}${row}" ${cell}</c>`).join('')}</row>`;
  const lines = Array.from({ length: count }, (_, place) =>
    cells(place + 2, plain(place % 2 === 0 ? 'Router' : 'Light sensor'), textAt(place), textAt(place)));
  return makeWorkbook({ A: { xml: [cells(1, plain('Device'), plain('Qty'), plain('Room')), ...lines].join('') } }, {
    'xl/sharedStrings.xml': strToU8(`<sst xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">${shared}</sst>`),
  });
}
