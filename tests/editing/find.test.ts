import { describe, expect, test } from 'vitest';
import { findCells, targetsOf, type Search } from '../../src/editing/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { setCells, type Content } from '../../src/schedule/index.ts';
import { loadWords } from '../../src/words/index.ts';

/** Of invention. By hand: L1 is asked for 2 × 350 mA = 0.70 A of 0.4 A: over (0.7 × 0.7 = 0.49). */
const CONTENT: Content = {
  details: {},
  sheets: {
    devices: [
      { ref: 'L1-001', area: 'Hall (east)', type: 'Lamp', qty: 2, rail: 'L1', diversity: 0.7 },
      { ref: 'XL1-2', area: 'hall', type: 'Lamp', qty: '=[qty@L1-001]*3', rail: 'L2' },
    ],
    types: [{ type: 'Lamp', draw: 350, nodes: 1 }],
    supplies: [{ rail: 'L1', rated: 0.4 }, { rail: 'L2', rated: 10 }],
  },
};

const places = (search: Partial<Search>, schedule = new LoadSchedule(CONTENT)) =>
  findCells(schedule, { text: '', where: 'anywhere', exact: false, ...search })
    .map(({ sheet, id, key }) => `${sheet} ${id + 1} ${key}`);

describe('finding', () => {
  test('goes through all sheets in their order, whatever the case', () => {
    expect(places({ text: 'hall' })).toEqual(['devices 1 area', 'devices 2 area']);
    expect(places({ text: 'l1' })).toEqual(['devices 1 ref', 'devices 1 rail', 'devices 2 ref', 'supplies 1 rail']);
  });

  test('tells capitals apart where it is asked to', () => {
    expect(places({ text: 'hall', exact: true })).toEqual(['devices 2 area']);
  });

  test('takes a text only at the beginning of a cell, or as the whole of it', () => {
    expect(places({ text: 'L1', where: 'beginning' })).toEqual(['devices 1 ref', 'devices 1 rail', 'supplies 1 rail']);
    expect(places({ text: 'L1', where: 'whole' })).toEqual(['devices 1 rail', 'supplies 1 rail']);
  });

  test('keeps to a sheet or to a column of it', () => {
    expect(places({ text: 'L1', within: { sheet: 'supplies' } })).toEqual(['supplies 1 rail']);
    expect(places({ text: 'L1', within: { sheet: 'devices', key: 'rail' } })).toEqual(['devices 1 rail']);
  });

  test('looks through figures as they are shown, defaults among them, and through formulas as they were typed', () => {
    // 2 × 350 mA
    expect(places({ text: '0.70', within: { sheet: 'supplies', key: 'connected' } })).toEqual(['supplies 1 connected']);
    expect(places({ text: '70 %', within: { sheet: 'devices', key: 'diversity' } })).toEqual(['devices 1 diversity']);
    expect(places({ text: '350', within: { sheet: 'devices', key: 'unitDraw' } }))
      .toEqual(['devices 1 unitDraw', 'devices 2 unitDraw']);
    expect(places({ text: '*3' })).toEqual(['devices 2 qty']);
  });

  test('finds a status by its word, in the language that is spoken', async () => {
    expect(places({ text: 'over limit', where: 'whole', within: { sheet: 'supplies' } })).toEqual(['supplies 1 status']);
    const german = new LoadSchedule(CONTENT, { words: await loadWords('de') });
    expect(places({ text: german.words.say('over limit'), where: 'whole', within: { sheet: 'supplies' } }, german))
      .toEqual(['supplies 1 status']);
  });

  test('finds a row that is accepted by that word, as it is shown, and not by the status that it is accepted for', () => {
    const schedule = new LoadSchedule(CONTENT);
    for (const finding of schedule.findingsOf('supplies', 0)) schedule.accept(finding, { reason: 'Seldom', name: 'N.', date: '2026-01-02' });
    const within = { sheet: 'supplies', key: 'status' } as const;
    expect(places({ text: 'accepted', within }, schedule)).toEqual(['supplies 1 status']);
    expect(places({ text: 'over limit', within }, schedule)).toEqual([]);
  });

  test('takes signs of patterns for what they are, and finds nothing for nothing', () => {
    expect(places({ text: '(EAST)' })).toEqual(['devices 1 area']);
    expect(places({ text: 'h.ll' })).toEqual([]);
    expect(places({ text: '' })).toEqual([]);
  });

  test('leaves defaults alone that are out of sight: rare columns nobody filled in', () => {
    const schedule = new LoadSchedule(CONTENT);
    // A supply gives at most 1.5 times its rating unless something else is entered.
    expect(schedule.value('supplies', 0, 'maxOutput')).toBe(1.5);
    const within = { sheet: 'supplies', key: 'maxOutput' } as const;
    expect(places({ text: '1.5', within })).toEqual([]);
    schedule.act('Edit', setCells(schedule.document, [{ sheet: 'supplies', id: 1, key: 'maxOutput', value: 1.55 }]));
    expect(places({ text: '1.5', within }, schedule)).toEqual(['supplies 2 maxOutput']);
  });
});

describe('going to', () => {
  const names = (typed: string) => targetsOf(new LoadSchedule(CONTENT), typed, 'devices')
    .map(({ name, about }) => `${name} (${about})`);

  test('a tag leads to its row, the one that is called just so first', () => {
    expect(names('l1')[0]).toBe('L1 (Supplies, row 1)');
    expect(names('l1-')).toEqual(['L1-001 (Devices, row 1)', 'XL1-2 (Devices, row 2)']);
  });

  test('a sheet is found by its name in the language or in files', async () => {
    expect(names('suppl')[0]).toBe('Supplies (sheet)');
    const german = new LoadSchedule(CONTENT, { words: await loadWords('de') });
    expect(targetsOf(german, 'supplies', 'devices')[0]).toMatchObject({ sheet: 'supplies', id: -1 });
  });

  test('letter and number lead to a cell, of the sheet that is shown or of one that is named', () => {
    expect(targetsOf(new LoadSchedule(CONTENT), 'A2', 'devices')).toMatchObject([{ sheet: 'devices', id: 1, key: 'ref' }]);
    expect(targetsOf(new LoadSchedule(CONTENT), 'supplies!A2', 'devices'))
      .toMatchObject([{ sheet: 'supplies', id: 1, key: 'rail' }]);
    expect(names('B99')).toEqual([]);
  });

  test('nothing typed leads to the sheets', () => {
    expect(names('').slice(0, 3)).toEqual(['Devices (sheet)', 'Types (sheet)', 'Supplies (sheet)']);
  });
});
