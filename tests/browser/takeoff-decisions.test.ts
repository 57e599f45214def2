import { afterEach, beforeEach, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import demo from '../../data/demo.schedule.json?raw';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { makeWorkbook } from '../support/make-workbook.ts';
import { mountElement, part, parts, removeElements, sample, textOf } from './element-mount.ts';
import { openWork, paste, press } from './work-support.ts';

beforeEach(() => { localStorage.clear(); });
afterEach(removeElements);

const list = (...lines: string[]): string => `${lines.map((line) => line.replaceAll(' | ', '\t')).join('\n')}\n`;
const sum = (element: Element) => textOf(element, 'elv-takeoff-reader .sum');
const outcomeOf = (element: Element, line: number) => part(element, `[data-line="${line}"]`)?.dataset.outcome;

async function opened(text: string): Promise<LoadScheduleElement> {
  const element = await mountElement({ content: sample() });
  await openWork(element, 'takeoff');
  paste(element, text);
  await expect.poll(() => parts(element, '.lines tbody tr').length).toBeGreaterThan(1);
  return element;
}

/** Says how many there are on a line that is decided already. */
async function count(element: LoadScheduleElement, line: number, qty: string): Promise<void> {
  await press(element, `[data-line="${line}"] [data-do=change]`);
  await expect.poll(() => part(element, `[data-line="${line}"] input:focus`)).not.toBe(null);
  // What is typed takes the place of what is proposed.
  await userEvent.keyboard(`${qty}{Enter}`);
}

test('every line can be overruled, and the quantities balance whatever is said of them', async () => {
  const element = await opened(list('Device | Room | Qty', 'Lamp | Jetty | 3', 'Sensor | Jetty | 4', 'Total |  | 7', 'Lamp | Slip | 0'));
  expect(sum(element)).toBe('Read 14 = taken 7 + left out 7 (7 in totals) + undecided 0');
  // A line that is taken has another quantity, or does not count.
  await count(element, 2, '5');
  // The total is held against what the list itself says.
  await expect.poll(() => sum(element)).toBe('Read 16 = taken 9 + left out 7 (7 in totals) + undecided 0');
  await press(element, '[data-line="3"] [data-do=change]');
  await press(element, '[data-line="3"] [data-do=leave-out]');
  await expect.poll(() => outcomeOf(element, 3)).toBe('left-out');
  // A line that was left out counts: none of it, what is called a total, and the headings.
  for (const line of [5, 4, 1]) {
    const before = outcomeOf(element, line);
    await count(element, line, '2');
    await expect.poll(() => [before, outcomeOf(element, line)]).toEqual(['left-out', 'taken']);
    if (line === 4) expect(parts(element, '.names [data-state=new]').map((each) => each.dataset.name)).toEqual(['total']);
    await press(element, `[data-line="${line}"] [data-do=anew]`);
  }
  await expect.poll(() => outcomeOf(element, 5)).toBe('left-out');
  await press(element, '[data-line="3"] [data-do=anew]');
  await expect.poll(() => outcomeOf(element, 3)).toBe('taken');
  await press(element, '[data-do=take]');
  expect(element.schedule.rows('devices').slice(3).map(({ cells }) => [cells.type, cells.area, cells.qty]))
    .toEqual([['Lamp', 'Jetty', 5], ['Sensor', 'Jetty', 4]]);
});

const DOUBTFUL = list(
  'Device | Room | Qty | Remarks', 'Lamp | Jetty | 3 + 1 spare | ', 'Sensor | Jetty | 2x3 | ', 'Lamp | Slip | 8 | by others',
  'Sensor | Slip | 5 | ', 'Lamp | Loft | 12 (incl. 2 spare) | ',
);

test('lines of the same doubt are taken alike at once, or one by one', async () => {
  const element = await opened(DOUBTFUL);
  expect(parts(element, '[data-flag]').map((each) => each.dataset.flag)).toEqual(['superseded', 'proposal']);
  // 3 + 1, 2 × 3, and 12 with the spare ones among them.
  expect(textOf(element, '[data-flag=proposal] .name')).toBe('3 quantities are proposed from what is written: 22');
  await press(element, '[data-flag=superseded] [data-do=leave-alike]');
  await expect.poll(() => outcomeOf(element, 4)).toBe('left-out');
  await press(element, '[data-line="3"] [data-do=change]');
  await userEvent.fill(part(element, '[data-line="3"] input')!, '7');
  await press(element, '[data-line="3"] [data-do=count]');
  await expect.poll(() => textOf(element, '[data-flag=proposal] .name')).toBe('2 quantities are proposed from what is written: 16');
  await press(element, '[data-flag=proposal] [data-do=take-alike]');
  // 4 + 7 + 5 + 12; 8 by others.
  await expect.poll(() => sum(element)).toBe('Read 36 = taken 28 + left out 8 + undecided 0');
  expect(parts(element, '[data-flag]')).toEqual([]);
});

test('what was typed for a line is not there for the next one, which proposes the same', async () => {
  const element = await opened(list('Device | Room | Qty', 'Lamp | Jetty | 3 + 1 spare', 'Sensor | Jetty | 3 + 1 spare'));
  const field = () => part(element, '.decide input') as HTMLInputElement;
  expect(field().value).toBe('4');
  await userEvent.fill(field(), '5');
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => part(element, '.decide')!.dataset.line).toBe('3');
  expect(field().value).toBe('4');
});

