import { afterEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import type { ElvLoadEvent } from '../../components/load-schedule/events.ts';
import type { Cells, SheetName } from '../../src/schedule/index.ts';
import { drop, mountElement, openSheet, part, parts, removeElements, said, sample, textOf } from './element-mount.ts';

afterEach(removeElements);

const rows = (element: LoadScheduleElement, sheet: SheetName) => element.schedule.rows(sheet).map(({ cells }) => cells);
const focused = () => {
  let at = document.activeElement;
  while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
  return at as HTMLElement;
};
const asked = async (element: Element) => {
  await expect.poll(() => part(element, 'elv-rows-offer [data-do=take]')).not.toBe(null);
};
/** A CSV file that a person chooses with CSV in. */
async function csvIn(element: LoadScheduleElement, name: string, text: string) {
  const button = part(element, '[data-command=csvIn]')!;
  button.focus();
  const field = part(element, 'input[type=file]') as HTMLInputElement;
  field.click = () => undefined;
  await userEvent.keyboard('{Control>}i{/Control}');
  const transfer = new DataTransfer();
  transfer.items.add(new File([text], name));
  field.files = transfer.files;
  field.dispatchEvent(new Event('change'));
  return button;
}

test('a CSV file for a sheet that has rows asks: what its tags name is updated, by keys alone, as one action', async () => {
  const element = await mountElement({ content: sample() });
  const loads: ElvLoadEvent[] = [];
  element.addEventListener('elv-load', (event) => { loads.push(event); });
  await openSheet(element, 'types');
  const before = element.value;
  const button = await csvIn(element, 'office.csv', 'Type,Draw (mA),Note\nLamp,300,\nBlind,90,new\n');
  await asked(element);
  expect(textOf(element, 'elv-rows-offer h3')).toBe('office.csv has 2 rows for Types, where there are 2. What becomes of them?');
  expect(parts(element, 'elv-rows-offer .ways label').map((each) => each.textContent.replace(/\s+/g, ' ').trim())).toEqual([
    'Update by tag (1 changed, 1 new, 1 not in the list)', 'Append (behind the 2 rows that are there)',
    'Replace (the 2 rows that are there go)',
  ]);
  expect(textOf(element, 'elv-rows-offer tbody')).toBe('LampDraw350.0 mA300.0 mA');
  expect(element.value).toBe(before);
  expect((focused() as HTMLInputElement).value).toBe('update');
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => rows(element, 'types')).toEqual([
    { ...sample().sheets.types![0], draw: 300 }, sample().sheets.types![1], { type: 'Blind', draw: 90, note: 'new' },
  ]);
  expect(said(element)).toContain('Types updated from office.csv: 1 changed, 1 new, 1 not in the list');
  expect(loads.map(({ name, sheet }) => [name, sheet])).toEqual([['office.csv', 'types']]);
  expect(part(element, 'elv-rows-offer')).toBe(null);
  expect(focused()).toBe(button);
  element.undo();
  expect(element.value).toBe(before);
});

test('Escape leaves everything as it is and gives the focus back', async () => {
  const element = await mountElement({ content: sample() });
  const before = element.value;
  const button = await csvIn(element, 'more.csv', 'Ref;Qty\nD1;9\n');
  await asked(element);
  await userEvent.keyboard('{ArrowDown}{ArrowDown}{Escape}');
  await expect.poll(() => part(element, 'elv-rows-offer')).toBe(null);
  expect([element.value, element.schedule.undoLabel, focused()]).toEqual([before, undefined, button]);
});

test('a CSV file that is dropped goes to the sheet whose headings it has; rows are appended or replaced as one says', async () => {
  const element = await mountElement({ content: sample() });
  const tags = () => rows(element, 'supplies').map(({ rail }) => rail);
  const csv = 'Rail;Rated (A)\nX1;2,5\nX2;5\n';
  drop(element, 'rails.csv', csv);
  await asked(element);
  expect(part(element, '[aria-selected=true]')!.dataset.sheet).toBe('supplies');
  // None of its tags stands there: nothing to update.
  expect((focused() as HTMLInputElement).value).toBe('append');
  part(element, 'elv-rows-offer [data-do=take]')!.click();
  await expect.poll(tags).toEqual(['L1', 'L2', 'L3', 'X1', 'X2']);
  await expect.poll(() => said(element)).toContain('2 rows from rails.csv added to 3');
  part(element, '[data-offer=undo]')!.click();
  expect(tags()).toEqual(['L1', 'L2', 'L3']);
  drop(element, 'rails.csv', csv);
  await asked(element);
  await userEvent.keyboard('{ArrowDown}{Enter}');
  await expect.poll(tags).toEqual(['X1', 'X2']);
  await expect.poll(() => said(element)).toContain('2 rows from rails.csv in place of 3');
});

