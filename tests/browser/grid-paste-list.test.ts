import { afterEach, beforeEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { mountElement, part, parts, removeElements, said, sample as content, textOf } from './element-mount.ts';
import { paste, putOnClipboard } from './support/clipboard.ts';
import { cellAt, frame, mountGrid, unmountAll } from './support/mount.ts';
import { COLUMN, sample } from './support/sample-content.ts';

beforeEach(() => { localStorage.clear(); });
afterEach(() => { unmountAll(); removeElements(); });

const list = (...lines: string[]): string => `${lines.map((line) => line.replaceAll(' | ', '\t')).join('\r\n')}\r\n`;

test.each([
  ['English', 'Item no | Device | Room | Count', { ref: 'N1', type: 'Lamp', area: 'Loft', qty: 3 }],
  ['German', 'Pos. | Gerät | Raum | Stück', { ref: 'N1', type: 'Lamp', area: 'Loft', qty: 3 }],
  ['French', 'Repère | Appareil | Local | Qté', { ref: 'N1', type: 'Lamp', area: 'Loft', qty: 3 }],
  ['of the sheet among them', 'Ref | Type | Room | Qty', { ref: 'N1', type: 'Lamp', area: 'Loft', qty: 3 }],
  ['in another order', 'Remarks | Type | Bus line | Quantity', { note: 'N1', type: 'Lamp', branch: 'Loft', qty: 3 }],
])('headings of a takeoff choose the columns: %s', async (_which, headings, cells) => {
  const { grid, schedule, messages } = await mountGrid(sample());
  await putOnClipboard(list(headings, 'N1 | Lamp | Loft | 3', 'N2 | Sensor | Loft | 4'));
  await userEvent.click(cellAt(grid, 4, COLUMN.ref));
  await paste();
  await expect.poll(() => schedule.rows('devices').length).toBe(6);
  expect(schedule.rows('devices')[4]!.cells).toEqual(cells);
  expect(messages.at(-1)!.text).toMatch(/^2 rows of 4 columns pasted, 2 of them new; read by the headings /);
});

test.each([
  ['two columns of counts', ['Device | Room | Qty L0 | Qty L1', 'Lamp | Loft | 2 | 3']],
  ['a heading that no column of the sheet has', ['Device | Room | Qty | Make', 'Lamp | Loft | 2 | Y']],
  ['a unit of its own', ['Device | Qty | Unit', 'Lamp | 2 | m']],
  ['a description beside the type', ['Type | Description | Qty', 'X1 | Lamp | 2']],
  ['a draw of the type', ['Type | Draw (mA) | Qty', 'Lamp | 350 | 2']],
  ['a title above the headings', ['Boat house, level 1 | ', 'Device | Qty', 'Lamp | 2']],
  ['no quantity', ['Device | Room', 'Lamp | Loft']],
])('a list that is not plain changes nothing, and the takeoff is offered for it: %s', async (_why, lines) => {
  const { grid, schedule, messages } = await mountGrid(sample());
  const text = list(...lines);
  await putOnClipboard(text);
  await userEvent.click(cellAt(grid, 4, COLUMN.ref));
  await paste();
  await expect.poll(() => messages.length).toBe(1);
  expect(schedule.undoLabel).toBeUndefined();
  expect(messages.at(-1)!.text).toMatch(/^The clipboard holds a list with headings of its own, and not every column/);
  expect(messages.at(-1)!.list?.replace(/\r\n?/g, '\n')).toBe(text.replaceAll('\r\n', '\n'));
});

test.each([
  ['rows stand there', 1, ['Device | Room | Qty', 'Lamp | Loft | 2'], /^The clipboard .* rows stand here already\./],
  ['a count cannot be read', 4, ['Device | Room | Qty', 'Lamp | Loft | 2 pr.'], /^Nothing was pasted, as one cell/],
])('a plain list that cannot go there changes nothing either: %s', async (_why, line, lines, said_) => {
  const { grid, schedule, messages } = await mountGrid(sample());
  await putOnClipboard(list(...lines));
  await userEvent.click(cellAt(grid, line, COLUMN.ref));
  await paste();
  await expect.poll(() => messages.length).toBe(1);
  expect(schedule.undoLabel).toBeUndefined();
  expect(messages.at(-1)!.text).toMatch(said_);
  expect(messages.at(-1)!.list).toBeDefined();
});

test.each([
  ['a total', ['Room | Device | Qty', 'Loft | Lamp | 4', 'Loft | Sensor | 1', 'Total |  | 5']],
  ['a total among headings of the sheet', ['Area | Type | Qty', 'Loft | Lamp | 4', 'Loft | Sensor | 1', ' | Total | 5']],
  ['a blank room below a merged one', ['Room | Device | Qty', 'Loft | Lamp | 4', ' | Sensor | 1']],
  ['a title', ['Device | Qty', 'Level 1 | ', 'Lamp | 4']],
  ['what is done by others', ['Device | Qty | Remarks', 'Lamp | 4 | by others']],
  ['ditto marks', ['Room | Device | Qty', 'Loft | Lamp | 4', '" | " | 6']],
  ['an alias', ['Device | Qty', 'Lamps | 4']],
  ['a table of rooms', ['Device | L0 | L1', 'Lamp | 4 | 5', 'Sensor | 1 | 2']],
])('lines that are not plainly devices change nothing, and the takeoff is offered: %s', async (_why, lines) => {
  const { grid, schedule, messages } = await mountGrid(sample());
  const text = list(...lines);
  await putOnClipboard(text);
  await userEvent.click(cellAt(grid, 4, COLUMN.ref));
  await paste();
  await expect.poll(() => messages.at(-1)?.text).toMatch(/Nothing was pasted\. Read it with Takeoff/);
  expect(schedule.undoLabel).toBeUndefined();
  expect(messages.at(-1)!.list?.replace(/\r\n?/g, '\n')).toBe(text.replaceAll('\r\n', '\n'));
});

test('cells of a page are read as a takeoff reads them: merged rooms are filled, hidden rows are asked about', async () => {
  const { grid, schedule, messages } = await mountGrid(sample());
  const row = (cells: string, more = '') => `<tr${more}>${cells.split('|').map((cell) => `<td>${cell}</td>`).join('')}</tr>`;
  const page = (last: string) => `<table>${row('Room|Device|Qty')}<tr><td rowspan="2">Loft</td><td>Lamp</td><td>3</td></tr>${row('Sensor|4')}${last}</table>`;
  await userEvent.click(cellAt(grid, 4, COLUMN.ref));
  grid.pasteText('Room\tDevice\tQty\nLoft\tLamp\t3\n\tSensor\t4', '', page(''));
  await expect.poll(() => schedule.rows('devices').slice(4).map(({ cells }) => cells)).toEqual([
    { area: 'Loft', type: 'Lamp', qty: 3 }, { area: 'Loft', type: 'Sensor', qty: 4 },
  ]);
  grid.pasteText('Room\tDevice\tQty\nLoft\tLamp\t3\n\tSensor\t4\nBar\tLamp\t9', '', page(row('Bar|Lamp|9', ' style="display:none"')));
  await expect.poll(() => messages.at(-1)?.list).toContain('display:none');
  expect(schedule.rows('devices')).toHaveLength(6);
});

test('rows of devices that look like no headings are pasted as ever', async () => {
  const { grid, schedule } = await mountGrid(sample());
  await putOnClipboard(list('R1 | Room 1 | Floor lamp', 'R2 | Room 2 | Bus sensor'));
  await userEvent.click(cellAt(grid, 4, COLUMN.ref));
  await paste();
  await frame();
  expect(schedule.rows('devices').slice(4).map(({ cells }) => cells)).toEqual([
    { ref: 'R1', area: 'Room 1', type: 'Floor lamp' }, { ref: 'R2', area: 'Room 2', type: 'Bus sensor' },
  ]);
});

const UNCLEAR = list('Device | Qty L0 | Qty L1', 'Lamp | 2 | 3');

test.each([
  ['the button', async (element: Element) => { await userEvent.click(part(element, '[data-offer=takeoff]')!); }],
  ['its key', async () => { await userEvent.keyboard('{F8}'); }],
])('the takeoff that is offered has the pasted list, by %s', async (_how, open) => {
  const element = await mountElement({ content: content() });
  const before = element.value;
  await putOnClipboard(UNCLEAR);
  await element.select('devices', 1, 'ref');
  await paste();
  await expect.poll(() => said(element)).toContain('Nothing was pasted. Read it with Takeoff');
  await open(element);
  await expect.poll(() => parts(element, '.lines tbody tr').length, { timeout: 10_000 }).toBeGreaterThan(1);
  expect(textOf(element, 'elv-takeoff-reader .about')).toBe('The pasted list');
  expect(element.value).toBe(before);
  // It is offered once: what is opened later begins with what is there.
  expect(said(element)).toBe('');
});
