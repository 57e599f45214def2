import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readCsv } from '../../../src/exchange/index.ts';
import { compareWithList, readList, updateChanges, updateCounts } from '../../../src/exchange/update/index.ts';
import { LoadSchedule } from '../../../src/load-schedule.ts';
import { ScheduleDocument, toContent, toSnapshot, type Cells, type CellValue, type SheetName } from '../../../src/schedule/index.ts';
import { sheetRows } from '../support.ts';

const documentOf = (sheets: Partial<Record<SheetName, Cells[]>>) =>
  new ScheduleDocument(toSnapshot({ details: {}, sheets }).snapshot);

/** What becomes of rows of a sheet when a list in CSV comes, formulas kept unless said otherwise. */
function updated(sheet: SheetName, rows: Cells[], csv: string, replaces = false) {
  const document = documentOf({ [sheet]: rows });
  const read = readCsv(csv, sheet);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const update = compareWithList(document, read);
  document.perform(updateChanges(document, update, replaces ? { takes: () => true } : {}));
  return { update, rows: toContent(document).sheets[sheet]!, counts: updateCounts(update) };
}

const TYPES: Cells[] = [
  { type: 'Valve', draw: 120, note: 'ours', aliases: 'V' }, { type: 'Lamp', draw: 250 }, { type: 'Sensor', draw: 8 },
];

describe('a list that comes again', () => {
  it('changes what it states in rows with its tags, adds the new ones, and leaves all else', () => {
    const { update, rows, counts } = updated('types', TYPES, 'Type,Draw (mA),Note\nValve,130,\nBlind,90,new\nLamp,250,\n');
    expect(counts).toBe('1 changed, 1 new, 1 not in the list');
    expect(update.changed).toMatchObject([{ tag: 'Valve', row: 1, cells: [{ key: 'draw', before: 120, after: 130 }] }]);
    expect(update).toMatchObject({ same: 1, absent: ['Sensor'], leftOut: [] });
    expect(rows).toEqual([
      // The empty note of the list says nothing.
      { type: 'Valve', draw: 130, note: 'ours', aliases: 'V' }, TYPES[1], TYPES[2],
      { type: 'Blind', draw: 90, note: 'new' },
    ]);
  });

  it('adds aliases to those that persons confirmed, and takes no alias for a further type', () => {
    const own: Cells[] = [{ type: 'Lampe', aliases: 'Leuchte; luminaire' }, { type: 'Ventil', aliases: 'Valve' }];
    const { update, rows } = updated('types', own, 'Type,Draw (mA),Aliases\nLampe,,lamp; LEUCHTE\nleuchte,250,\nVentil,,Valve\n');
    expect(rows).toEqual([{ type: 'Lampe', aliases: 'Leuchte; luminaire; lamp' }, own[1]]);
    expect(update).toMatchObject({ changed: [{ cells: [{ key: 'aliases', after: 'Leuchte; luminaire; lamp' }] }], added: [], same: 1 });
    expect(update.leftOut).toEqual([{
      line: 3, tag: 'leuchte',
      reason: 'Line 3: “leuchte” is an alias of “Lampe” in the schedule. Call it so in the list, or take the alias out there.',
    }]);
  });

  it('names the first of two types that share an alias, however often it is asked, and none that has no name', () => {
    const shared: Cells[] = [{ aliases: 'lamp' }, { type: 'Lampe', aliases: 'lamp' }, { type: 'Leuchte', aliases: 'lamp' }];
    expect(updated('types', shared, 'Type\nlamp\n').update.leftOut.map(({ reason }) => reason)).toEqual([
      'Line 2: “lamp” is an alias of “Lampe” in the schedule. Call it so in the list, or take the alias out there.',
    ]);
    expect(updated('types', shared.slice(0, 1), 'Type\nlamp\n').counts).toBe('0 changed, 1 new, 0 not in the list');
  });

  it('leaves formulas of a person unless somebody says so, and names them', () => {
    const own = [{ type: 'Valve', draw: '=60*2' }];
    const csv = 'Type,Draw (mA)\nValve,130\n';
    const { update, rows } = updated('types', own, csv);
    expect(update.changed[0]!.cells).toMatchObject([{ key: 'draw', before: '=60*2', after: 130, isOwnFormula: true }]);
    expect(rows).toEqual(own);
    expect(updated('types', own, csv, true).rows).toEqual([{ type: 'Valve', draw: 130 }]);
  });

  it('takes a default that the list states for the same as an empty cell', () => {
    expect(updated('supplies', [{ rail: 'L1', rated: 10 }], 'Rail,Voltage (V),Units\nL1,24,2\n').update.changed)
      .toMatchObject([{ cells: [{ key: 'units', before: null, after: 2 }] }]);
  });

  it('leaves out what names no row or more than one, by line, and says what would put it right', () => {
    const twice: Cells[] = [{ type: 'Lamp', draw: 1 }, { type: 'Lamp', draw: 2 }, { type: 'Valve' }];
    const { update, rows, counts } =
      updated('types', twice, 'Type,Draw (mA)\nLamp,3\n\n,4\nBlind,5\nBlind,6\nValve,7\n');
    expect(update.leftOut.map(({ line, reason }) => [line, reason])).toEqual([
      [2, 'Line 2: 2 rows of the schedule are called “Lamp”. Give each a Type of its own there.'],
      [4, 'Line 4: it has no Type, which would name its row. Enter one.'],
      [5, 'Line 5: “Blind” stands 2 times in the list. Leave one of them.'],
      [6, 'Line 6: “Blind” stands 2 times in the list. Leave one of them.'],
    ]);
    expect(rows).toEqual([twice[0], twice[1], { type: 'Valve', draw: 7 }]);
    expect(counts).toBe('1 changed, 0 new, 0 not in the list, 4 left out');
  });

  it('takes formulas of the list by the rows that they mean: its own by number, those of the schedule by tag', () => {
    const { rows, update } = updated('types', [{ type: 'Lamp', draw: 5 }, { type: 'Valve', draw: 7 }],
      'type,draw\nBlind,=[draw#2]*2\nValve,=[types.draw@Lamp]+1\nGate,=[draw#1]\nLamp,\n');
    expect(update.leftOut).toEqual([]);
    expect(rows.map(({ draw }) => draw))
      .toEqual([5, '=[types.draw@Lamp]+1', '=[types.draw@Valve]*2', '=[types.draw@Blind]']);
  });

  it('leaves a row out whose formula names a row that is left out, and the rows keep their places', () => {
    const { rows, update } = updated('types', [{ type: 'Lamp', draw: 5 }],
      'type,draw\n,4\nBlind,=[draw#1]\nGate,=[draw#2]\nValve,6\nDoor,=[draw#4]\n');
    expect(update.leftOut.map(({ line }) => line)).toEqual([2, 3, 4]);
    expect(rows).toEqual([
      { type: 'Lamp', draw: 5 }, { type: 'Valve', draw: 6 }, { type: 'Door', draw: '=[types.draw@Valve]' },
    ]);
  });

  it('makes ways of kinds and ratings, as a person who types them into runs', () => {
    const { rows } = updated('runs', [{ run: 'W1', rail: 'L1' }], 'run,way\nW1,B 4\n');
    expect(rows).toEqual([{ run: 'W1', rail: 'L1', way: 'L1-F1' }]);
  });

  it('is one action, after which formulas, acceptances and everything else of a row stay', () => {
    const accepted = [{ sheet: 'types' as const, tag: 'Lamp', rule: 'type-unused', reason: 'spare', name: 'N', date: '2026-11-30', value: null }];
    const schedule = new LoadSchedule({
      details: {}, accepted, sheets: { types: [{ type: 'Lamp', draw: 5 }], devices: [{ ref: 'D1', qty: 2, unitDraw: '=[types.draw@Lamp]*3' }] },
    });
    const before = schedule.content();
    const read = readList({ name: 'office.csv', text: 'Type,Draw (mA)\nLamp,9\n' });
    if (!read.ok) throw new Error('unreadable');
    const update = compareWithList(schedule.document, read.lists[0]!);
    schedule.act('Update', updateChanges(schedule.document, update));
    expect(schedule.value('devices', 0, 'unitDraw')).toBe(27);
    expect(schedule.content().accepted).toEqual(accepted);
    schedule.undo();
    expect(schedule.content()).toEqual(before);
    schedule.dispose();
  });
});

