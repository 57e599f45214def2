import { afterEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { LoadSchedule } from '../../../src/load-schedule.ts';
import { SHEET_NAMES } from '../../../src/schedule/index.ts';
import { recalculate, type InputSchedule } from '../../support/independent.ts';
import { mountElement, part, parts, removeElements, sample } from '../element-mount.ts';
import { paste, putOnClipboard } from '../support/clipboard.ts';

afterEach(removeElements);

/** Every figure of the element against the calculation that shares no code with it. */
function expectRight(schedule: LoadSchedule, value: string): void {
  const figures = recalculate(JSON.parse(value) as InputSchedule) as unknown as
    Record<string, Record<string, unknown>[]>;
  for (const sheet of SHEET_NAMES.filter((name) => name in figures)) {
    schedule.rows(sheet).forEach(({ id }, row) => {
      for (const [key, expected] of Object.entries(figures[sheet]![row]!)) {
        if (key === 'partial') continue;
        const found = schedule.value(sheet, id, key);
        if (typeof expected === 'number') expect(found, `${sheet} ${row} ${key}`).toBeCloseTo(expected, 9);
        else expect(found, `${sheet} ${row} ${key}`).toBe(expected);
      }
    });
  }
}

test('rows copied from a spreadsheet are pasted, worked out, taken back, and survive a way out and in as CSV',
  async () => {
  const element = await mountElement({ content: sample() });
  const before = element.value;
  const lines = Array.from({ length: 40 }, (_, row) => [
    `T${row + 1}`, `Deck ${row % 3}`, row % 2 === 0
      ? 'Lamp' : 'Sensor', 1 + (row % 4), ['L1', 'L2', 'L3'][row % 3], ['B1', 'B2'][row % 2],
    '', `${row},5`, row % 5 === 0 ? `${100 + row},25` : '', row % 4 === 0 ? '0,65' : '',
  ].join('\t'));
  await putOnClipboard(`${lines.join('\r\n')}\r\n`);
  const cells = parts(element, 'elv-schedule-grid td').filter((cell) => cell.textContent === 'D1');
  await userEvent.click(cells.at(-1)!);
  await userEvent.keyboard('{ArrowDown}{ArrowDown}{ArrowDown}');
  await paste();
  await expect.poll(() => element.schedule.rows('devices').length).toBe(43);
  expectRight(element.schedule, element.value);
  // 40 lamps and sensors more: L1 is far over, and the panel says so.
  expect(part(element, 'elv-schedule-panel')).not.toBeNull();
  expect(element.schedule.findings.map(({ rule }) => rule)).toContain('supply-over-usable');

  const pasted = element.value;
  for (const sheet of SHEET_NAMES) {
    expect(await element.importCsv(await element.exportCsv(sheet), sheet), sheet).toEqual([]);
  }
  expect(element.value).toBe(pasted);
  const afresh = new LoadSchedule((JSON.parse(pasted) as { sheets: object; details: object }));
  expectRight(afresh, pasted);
  afresh.dispose();

  while (element.schedule.undoLabel !== undefined && element.schedule.rows('devices').length !== 3) element.undo();
  expect(element.value).toBe(before);
  element.redo();
  expect(element.value).toBe(pasted);
});
