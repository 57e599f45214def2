import { describe, expect, test } from 'vitest';
import { isDraftFile, writeDraftFile } from '../../components/drafts/draft-file.ts';
import { DraftSession } from '../../components/drafts/draft-session.ts';
import type { DraftBody, DraftHead } from '../../components/drafts/draft-store.ts';
import { readDraftFile } from '../../components/drafts/read-draft-file.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { insertRows, setCells, type Content, type LoggedAction } from '../../src/schedule/index.ts';
import { ENGLISH } from '../../src/words/index.ts';
import { MemoryDraftStore } from '../support/memory-draft-store.ts';

const CONTENT: Content = {
  details: { panel: 'KP-1' }, sheets: {
    devices: [{ ref: 'D1', qty: 100, distance: '=2*3' }, { ref: 'D2', distance: '=[devices.distance@D1]+1' }],
    supplies: [{ rail: 'L1', rated: 5 }],
  },
};

/** A draft of 20 quantities of D1, from 1 to 20, and of a row that was put in above it and taken back. */
async function draft(): Promise<{ head: DraftHead; body: DraftBody; schedule: LoadSchedule }> {
  const schedule = new LoadSchedule(CONTENT);
  const store = new MemoryDraftStore();
  const session = new DraftSession(schedule, { key: 'key', source: '' }, store, () => undefined);
  schedule.subscribe((event) => { session.follow(event, true); });
  for (let qty = 1; qty <= 20; qty += 1) {
    schedule.act(`Quantity ${qty}`, setCells(schedule.document, [{ sheet: 'devices', id: 0, key: 'qty', value: qty }]));
  }
  schedule.act('Row', insertRows(schedule.document, 'devices', 0, [{}]));
  schedule.undo();
  await session.flush();
  return { head: store.heads.get(1)!, body: (await store.read(1))!, schedule };
}

type File = DraftHead & DraftBody & { actions: LoggedAction[] };

/** Reads the draft as a file, after something in it was changed. */
async function read(damage: (file: File) => unknown = (file) => file) {
  const { head, body, schedule } = await draft();
  const file = JSON.parse(writeDraftFile(head, body)) as File;
  const text = JSON.stringify(damage(file) ?? file);
  expect(isDraftFile(text)).toBe(true);
  return { reading: readDraftFile(text, ENGLISH), content: schedule.content() };
}

const sentences = ({ reading }: Awaited<ReturnType<typeof read>>) =>
  reading.ok ? reading.notes : reading.problems.map(({ message }) => message);

