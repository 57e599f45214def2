import { afterEach, beforeEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { makeWorkbook, type MadeSheet } from '../support/make-workbook.ts';
import { drop, mountElement, part, parts, removeElements, said, sample, textOf } from './element-mount.ts';
import { openWork, paste, press } from './work-support.ts';

beforeEach(() => { localStorage.clear(); });
afterEach(removeElements);

const SLIP: MadeSheet = { rows: [
  ['Boat house, takeoff'], [
    'Counted on', new Date(Date.UTC(2026, 10, 25)),
  ], ['Device', 'Room', 'How many'], ['Lamp', 'Slip', 4], ['Sensor', 'Slip', '2 no.'],
], merged: ['A1:C1'] };
const JETTY: MadeSheet = { rows: [['Device', 'Room', 'How many'], ['Lamp', 'Jetty', 3]] };
const outcomes = (element: Element) => parts(element, '.lines tbody tr').map((row) => row.dataset.outcome);
const sum = (element: Element) => textOf(element, 'elv-takeoff-reader .sum');
const sheets = (element: Element) => parts(element, '[data-sheet-of-list]') as HTMLInputElement[];

async function upload(element: LoadScheduleElement, name: string, bytes: Uint8Array<ArrayBuffer>): Promise<void> {
  await userEvent.upload(part(element, '.file input')!, new File([bytes], name));
}

test('all sheets of a workbook are read at once, some of them are put aside, and decisions stay meanwhile', async () => {
  const element = await mountElement({ content: sample() });
  const before = element.value;
  await openWork(element, 'takeoff');
  await upload(element, 'boat-house.xlsx', makeWorkbook({ Jetty: JETTY, Cover: {}, Slip: SLIP }));
  // 3 lamps on the jetty; 4 lamps and 2 sensors on the slip; the sheet without cells holds nothing.
  await expect.poll(() => sum(element), { timeout: 10_000 }).toBe('Read 9 = taken 9 + left out 0 + undecided 0');
  expect(textOf(element, 'elv-takeoff-reader .about')).toBe('boat-house.xlsx');
  expect(sheets(element).map((each) => [each.dataset.sheetOfList, each.checked])).toEqual([['Jetty', true], ['Slip', true]]);
  expect(parts(element, '.lines caption').map((each) => each.textContent)).toEqual(['Jetty', 'Slip']);
  await press(element, '[data-key="boat-house.xlsx!Slip!5"] [data-do=change]');
  await press(element, '[data-key="boat-house.xlsx!Slip!5"] [data-do=leave-out]');
  await expect.poll(() => sum(element)).toBe('Read 9 = taken 7 + left out 2 + undecided 0');

  const [jetty, slip] = [() => sheets(element)[0]!, () => sheets(element)[1]!];
  await userEvent.click(slip());
  await expect.poll(() => sum(element)).toBe('Read 3 = taken 3 + left out 0 + undecided 0');
  await userEvent.click(jetty());
  await expect.poll(() => textOf(element, 'elv-takeoff-reader .refused'))
    .toMatch(/^boat-house\.xlsx was not read\. Nothing changed\. The takeoff is empty/);
  await userEvent.click(slip());
  await expect.poll(() => sum(element)).toBe('Read 6 = taken 4 + left out 2 + undecided 0');
  expect(outcomes(element)).toEqual(['left-out', 'left-out', 'left-out', 'taken', 'left-out']);
  expect(part(element, 'elv-takeoff-reader .refused')).toBeNull();
  expect(element.value).toBe(before);
  await press(element, '[data-do=take]');
  await expect.poll(() => said(element)).toContain('Takeoff of 4 devices in 1 row');
  expect(element.schedule.rows('devices').slice(3).map(({ cells }) => [cells.type, cells.qty])).toEqual([['Lamp', 4]]);
  await userEvent.click(part(element, '[data-offer=undo]')!);
  expect(element.value).toBe(before);
});

test('what a column holds is chosen for each sheet by itself', async () => {
  const element = await mountElement({ content: sample() });
  await openWork(element, 'takeoff');
  const list = (bay: string): MadeSheet => ({ rows: [['Device', 'Bay', 'How many'], ['Lamp', bay, 3]] });
  await upload(element, 'bays.xlsx', makeWorkbook({ Jetty: list('North'), Slip: list('South') }));
  await expect.poll(() => parts(element, '[data-column="1"]').length, { timeout: 10_000 }).toBe(2);
  await userEvent.selectOptions(parts(element, '[data-column="1"]')[0]!, 'note');
  await press(element, '[data-do=take]');
  const [jetty, slip] = element.schedule.rows('devices').slice(3).map(({ cells }) => cells);
  expect([jetty!.note, slip!.note]).toEqual(['North', undefined]);
});

test('what cannot be read is said in words, and neither the schedule nor a list that is open changes', async () => {
  const element = await mountElement({ content: sample() });
  const before = element.value;
  await openWork(element, 'takeoff');
  const good = makeWorkbook({ Jetty: JETTY });
  const bomb = makeWorkbook({ Jetty: {} }, { 'xl/worksheets/sheet1.xml': new Uint8Array(80 * 1024 * 1024).fill(32) });
  for (const [name, bytes, words] of [
    ['cut.xlsx', good.slice(0, good.length / 2), /^cut\.xlsx was not read\. Nothing changed\. The workbook is damaged/],
    ['old.xls', new Uint8Array([0xd0, 0xcf, 0x11, 0xe0]), /^old\.xls was not read.*older format/],
    ['bomb.xlsx', bomb, /^bomb\.xlsx was not read.*becomes larger than 64 MB when it is unpacked/],
    ['large.xlsx', new Uint8Array(20 * 1024 * 1024 + 1), /^large\.xlsx was not read.*at most 20 MB is read/],
  ] as const) {
    // The driver takes ten seconds to hand over the largest.
    if (bytes.length > 1024 * 1024) drop(element, name, bytes);
    else await upload(element, name, bytes);
    await expect.poll(() => textOf(element, 'elv-takeoff-reader .refused'), { timeout: 10_000 }).toMatch(words);
  }
  paste(element, 'Device\tRoom\tHow many\nLamp\tJetty\t3\n');
  await expect.poll(() => sum(element)).toContain('Read 3');
  expect(part(element, 'elv-takeoff-reader .refused')).toBeNull();
  drop(element, 'cut.xlsx', good.slice(0, good.length / 2));
  await expect.poll(() => textOf(element, 'elv-takeoff-reader .refused')).toContain('The workbook is damaged');
  expect(sum(element)).toContain('Read 3');
  expect(element.value).toBe(before);
});
