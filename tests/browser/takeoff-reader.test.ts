import axe from 'axe-core';
import { afterEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { ElvColumnsEvent } from '../../components/takeoff-reader/columns-event.ts';
import { drop, dropFiles, mountElement, part, parts, removeElements, said, sample, textOf } from './element-mount.ts';
import { openWork, paste, press } from './work-support.ts';

afterEach(() => {
  removeElements();
  localStorage.clear();
});

/** Four devices of known types, one like a type, one that is new, one without a quantity. */
const LIST = 'Device\tRoom\tHow many\nLamp\tJetty\t3\nSensor\tJetty\t1\nLamps\tSlip\t2\nWinch\tSlip\t1\nSensor\tSlip\t\n';

const outcomes = (element: Element) => parts(element, '.lines tbody tr').map((row) => row.dataset.outcome);

test('every line of a pasted list is shown with what becomes of it, and the sums balance', async () => {
  const element = await mountElement({ content: sample() });
  await openWork(element, 'takeoff');
  paste(element, LIST);
  await expect.poll(() => outcomes(element)).toEqual(['left-out', 'taken', 'taken', 'undecided', 'taken', 'undecided']);
  // 3 + 1 + 1 are taken; the two of «Lamps» are open.
  expect(textOf(element, 'elv-takeoff-reader .sum')).toBe('Read 7 = taken 5 + left out 0 + undecided 2');
  expect(part(element, '[data-do=take]')!.matches(':disabled')).toBe(true);
  await press(element, '[data-filter=undecided]');
  expect(outcomes(element)).toEqual(['undecided', 'undecided']);
});

test('a name is confirmed once and kept as an alias; the taking is one action', async () => {
  const element = await mountElement({ content: sample() });
  const before = element.value;
  await openWork(element, 'takeoff');
  paste(element, LIST);
  await press(element, '[data-do=confirm]');
  await press(element, '[data-line="6"] [data-do=leave-out]');
  await expect.poll(() => textOf(element, '[data-do=take]')).toBe('Take 7 devices in 4 rows');
  await press(element, '[data-do=take]');
  await expect.poll(() => said(element)).toContain('Takeoff of 7 devices in 4 rows');
  const { schedule } = element;
  expect(schedule.rows('types').map(({ cells }) => [cells.type, cells.aliases])).toEqual([
    ['Lamp', 'Lamps'], ['Sensor', undefined], ['Winch', undefined],
  ]);
  expect(schedule.rows('devices').slice(3).map(({ cells }) => [cells.type, cells.area, cells.qty])).toEqual([
    ['Lamp', 'Jetty', 3], ['Sensor', 'Jetty', 1], ['Lamp', 'Slip', 2], ['Winch', 'Slip', 1],
  ]);
  await userEvent.click(part(element, '[data-offer=undo]')!);
  expect(element.value).toBe(before);
});

test('a decision on a line is taken back, and what is open can be left out at once', async () => {
  const element = await mountElement({ content: sample() });
  await openWork(element, 'takeoff');
  paste(element, LIST);
  await press(element, '[data-do=leave-undecided]');
  await expect.poll(() => textOf(element, 'elv-takeoff-reader .sum'))
    .toBe('Read 7 = taken 5 + left out 2 + undecided 0');
  await press(element, '[data-line="4"] .link');
  await expect.poll(() => outcomes(element)[3]).toBe('undecided');
});

test('what a column holds is chosen, remembered by its headings, and told to the page', async () => {
  const element = await mountElement({ content: sample() });
  const told: ElvColumnsEvent[] = [];
  element.addEventListener('elv-columns', (event) => { told.push(event); });
  const list = 'Device\tBay\tHow many\nLamp\tJetty\t3\n';
  await openWork(element, 'takeoff');
  paste(element, list);
  await expect.poll(() => part(element, '[data-column="1"]')).not.toBeNull();
  await userEvent.selectOptions(part(element, '[data-column="1"]')!, 'note');
  await press(element, '[data-do=take]');
  expect(told.map(({ columns }) => columns)).toEqual([{ 'Device': 'type', 'Bay': 'note', 'How many': 'qty' }]);
  expect(element.schedule.rows('devices').at(-1)!.cells.note).toBe('Jetty');

  await openWork(element, 'takeoff');
  paste(element, list);
  // The list comes again, so that what it makes of the device rows is shown first.
  await press(element, '[data-view=lines]');
  await expect.poll(() => (part(element, '[data-column="1"]') as HTMLSelectElement | null)?.value).toBe('note');
});

test('a page gives back what it remembers', async () => {
  const element = await mountElement({ content: sample() });
  element.takeoffColumns = { Bay: 'area', Stock: 'ignore', Wanted: 'qty' };
  await openWork(element, 'takeoff');
  paste(element, 'Device\tBay\tStock\tWanted\nLamp\tJetty\t9\t3\n');
  await expect.poll(() => parts(element, '.lines select').map((each) => (each as HTMLSelectElement).value))
    .toEqual(['type', 'area', '', 'qty']);
  expect(textOf(element, 'elv-takeoff-reader .sum')).toBe('Read 3 = taken 3 + left out 0 + undecided 0');
});

test('the area takes the place of the sheets, keeps where it was, and goes with Escape or a tab', async () => {
  const element = await mountElement({ content: sample() });
  await openWork(element, 'takeoff');
  expect(part(element, 'elv-sheet-view')!.inert).toBe(true);
  paste(element, LIST);
  await expect.poll(() => outcomes(element)).toHaveLength(6);
  await press(element, '[data-filter=taken]');
  await userEvent.keyboard('{Escape}');
  await element.updateComplete;
  expect(part(element, 'elv-takeoff-reader')!.hidden).toBe(true);
  expect(part(element, 'elv-sheet-view')!.inert).toBe(false);
  await openWork(element, 'takeoff');
  expect(outcomes(element)).toEqual(['taken', 'taken', 'taken']);
  part(element, '[role=tab][aria-selected=true]')!.click();
  await element.updateComplete;
  expect(part(element, 'elv-takeoff-reader')!.hidden).toBe(true);
});

test('each area has a key, also in the grid, and shows where the focus is', async () => {
  const element = await mountElement({ content: sample() });
  await element.select('devices', 1, 'qty');
  for (
    const [keys, tag] of [
      ['{F8}', 'takeoff-reader'], ['{F9}', 'share-out'], ['{Shift>}{F9}{/Shift}', 'sizing-table'],
    ] as const
  ) {
    await userEvent.keyboard(keys);
    await expect.poll(() => part(element, `elv-${tag}`)?.hidden).toBe(false);
    await expect.poll(() => part(element, `elv-${tag}`)!.shadowRoot!.activeElement?.id).toBe('heading');
  }
  await userEvent.keyboard('{Escape}');
  expect(element.shadowRoot!.activeElement?.getAttribute('data-command')).toBe('sizing');
});

test('what cannot be read is said, and nothing changes', async () => {
  const element = await mountElement({ content: sample() });
  const before = element.value;
  await openWork(element, 'takeoff');
  paste(element, 'Device,Qty\n"Lamp,3\n');
  await expect.poll(() => textOf(element, 'elv-takeoff-reader .refused'))
    .toMatch(/was not read\. Nothing changed\..*line 2/i);
  expect(element.value).toBe(before);
});

test('a read-only element offers no takeoff and no sharing, but sizing', async () => {
  const element = await mountElement({ content: sample(), attributes: { readonly: '' } });
  const disabled = (name: string) => part(element, `[data-command=${name}]`)!.matches(':disabled');
  expect([disabled('takeoff'), disabled('shareOut'), disabled('sizing')]).toEqual([true, true, false]);
});

test('an area that changes the schedule closes when nothing may be changed any more', async () => {
  const element = await mountElement({ content: sample() });
  await openWork(element, 'takeoff');
  element.readonly = true;
  await element.updateComplete;
  expect(part(element, 'elv-takeoff-reader')!.hidden).toBe(true);
});

test('an empty sheet of devices and a file that fits no sheet lead to the takeoff', async () => {
  const element = await mountElement();
  await expect.poll(() => part(element, '[data-way=takeoff]')).not.toBeNull();
  await userEvent.click(part(element, '[data-way=takeoff]')!);
  await expect.poll(() => part(element, 'elv-takeoff-reader')?.hidden).toBe(false);
  await userEvent.keyboard('{Escape}');
  drop(element, 'count.csv', 'Gadget,Where to,How many\nWinch,Slip,1\n');
  await expect.poll(() => textOf(element, '.problems'))
    .toContain('If it is a list of counts off drawings, read it with Takeoff.');
});

test('a file is opened by its button', async () => {
  const element = await mountElement({ content: sample() });
  await openWork(element, 'takeoff');
  await userEvent.upload(
    part(element, '.file input')!, new File([LIST], 'jetty.tsv', { type: 'text/tab-separated-values' })
  );
  await expect.poll(() => textOf(element, 'elv-takeoff-reader .about')).toBe('jetty.tsv');
  expect(outcomes(element)).toHaveLength(6);
});

test.each(['light', 'dark'])('axe finds nothing of ours in the three areas: %s', async (scheme) => {
  document.documentElement.style.colorScheme = scheme;
  const element = await mountElement({ content: sample() });
  await openWork(element, 'takeoff');
  await violations(element);
  paste(element, LIST);
  await expect.poll(() => outcomes(element)).toHaveLength(6);
  await violations(element);
  await openWork(element, 'shareOut');
  await expect.poll(() => textOf(element, '.verdict')).toContain('proven');
  await violations(element);
  await openWork(element, 'sizing');
  await expect.poll(() => parts(element, '.sizing tr').length).toBeGreaterThan(1);
  await violations(element);
  document.documentElement.style.colorScheme = '';
});

async function violations(element: Element): Promise<void> {
  const { violations: found } = await axe.run(part(element, '.work:not([hidden])')!, { resultTypes: ['violations'] });
  expect(found.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' ')}`)).toEqual([]);
}

test('several files are read together, those that come later beside the list that is open, and none in silence', async () => {
  const element = await mountElement({ content: sample() });
  await openWork(element, 'takeoff');
  const csv = (name: string, text: string) => new File([text], name);
  dropFiles(element, csv('floor0.csv', 'Device,Room,Qty\nLamp,Jetty,4\nLamps,Jetty,2'), csv('floor1.csv', 'Device,Room,Qty\nLamp,Slip,5'));
  await expect.poll(() => textOf(element, 'elv-takeoff-reader .sum')).toBe('Read 11 = taken 9 + left out 0 + undecided 2');
  expect(textOf(element, 'elv-takeoff-reader .about')).toBe('floor0.csv, floor1.csv');
  expect(parts(element, '.sheets label').map((each) => each.textContent.replace(/\s+/g, ' ').trim())).toEqual(['floor0.csv 6', 'floor1.csv 5']);
  await press(element, '[data-do=confirm]');
  dropFiles(element, csv('floor0.csv', 'Device,Room,Qty\nSensor,Loft,2'), csv('bad.csv', 'Device,Qty\n"Lamp;1'));
  await expect.poll(() => textOf(element, 'elv-takeoff-reader .sum')).toBe('Read 13 = taken 13 + left out 0 + undecided 0');
  expect(textOf(element, 'elv-takeoff-reader .refused b')).toBe('bad.csv was not read. Nothing changed.');
  expect(textOf(element, 'elv-takeoff-reader .decide-on')).toContain('floor0 (2).csv is read beside the list that was open.');
  // The name that was decided on stays decided.
  await press(element, '[data-do=take]');
  await expect.poll(() => element.schedule.rows('devices').slice(3).map(({ cells }) => cells.source))
    .toEqual(['floor0.csv: 2–3 (Lamp › Jetty)', 'floor1.csv: 2 (Lamp › Slip)', 'floor0 (2).csv: 2 (Sensor › Loft)']);
});

test('what is taken into an empty schedule can be read: columns are as wide as their texts', async () => {
  const element = await mountElement({ content: { details: {}, sheets: {} } });
  await openWork(element, 'takeoff');
  paste(element, ['Ref\tRoom\tDevice\tQty', ...Array.from({ length: 12 }, (_, index) => `LEV1-${index + 100}\tSecond floor, Foyer ${index}\tBlind motor\t${index + 1}`)].join('\n'));
  await expect.poll(() => parts(element, '.lines tbody tr').length).toBe(13);
  await press(element, '[data-do=take]');
  await expect.poll(() => element.schedule.rows('devices').length).toBe(12);
  await expect.poll(() => part(element, 'elv-schedule-grid')!.matches(':focus-within')).toBe(true);
  const cells = parts(element, 'elv-schedule-grid .ht_master tbody td').filter((cell) => /LEV1|Foyer|Blind/.test(cell.textContent));
  expect(cells.length).toBeGreaterThan(20);
  for (const cell of cells) expect(cell.scrollWidth, cell.textContent).toBeLessThanOrEqual(cell.clientWidth);
});