describe('a draft that was saved as a file', () => {
  test('gives back everything when it is whole, formulas too', async () => {
    const { reading, content } = await read();
    expect(reading).toMatchObject(
      { ok: true, notes: [], content: { details: content.details, sheets: content.sheets } }
    );
  });

  test('is told from a schedule, whatever its name', () => {
    expect(isDraftFile('\ufeff{\n  "format": "elv-load-schedule-draft", "id": 1}')).toBe(true);
    expect(isDraftFile('{"format":"elv-load-schedule","version":2}')).toBe(false);
    expect(isDraftFile('Ref,Note\nD1,"elv-load-schedule-draft"')).toBe(false);
  });

  // 22 actions: 20 quantities, a row, and taking it back.
  test.each<[string, number, (file: File) => unknown]>([
    ['an action is no object', 8, (file) => { file.actions[7] = null as never; }],
    [
      'the first one is unknown', 1,
      (file) => { file.actions[0] = { cause: 'act', label: 'x', changes: [{ op: 'nonsense' } as never] }; },
    ],
    [
      'a row is named that is not there', 20,
      (file) => {
        file.actions[19] = {
          cause: 'act', label: 'x', changes: [{ op: 'set', sheet: 'devices', id: 99, key: 'qty', value: 1 }],
        };
      },
    ],
    [
      'a value is of no kind', 13,
      (file) => {
        file.actions.length = 20;
        file.actions[12] = {
          cause: 'act', label: 'x', changes: [{ op: 'set', sheet: 'devices', id: 1, key: 'qty', value: {} as never }],
        };
      },
    ],
    [
      'a formula is none', 5,
      (file) => {
        file.actions[4] = {
          cause: 'act', label: 'x', changes: [{ op: 'set', sheet: 'devices', id: 1, key: 'qty', value: '=⟦' }],
        };
      },
    ],
    [
      'a row has an id that would fill the memory', 21,
      (file) => {
        file.actions[20] = {
          cause: 'act', label: 'x', changes: [
            { op: 'insert', sheet: 'devices', at: 0, rows: [{ id: 4e9, cells: {} }] },
          ],
        };
      },
    ],
    ['nothing was taken back that could be done again', 6, (file) => { file.actions[5] = { cause: 'redo' }; }],
    ['nothing was done that could be taken back', 1, (file) => { file.actions[0] = { cause: 'undo' }; }],
    ['the last ones are missing', 10, (file) => { file.actions.length = 9; }],
    ['there are none', 1, (file) => ({ ...file, actions: undefined })],
  ])('gives back what was done before the damage, and says where it is: %s', async (_name, number, damage) => {
    const result = await read(damage);
    expect(sentences(result)).toEqual(
      [`The draft is damaged from action ${number} of 22 on; everything before it is restored`]
    );
    const devices = result.reading.ok ? result.reading.content.sheets.devices! : [];
    // Action n enters the quantity n.
    const qty = number === 1 ? 100 : number - 1;
    expect(devices).toEqual(
      [{ ref: 'D1', qty, distance: '=2*3' }, { ref: 'D2', distance: '=[devices.distance@D1]+1' }]
    );
  });

  test.each<[string, (file: File) => unknown]>([
    ['it is missing', (file) => ({ ...file, base: undefined })],
    ['it is no snapshot', (file) => ({ ...file, base: { nonsense: true } })],
    ['a cell is of no kind', (file) => { file.base.sheets.devices[1]!.cells.qty = [] as never; }],
    ['two rows have one id', (file) => { Object.assign(file.base.sheets.devices[1]!, { id: 0 }); }],
    [
      'a row has an id that would fill the memory',
      (file) => { Object.assign(file.base.sheets.devices[1]!, { id: 4e9 }); },
    ],
  ])('whose beginning is damaged is refused in one sentence: %s', async (_name, damage) => {
    const result = await read(damage);
    expect(result.reading.ok).toBe(false);
    expect(sentences(result)).toEqual([
      'The draft is damaged: what it began with cannot be read, so nothing of it can be restored. Go on from the schedule file that was saved last.',
    ]);
  });

  test.each<[string, unknown, string]>([
    ['newer', 99, 'The file has the version 99; versions 1 to 2 can be read here. Open it with newer software.'],
    ['missing', undefined, 'The file does not say its version. If it was written by hand, add "version": 2.'],
  ])('of a version that is not known is refused in one sentence: %s', async (_name, version, sentence) => {
    const result = await read((file) => ({ ...file, version }));
    expect(result.reading.ok).toBe(false);
    expect(sentences(result)).toEqual([sentence]);
  });

  test('that is cut short is refused with the place where it ends', async () => {
    const { head, body } = await draft();
    const reading = readDraftFile(writeDraftFile(head, body).slice(0, -40), ENGLISH);
    expect(reading).toMatchObject({ ok: false, total: 1, problems: [{ code: 'json-syntax', line: 1 }] });
  });

  test('is held against keys that reach a prototype, as a schedule file is', async () => {
    const { reading } = await read((file) => {
      file.base.sheets.devices[0]!.cells = JSON.parse('{"ref":"D1","__proto__":{"qty":5}}') as never;
      file.actions.length = 0;
      return { ...file, count: 0 };
    });
    expect(reading.ok && reading.content.sheets.devices![0]!.qty).toBeUndefined();
    expect(({} as { qty?: number }).qty).toBeUndefined();
  });
});
