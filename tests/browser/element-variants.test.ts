import axe from 'axe-core';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { writeSchedule } from '../../src/exchange/index.ts';
import { withoutVariants } from '../../src/report/index.ts';
import { freshKey, kept } from './draft-support.ts';
import { mountElement, openSheet, part, parts, removeElements, said, sample, textOf } from './element-mount.ts';
import { openWork, press } from './work-support.ts';

vi.setConfig({ testTimeout: 120_000 });
beforeEach(() => { localStorage.clear(); });
afterEach(removeElements);

const plain = (element: LoadScheduleElement) => writeSchedule(withoutVariants(element.schedule.content()));
const names = (element: LoadScheduleElement) => element.schedule.document.variants.map(({ name }) => name);
const bar = (selector: string) => `elv-trial-bar ${selector}`;
const figures = (element: LoadScheduleElement, row: string, key: string) => parts(element, `[data-row="${row}"] [data-key=${key}] td`)
  .map(({ textContent }) => textContent.replace(/\s+/g, ' ').trim());

/** Begins to try something out, by keys. */
async function begin(element: LoadScheduleElement): Promise<void> {
  part(element, '[data-sheet=devices]')!.focus();
  await userEvent.keyboard('{Shift>}{F6}{/Shift}');
  await expect.poll(() => part(element, 'elv-variants')?.hidden).toBe(false);
  await press(element, '[data-do=begin]');
  await expect.poll(() => part(element, bar('[data-do=leave]'))).not.toBeNull();
}

/** Types a rating of the first supply, as a person does. */
async function rate(element: LoadScheduleElement, rated: string): Promise<void> {
  await openSheet(element, 'supplies');
  await element.select('supplies', 1, 'rated');
  await userEvent.keyboard(`${rated}{Enter}`);
}

test('a rating is tried out: before and after are seen, nothing counts before it is taken over, and undo takes that back', async () => {
  const element = await mountElement({ content: sample() });
  const before = plain(element);
  const csv = await element.exportCsv('supplies');
  await begin(element);
  await rate(element, '2');
  // L1 is asked for 1.16 A: 116 % of 1 A, 58 % of 2 A.
  await expect.poll(() => textOf(element, bar('[data-count=over]'))).toMatch(/^\d+ → \d+ over limit$/);
  await expect.poll(() => names(element)).toEqual(['Variant 1']);
  expect(plain(element)).toBe(before);
  expect(await element.exportCsv('supplies')).toBe(csv);
  const { sheets } = JSON.parse(element.value) as { sheets: { supplies: { rated: number }[] } };
  expect(sheets.supplies[0]!.rated).toBe(1);
  await userEvent.fill(part(element, bar('input'))!, 'Larger supply');
  await userEvent.keyboard('{Enter}');
  await userEvent.click(part(element, bar('[data-do=compare]'))!);
  await expect.poll(() => figures(element, 'supplies/L1', 'loading').slice(-4)).toEqual(['Loading', '116 %', '58 %', '−58 points']);
  expect(names(element)).toEqual(['Larger supply']);
  expect(textOf(element, '[data-row="supplies/L1"] .moved')).toBe('over limit → within limits');
  expect(part(element, '[data-row="supplies/L2"]')).toBeNull();
  await userEvent.click(part(element, 'elv-variants .all input')!);
  await expect.poll(() => part(element, '[data-row="supplies/L2"]')).not.toBeNull();
  await press(element, '[data-do=takeOver]');
  await expect.poll(() => element.schedule.rows('supplies')[0]!.cells.rated).toBe(2);
  expect(names(element)).toEqual([]);
  await expect.poll(() => part(element, 'elv-trial-bar')).toBeNull();
  await expect.poll(() => said(element)).toContain('Variant “Larger supply” taken over');
  await userEvent.keyboard('{Control>}z{/Control}');
  await expect.poll(() => plain(element)).toBe(before);
  expect(names(element)).toEqual(['Larger supply']);
  // However often it was kept, that is one action.
  await userEvent.keyboard('{Control>}z{/Control}');
  await expect.poll(() => names(element)).toEqual([]);
  expect(element.undo()).toBeUndefined();
});

