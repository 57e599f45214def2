import { describe, expect, test } from 'vitest';
import { replaceChanges, replacements, type Search } from '../../src/editing/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import type { Content } from '../../src/schedule/index.ts';

const CONTENT: Content = {
  details: {},
  sheets: {
    devices: [
      { ref: 'L1-001', area: 'Hall', type: 'Lamp', qty: 2, rail: 'L1', run: 'L1-R1' },
      { ref: 'L1-002', area: 'Hall', type: 'Lamp', qty: '=[qty@L1-001]*3', rail: 'L1' },
      { ref: 'XL1-9', area: 'L1-store', type: 'Lamp', qty: 4, rail: 'L2' },
    ],
    types: [{ type: 'Lamp', draw: 350, nodes: 1 }],
    supplies: [{ rail: 'L1', rated: 10 }, { rail: 'L2', rated: 10 }],
    runs: [{ run: 'L1-R1', rail: 'L1', length: 10 }, { run: 'L3-R2', rail: 'L2', length: 10 }],
  },
};

const search = (over: Partial<Search>): Search => ({ text: '', where: 'anywhere', exact: false, ...over });

function replaced(over: Partial<Search>, by: string) {
  const schedule = new LoadSchedule(CONTENT);
  const found = replacements(schedule, search(over), by);
  schedule.act('Replacement', replaceChanges(schedule, found));
  return { schedule, found };
}

const cells = (schedule: LoadSchedule, sheet: 'devices' | 'runs' | 'supplies', key: string) =>
  schedule.rows(sheet).map((row) => row.cells[key] ?? null);

describe('replacing', () => {
  test('a prefix: tags are given anew, references to them and formulas follow, one action takes it back', () => {
    const { schedule, found } = replaced({ text: 'L1-', where: 'beginning' }, 'L3-');
    expect(found.map(({ before, after }) => `${before} → ${after}`)).toEqual(
      ['L1-001 → L3-001', 'L1-R1 → L3-R1', 'L1-002 → L3-002', 'L1-store → L3-store', 'L1-R1 → L3-R1']);
    expect(cells(schedule, 'devices', 'ref')).toEqual(['L3-001', 'L3-002', 'XL1-9']);
    expect(cells(schedule, 'runs', 'run')).toEqual(['L3-R1', 'L3-R2']);
    expect(cells(schedule, 'devices', 'run')).toEqual(['L3-R1', null, null]);
    expect(schedule.content().sheets.devices![1]!.qty).toBe('=[devices.qty@L3-001]*3');
    expect(schedule.undo()).toBe('Replacement');
    expect(schedule.content().sheets).toMatchObject(new LoadSchedule(CONTENT).content().sheets);
    expect(schedule.undo()).toBeUndefined();
  });

  test('only within a sheet, references elsewhere follow the new tag all the same', () => {
    const { schedule } = replaced({ text: 'R1', within: { sheet: 'runs', key: 'run' } }, 'R8');
    expect(cells(schedule, 'runs', 'run')).toEqual(['L1-R8', 'L3-R2']);
    expect(cells(schedule, 'devices', 'run')).toEqual(['L1-R8', null, null]);
  });

  test('figures and formulas are read as if they were typed', () => {
    expect(cells(replaced({ text: '10', where: 'whole', within: { sheet: 'runs' } }, '12.5').schedule, 'runs', 'length'))
      .toEqual([12.5, 12.5]);
    const { schedule } = replaced({ text: '*3', within: { sheet: 'devices', key: 'qty' } }, '*5');
    // 2 × 5
    expect(schedule.value('devices', 1, 'qty')).toBe(10);
  });

  test('what cannot be taken is left as it is and told, with all else replaced', () => {
    const { schedule, found } = replaced({ text: '10', within: { sheet: 'runs' } }, 'ten');
    expect(found.map(({ problem }) => problem?.startsWith('“ten” is not a number'))).toEqual([true, true]);
    expect(cells(schedule, 'runs', 'length')).toEqual([10, 10]);
    expect(schedule.undo()).toBeUndefined();
  });

  test('no tag comes to stand twice', () => {
    const { schedule, found } = replaced({ text: 'L1-R1', within: { sheet: 'runs', key: 'run' } }, 'L3-R2');
    expect(found).toMatchObject([{ problem: 'Another row has the tag “L3-R2” already.' }]);
    expect(cells(schedule, 'runs', 'run')).toEqual(['L1-R1', 'L3-R2']);
    // Both lamps would be L1-00.
    const twice = replaced({ text: '(1|2)$', within: { sheet: 'devices', key: 'ref' } }, '');
    expect(twice.found).toEqual([]);
    const shortened = replaced({ text: 'L1-00', within: { sheet: 'devices', key: 'ref' } }, 'D');
    expect(cells(shortened.schedule, 'devices', 'ref')).toEqual(['D1', 'D2', 'XL1-9']);
  });

  test('defaults and computed figures are found and stay', () => {
    // 350 mA stands as the draw of each device, and was entered once, at the type.
    const { found } = replaced({ text: '350', where: 'whole' }, '400');
    expect(found.map(({ sheet, key }) => `${sheet} ${key}`)).toEqual(['types draw']);
  });

  test('the text that comes in its place is taken as it is, signs of patterns too', () => {
    const { schedule } = replaced({ text: 'Hall', within: { sheet: 'devices', key: 'area' } }, '$& $1');
    expect(cells(schedule, 'devices', 'area')).toEqual(['$& $1', '$& $1', 'L1-store']);
  });
});
