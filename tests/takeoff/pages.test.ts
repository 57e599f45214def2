import { expect, it } from 'vitest';
import { readHtmlTables } from '../../src/exchange/index.ts';
import { readListFile } from '../../src/exchange/takeoff/index.ts';
import { ENGLISH } from '../../src/words/index.ts';

it.each(['<table>', '\ufeff\n<TABLE border=1>', '<meta charset="utf-8"><table>', '<div><table>', '<style>td {}</style><table>'])(
  'a page may begin with %s', async (beginning) => {
    const page = `${beginning}<tr><td>Device</td><td>Qty</td></tr><tr><td>Router</td><td>3</td></tr></table>`;
    expect(await readListFile('list.html', new TextEncoder().encode(page), ENGLISH))
      .toMatchObject({ tables: [{ file: 'list.html', cells: [['Device', 'Qty'], ['Router', '3']] }] });
  });

it('the last cell of a table counts though it has no end', () => {
  expect(readHtmlTables('<table><tr><td>Router<td>3</table><table><tr><td>Light sensor<td>4').map(({ cells }) => cells))
    .toEqual([[['Router', '3']], [['Light sensor', '4']]]);
});