test('of types that are equally like a name none goes before the others', async () => {
  const element = await mountElement({ content: { ...sample(), sheets: { ...sample().sheets, types: [{ type: 'Button, 2 keys' }, { type: 'Button, 4 keys' }] } } });
  await openWork(element, 'takeoff');
  paste(element, list('Device | Room | Qty', 'Button keys | Jetty | 3'));
  await expect.poll(() => parts(element, '[data-do=confirm]').length).toBe(2);
  await userEvent.click(parts(element, '[data-do=confirm]')[1]!);
  await expect.poll(() => parts(element, '[data-do=confirm]').length).toBe(0);
  expect(outcomeOf(element, 2)).toBe('taken');
});

test('what is decided on keeps its place, and the focus goes on to what is open next, with the keyboard alone', async () => {
  const element = await opened(list('Device | Room | Qty', 'Lamps | Jetty | 3', 'Sensors | Jetty | 4', 'Lamp | Slip | two', 'Winch | Slip | 1'));
  const focused = () => {
    const within = part(element, 'elv-takeoff-reader')!.shadowRoot!.activeElement as HTMLElement | null;
    return within?.dataset.do ?? within?.tagName;
  };
  await expect.poll(focused).toBe('confirm');
  const names = () => parts(element, '.names li').map((each) => each.dataset.name);
  const order = names();
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => parts(element, '.names [data-state=undecided]').length).toBe(1);
  expect(focused()).toBe('confirm');
  await userEvent.keyboard('{Enter}');
  await expect.poll(focused).toBe('INPUT');
  expect(names()).toEqual(order);
  await userEvent.keyboard('2{Enter}');
  await expect.poll(focused).toBe('take');
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => element.schedule.rows('devices').length).toBe(7);
});

test('what a list says of its new types goes to them, and nothing that it does not say', async () => {
  const element = await opened(list(
    'Device | Room | Qty | Draw (mA) | Nodes', 'Winch drive | Jetty | 3 | 250 | 2', 'Winch drive | Slip | 1 | 250 | 1', 'Horn | Slip | 1 |  | ',
  ));
  expect(textOf(element, '[data-name=winchdrive] .facts'))
    .toBe('From the list: Draw (mA): 250. What else is needed stays unknown. Not taken, as its lines disagree: Nodes.');
  expect(textOf(element, '[data-name=horn] .facts')).toBe('The list says nothing of its draw and nodes; they stay unknown.');
  await press(element, '[data-do=take]');
  expect(element.schedule.rows('types').slice(2).map(({ cells }) => cells)).toEqual([
    { type: 'Winch drive', draw: 250, note: 'From a takeoff, with the figures of its list. Check them against the data sheet.' },
    { type: 'Horn', note: 'From a takeoff. Enter its draw or its power, and say where the figure comes from.' },
  ]);
});