test('rows from before that a formula names stand beside those of a file that bear their tags', async () => {
  const { sheets } = sample();
  const outputs = [{ output: 'K1', power: '=[devices.qty@D1]*20' }];
  const element = await mountElement({ content: { details: {}, sheets: { ...sheets, outputs } } });
  drop(element, 'devices.csv', 'ref;type;qty;rail\nD1;Lamp;9;L1\n');
  await asked(element);
  await userEvent.keyboard('{ArrowDown}{Enter}');
  await expect.poll(() => rows(element, 'devices').map(({ ref }) => ref)).toEqual(['D1', 'D2', 'D3', 'D1']);
  // The D1 of before: 2 × 20.
  expect(element.schedule.value('outputs', 0, 'power')).toBe(40);
});

test('a formula of a person stays unless its cell is chosen, and any other cell can be left', async () => {
  const types: Cells[] = [{ type: 'Lamp', draw: '=50*7', nodes: 1 }, { type: 'Bell', draw: 5 }];
  const element = await mountElement({ content: { details: {}, sheets: { types } } });
  const csv = 'Type,Draw (mA),Nodes\nLamp,300,2\nBell,6,\n';
  const boxes = () => parts(element, 'elv-rows-offer tbody input') as HTMLInputElement[];
  drop(element, 'office.csv', csv);
  await asked(element);
  expect(boxes().map(({ ariaLabel, checked }) => [ariaLabel, checked]))
    .toEqual([['Take Draw of Lamp', false], ['Take Nodes of Lamp', true], ['Take Draw of Bell', true]]);
  boxes()[2]!.click();
  part(element, 'elv-rows-offer [data-do=take]')!.click();
  await expect.poll(() => rows(element, 'types')).toEqual([{ type: 'Lamp', draw: '=50*7', nodes: 2 }, { type: 'Bell', draw: 5 }]);
  drop(element, 'office.csv', csv);
  await asked(element);
  boxes()[0]!.click();
  part(element, 'elv-rows-offer [data-do=take]')!.click();
  await expect.poll(() => rows(element, 'types')).toEqual([{ type: 'Lamp', draw: 300, nodes: 2 }, { type: 'Bell', draw: 6 }]);
});

test('what a list changes follows what is done meanwhile, and rows that name nothing are told by line', async () => {
  const element = await mountElement({ content: sample() });
  drop(element, 'office.csv', 'Type,Draw (mA)\nLamp,300\n,5\n');
  await asked(element);
  expect(textOf(element, 'elv-rows-offer .left-out')).toBe('Line 3: it has no Type, which would name its row. Enter one.');
  element.schedule.act('Draw', [{ op: 'set', sheet: 'types', id: 0, key: 'draw', value: 300 }]);
  await expect.poll(() => textOf(element, 'elv-rows-offer label')).toContain('0 changed, 0 new, 1 not in the list, 1 left out');
  expect(part(element, 'elv-rows-offer tbody')).toBe(null);
});

test('a sheet without rows takes a file at once, and CSV in takes that sheet of a schedule file', async () => {
  const element = await mountElement({ content: { details: {}, sheets: {} } });
  drop(element, 'types.csv', 'Type,Draw (mA)\nLamp,300\n');
  await expect.poll(() => rows(element, 'types')).toEqual([{ type: 'Lamp', draw: 300 }]);
  const office = { format: 'elv-load-schedule', version: 2, sheets: { types: [{ type: 'Lamp', draw: 310 }], devices: [{ ref: 'D9' }] } };
  await csvIn(element, 'office.schedule.json', JSON.stringify(office));
  await asked(element);
  part(element, 'elv-rows-offer [data-do=take]')!.click();
  await expect.poll(() => [rows(element, 'types'), rows(element, 'devices')]).toEqual([[{ type: 'Lamp', draw: 310 }], []]);
  await openSheet(element, 'contacts');
  await csvIn(element, 'office.schedule.json', JSON.stringify(office));
  await expect.poll(() => textOf(element, '.problems li')).toBe('It has no rows on the sheet Contacts. Choose another file.');
});

test('a question is gone when something else is opened, or nothing may be changed any more', async () => {
  const element = await mountElement({ content: sample() });
  drop(element, 'office.csv', 'Type,Draw (mA)\nLamp,300\n');
  await asked(element);
  await element.openFile({ name: 'x.schedule.json', text: JSON.stringify({ format: 'elv-load-schedule', version: 2, sheets: { types: [{ type: 'Y' }] } }) });
  await element.updateComplete;
  expect(part(element, 'elv-rows-offer')).toBe(null);
  drop(element, 'office.csv', 'Type,Draw (mA)\nY,300\n');
  await asked(element);
  element.readonly = true;
  await element.updateComplete;
  expect(part(element, 'elv-rows-offer')).toBe(null);
});