test('undo while something is tried out takes back what was tried, and leaves the schedule alone', async () => {
  const element = await mountElement({ content: sample() });
  await begin(element);
  await rate(element, '2');
  await expect.poll(() => names(element)).toEqual(['Variant 1']);
  await userEvent.keyboard('{Control>}z{/Control}');
  await expect.poll(() => textOf(element, bar('[data-count=over]'))).not.toContain('→');
  await expect.poll(() => names(element)).toEqual([]);
  await userEvent.click(part(element, bar('[data-do=leave]'))!);
  await expect.poll(() => part(element, 'elv-trial-bar')).toBeNull();
  expect(element.schedule.undoLabel).toBeUndefined();
});

test('what hands the schedule out waits, and says so; leaving shows the schedule with the variant kept', async () => {
  const element = await mountElement({ content: sample() });
  await begin(element);
  await rate(element, '2');
  await userEvent.click(part(element, '[data-command=loadTable]')!);
  await expect.poll(() => said(element)).toContain('Take over what you try out, or leave it, and ask again.');
  expect(part(element, 'elv-load-table')).toBeNull();
  await userEvent.click(part(element, bar('[data-do=leave]'))!);
  await expect.poll(() => part(element, 'elv-trial-bar')).toBeNull();
  expect(names(element)).toEqual(['Variant 1']);
  await expect.poll(() => said(element)).toContain('“Variant 1” is kept under “Variants”, and nothing of it counts.');
  expect(part(element, '[data-command=variants]')!.title).toBe('Variants: 1 is kept (Shift+F6)');
  await expect.poll(() => textOf(element, 'elv-schedule-grid tbody')).toContain('1.00');
  await openWork(element, 'loadTable');
});

test('two variants are compared, one is gone on with, renamed and dropped', async () => {
  const element = await mountElement({ content: sample() });
  for (const rated of ['2', '4']) {
    await begin(element);
    await rate(element, rated);
    await userEvent.click(part(element, bar('[data-do=leave]'))!);
    await expect.poll(() => part(element, 'elv-trial-bar')).toBeNull();
  }
  expect(names(element)).toEqual(['Variant 1', 'Variant 2']);
  await openWork(element, 'variants');
  await userEvent.selectOptions(part(element, 'elv-variants [data-part=against]')!, 'Variant 1');
  await expect.poll(() => figures(element, 'supplies/L1', 'loading').slice(-4)).toEqual(['Loading', '58 %', '29 %', '−29 points']);
  await userEvent.fill(part(element, 'elv-variants [data-part=name]')!, 'Variant 1');
  await userEvent.keyboard('{Tab}');
  await expect.poll(() => textOf(element, 'elv-variants [role=alert]')).toContain('write another one');
  await userEvent.fill(part(element, 'elv-variants [data-part=name]')!, 'Very large');
  await userEvent.keyboard('{Tab}');
  await expect.poll(() => names(element)).toEqual(['Variant 1', 'Very large']);
  await press(element, '[data-do=goOn]');
  await expect.poll(() => (part(element, bar('input')) as HTMLInputElement | null)?.value).toBe('Very large');
  await rate(element, '5');
  await expect.poll(() => element.schedule.document.variants[1]!.tried.sheets.supplies![0]!.rated).toBe(5);
  await userEvent.click(part(element, bar('[data-do=drop]'))!);
  await expect.poll(() => names(element)).toEqual(['Variant 1']);
  expect(element.undo()).toContain('dropped');
  expect(names(element)).toEqual(['Variant 1', 'Very large']);
});