const LINES = Array.from({ length: 40 }, (_, index) => [
  'Lamps', `Room ${index + 1} of the boat house, second floor`, index % 3 === 0 ? `${index} + 1 spare` : index + 1, 'in the ceiling',
]);
const HEADINGS = ['Device', 'Room', 'Qty', 'Remarks'];

test.for(['en', 'de', 'fr'].flatMap((lang) => [1, 4].map((sheets) => [lang, sheets] as const)))(
  'at 1280 by 800 at least twelve lines are in view beside what is to decide, in %s with lists: %i', async ([lang, sheets]) => {
    await page.viewport(1280, 800);
    const element = await mountElement({ attributes: { lang } });
    element.value = demo;
    await expect.poll(() => element.schedule.rows('devices').length).toBeGreaterThan(100);
    element.style.blockSize = '800px';
    await openWork(element, 'takeoff');
    const rows = [HEADINGS, ...LINES, ['Winch', 'Slip', 'two', '']];
    if (sheets === 1) paste(element, list(...rows.map((row) => row.join(' | '))));
    else {
      const names = ['Ground floor', 'First floor', 'Second floor', 'Roof'];
      const book = makeWorkbook(Object.fromEntries(names.map((name) => [name, { rows }])));
      await userEvent.upload(part(element, '.file input')!, new File([book], 'four.xlsx'));
    }
    await expect.poll(() => parts(element, '.lines tbody tr').length).toBe(Math.min(200, 42 * sheets));
    const [scroll, aside, decide] = ['.scroll', '.names', '.decide'].map((each) => part(element, each)!.getBoundingClientRect());
    const head = part(element, '.lines thead')!.getBoundingClientRect().bottom;
    const inView = parts(element, '.lines tbody tr').filter((row) => {
      const { top, bottom } = row.getBoundingClientRect();
      return top >= head - 1 && bottom <= scroll!.bottom;
    });
    expect(inView.length).toBeGreaterThanOrEqual(12);
    // Names to decide on, and the line that is, with what a person can say of it, stand beside them.
    expect(Math.min(aside!.left, decide!.left)).toBeGreaterThanOrEqual(scroll!.right);
    expect(decide!.bottom).toBeLessThanOrEqual(scroll!.bottom + 1);
    expect(part(element, '.decide')!.scrollHeight).toBeLessThanOrEqual(part(element, '.decide')!.clientHeight);
    expect(part(element, '.why')!.getBoundingClientRect().right).toBeLessThanOrEqual(scroll!.right + 1);
  });

test('the line that is decided on is told in full beside the list, and none of the others moves', async () => {
  const element = await opened(DOUBTFUL);
  const tops = () => parts(element, '.lines tbody tr').map((row) => Math.round(row.getBoundingClientRect().top));
  const before = tops();
  expect(textOf(element, '.decide h3')).toBe('Line 2: Lamp, Jetty, 3 + 1 spare');
  expect(parts(element, '[data-open]').map((row) => row.dataset.line)).toEqual(['2']);
  await press(element, '[data-line="4"] [data-do=change]');
  await expect.poll(() => textOf(element, '.decide h3')).toBe('Line 4: Lamp, Slip, 8, by others');
  expect(textOf(element, '.decide p')).toContain('It says “by others”. Take it if it counts all the same, or leave it out.');
  expect(tops()).toEqual(before);
  await press(element, '.decide [data-do=leave-out]');
  // The next that waits.
  await expect.poll(() => textOf(element, '.decide h3')).toBe('Line 2: Lamp, Jetty, 3 + 1 spare');
  expect(tops()).toEqual(before);
});