it('takes the lists of a schedule file, or the sheet that is asked for', () => {
  const text = JSON.stringify({
    format: 'elv-load-schedule', version: 2,
    sheets: { types: [{ type: 'Lamp' }], devices: [{ ref: 'D1' }], contacts: [] },
  });
  const sheetsOf = (sheet?: SheetName) => {
    const read = readList({ name: 'office.schedule.json', text }, sheet);
    return read.ok ? read.lists.map((list) => list.sheet) : read.problems;
  };
  expect(sheetsOf()).toEqual(['types']);
  expect(sheetsOf('devices')).toEqual(['devices']);
  expect(sheetsOf('contacts')).toEqual([]);
});

it('loses no row of any list, changes nothing when taken again, and never touches other cells', () => {
  const sheets = fc.constantFrom<SheetName>('types', 'conductors', 'contacts', 'supplies');
  const pairs = sheets.chain((sheet) =>
    fc.record({ sheet: fc.constant(sheet), before: sheetRows(sheet), rows: sheetRows(sheet) }));
  fc.assert(fc.property(pairs, ({ sheet, before, rows }) => {
    const document = documentOf({ [sheet]: before });
    const update = compareWithList(document, { sheet, rows });
    const filled = rows.filter((cells) => Object.keys(cells).length > 0);
    expect(update.changed.length + update.added.length + update.same + update.leftOut.length).toBe(filled.length);
    document.perform(updateChanges(document, update, { takes: () => true }));
    const after = toContent(document).sheets[sheet]!;
    expect(after).toHaveLength(before.length + update.added.length);
    const listed = new Map(rows.map((cells) => [cells[tags[sheet]!], cells]));
    before.forEach((cells, place) => {
      const own = listed.get(cells[tags[sheet]!]) ?? {};
      for (const key of Object.keys(after[place]!)) {
        if (key === 'aliases') {
          // Those of the list come to those that were there.
          const names = (...of: (CellValue | undefined)[]) => [...new Set(of.flatMap((cell) =>
            String(cell ?? '').toLowerCase().split(';').map((name) => name.trim()).filter((name) => name !== '')))].sort();
          expect([names(cells.aliases), names(cells.aliases, own.aliases)])
            .toContainEqual(names(after[place]!.aliases));
        } else expect([cells[key], own[key]]).toContainEqual(after[place]![key]);
      }
    });
    const again = compareWithList(document, { sheet, rows });
    expect(again).toMatchObject({ changed: [], added: [] });
    expect(again.leftOut).toEqual(update.leftOut);
  }), { numRuns: 300 });
});

const tags: Partial<Record<SheetName, string>> = { types: 'type', conductors: 'conductor', contacts: 'contact', supplies: 'rail' };