test('of what is not known it is not said that it does not differ', async () => {
  const { details, sheets } = sample();
  const devices = [...sheets.devices!, { ref: 'D4', qty: 1, rail: 'L2' }];
  const element = await mountElement({ content: { details, sheets: { ...sheets, devices } } });
  await begin(element);
  // How many there are of a device that nobody knows the draw of changes no figure that is known.
  await openSheet(element, 'devices');
  await element.select('devices', 'D4', 'qty');
  await userEvent.keyboard('9{Enter}');
  await userEvent.click(part(element, bar('[data-do=compare]'))!);
  await expect.poll(() => textOf(element, 'elv-variants .sum'))
    .toMatch(/No row differs in status or in the figures that are compared .* Of \d+ rows not everything is known: more of them may differ\.$/);
});

test('what schedule and variant both changed is decided before it is taken over', async () => {
  const element = await mountElement({ content: sample() });
  await begin(element);
  await rate(element, '2');
  await userEvent.click(part(element, bar('[data-do=leave]'))!);
  await expect.poll(() => part(element, 'elv-trial-bar')).toBeNull();
  await rate(element, '3');
  await expect.poll(() => element.schedule.rows('supplies')[0]!.cells.rated).toBe(3);
  await openWork(element, 'variants');
  await expect.poll(() => (part(element, 'elv-variants [data-do=takeOver]') as HTMLButtonElement).disabled).toBe(true);
  expect(textOf(element, 'elv-variants .sum')).toContain('Where nothing is decided yet, the value of the schedule is in these figures.');
  expect(textOf(element, 'elv-variants [data-conflict]')).toBe(
    'Supplies, L1, RatedBoth changed it since the variant was kept, each in a way of its own. 1.00 A3.00 A2.00 A ScheduleVariant');
  await userEvent.click(part(element, 'elv-variants [data-choice=theirs]')!);
  await press(element, '[data-do=takeOver]');
  await expect.poll(() => element.schedule.rows('supplies')[0]!.cells.rated).toBe(2);
});

test('a page that goes keeps what is tried out in its draft, and shows it as a variant when it comes again', async () => {
  const key = freshKey();
  // The page gives the same both times, or the draft would be offered and not shown.
  const src = URL.createObjectURL(new Blob([writeSchedule(sample())], { type: 'application/json' }));
  const element = await mountElement({ attributes: { 'storage-key': key, src } });
  await expect.poll(() => element.schedule.rows('supplies').length).toBeGreaterThan(0);
  await begin(element);
  await rate(element, '2');
  element.remove();
  await expect.poll(async () => (await kept(key)).length).toBeGreaterThan(0);
  const again = await mountElement({ attributes: { 'storage-key': key, src } });
  await expect.poll(() => names(again)).toEqual(['Variant 1']);
  expect(again.schedule.rows('supplies')[0]!.cells.rated).toBe(1);
  expect(again.schedule.document.variants[0]!.tried.sheets.supplies![0]!.rated).toBe(2);
});

test.each([['en', 1280], ['de', 1280], ['fr', 390], ['en', 390]] as const)('bar and area pass the checks of access, in %s at %d', async (lang, width) => {
  const element = await mountElement({ content: sample(), attributes: { lang } });
  element.style.inlineSize = `${width}px`;
  await openWork(element, 'variants');
  await press(element, '[data-do=begin]');
  await expect.poll(() => part(element, bar('[data-do=leave]'))).not.toBeNull();
  await rate(element, '2');
  await expect.poll(() => names(element)).toHaveLength(1);
  // The rows have tests of their own.
  const violations = async (tag: string) => (await axe.run(part(element, tag)!)).violations
    .map(({ id, nodes }) => `${id}: ${nodes[0]!.html}`);
  expect(await violations('elv-trial-bar')).toEqual([]);
  expect(part(element, 'elv-trial-bar')!.scrollWidth).toBeLessThanOrEqual(width);
  await userEvent.click(part(element, bar('[data-do=compare]'))!);
  await expect.poll(() => part(element, '[data-row="supplies/L1"]')).not.toBeNull();
  expect(await violations('elv-variants')).toEqual([]);
  expect(part(element, 'elv-variants .body')!.scrollWidth).toBeLessThanOrEqual(part(element, 'elv-variants .body')!.clientWidth);
});
