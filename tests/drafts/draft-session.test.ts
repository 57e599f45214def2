import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { depthAfter, NO_DEPTH } from '../../components/drafts/draft-log.ts';
import { DraftSession } from '../../components/drafts/draft-session.ts';
import { readDraft } from '../../components/drafts/read-draft.ts';
import { writeSchedule } from '../../src/exchange/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { setCells } from '../../src/schedule/index.ts';
import { someAction, someContent } from '../engine/random-actions.ts';
import { MemoryDraftStore } from '../support/memory-draft-store.ts';

const PLACE = { key: 'key', source: '' };

function keep(schedule: LoadSchedule, store = new MemoryDraftStore()) {
  const news: string[] = [];
  const session = new DraftSession(schedule, PLACE, store, (each) => { news.push(each); });
  schedule.subscribe((event) => { session.follow(event, true); });
  return { session, store, news };
}

const textOf = (schedule: LoadSchedule) => writeSchedule(schedule.content());

async function readFrom(store: MemoryDraftStore, id: number): Promise<LoadSchedule | undefined> {
  const body = await store.read(id);
  return body && readDraft(body);
}

/** What every step back, and then every step forward again, leaves. */
function steps(schedule: LoadSchedule): string[] {
  const found = [textOf(schedule)];
  for (const step of ['undo', 'redo'] as const) while (schedule[step]() !== undefined) found.push(textOf(schedule));
  return found;
}

const edit = (schedule: LoadSchedule, qty: number) => {
  schedule.act(`Quantity ${qty}`, setCells(schedule.document, [{ sheet: 'devices', id: 0, key: 'qty', value: qty }]));
};
const small = () => new LoadSchedule({ details: {}, sheets: { devices: [{ ref: 'D1', qty: 1 }] } });

describe('a draft', () => {
  test('gives back whatever was done, and every step of it to undo and do again', async () => {
    const someActions = fc.array(fc.tuple(someAction, fc.boolean()), { maxLength: 15 });
    await fc.assert(fc.asyncProperty(someContent, someActions, async (content, actions) => {
      const schedule = new LoadSchedule(content);
      const { session, store } = keep(schedule);
      for (const [action, writes] of actions) {
        action(schedule);
        if (writes) await session.flush();
      }
      await session.flush();
      if (schedule.undoLabel !== undefined || schedule.redoLabel !== undefined) {
        const restored = (await readFrom(store, session.head!.id));
        expect(restored && steps(restored)).toEqual(steps(schedule));
        restored?.dispose();
      }
      schedule.dispose();
    }), { numRuns: Number(process.env.RUNS ?? 40) });
  });

  test('reaches back over 300 actions across sheets, and a file opened between them', async () => {
    const schedule = new LoadSchedule(
      { details: {}, sheets: { devices: [{ ref: 'D1', qty: 1 }], supplies: [{ rail: 'L1', rated: 0.5 }] } }
    );
    const { session, store } = keep(schedule);
    for (let number = 1; number <= 300; number += 1) {
      if (number === 150) {
        schedule.load(
          { details: { panel: 'KP-2' }, sheets: { devices: [{ ref: 'X1' }], supplies: [{ rail: 'Y1' }] } }, 'opened'
        );
      }
      const [sheet, key] = number % 2 === 0 ? ['devices', 'qty'] as const : ['supplies', 'rated'] as const;
      schedule.act(`${number}`, setCells(schedule.document, [{ sheet, id: 0, key, value: number }]));
    }
    await session.flush();
    const restored = (await readFrom(store, session.head!.id))!;
    const found = steps(restored);
    // 301 actions back and forth, and where it began.
    expect(found).toHaveLength(603);
    expect(found).toEqual(steps(schedule));
    expect(JSON.parse(found[301]!))
      .toMatchObject({ sheets: { devices: [{ ref: 'D1', qty: 1 }], supplies: [{ rail: 'L1', rated: 0.5 }] } });
  });

  test('begins with the first action of a person, and holds what the page does from then on', async () => {
    const schedule = small();
    const store = new MemoryDraftStore();
    const session = new DraftSession(schedule, PLACE, store, () => undefined);
    let byPerson = false;
    schedule.subscribe((event) => { session.follow(event, byPerson); });
    edit(schedule, 2);
    await session.flush();
    expect(store.writes).toBe(0);
    byPerson = true;
    edit(schedule, 3);
    byPerson = false;
    edit(schedule, 4);
    await session.flush();
    const body = (await store.read(1))!;
    expect(body.base.sheets.devices[0]!.cells.qty).toBe(2);
    expect(body.actions).toHaveLength(2);
    expect(textOf(readDraft(body)!)).toBe(textOf(schedule));
  });

  test('holds the undoing of what was done before it began', async () => {
    const schedule = small();
    edit(schedule, 2);
    const { session, store } = keep(schedule);
    edit(schedule, 3);
    schedule.undo();
    schedule.undo();
    schedule.redo();
    schedule.undo();
    await session.flush();
    const restored = (await readFrom(store, 1))!;
    expect(textOf(restored)).toBe(textOf(schedule));
    expect(textOf(restored)).toContain('"qty":1');
  });

  test('asks for each action to be written in the task in which it was done, whatever is on its way', async () => {
    const schedule = small();
    const { session, store } = keep(schedule);
    const held = store.held = [] as (() => void)[];
    for (const qty of [2, 3, 4]) edit(schedule, qty);
    expect(held).toHaveLength(3);
    for (const go of held) go();
    store.held = undefined;
    await session.flush();
    expect(store.heads.get(1)).toMatchObject({ count: 3 });
    expect(steps((await readFrom(store, 1))!)).toEqual(steps(schedule));
  });

  test.each([
    [[0, 1]], [[1, 0]],
  ])('that is being ended goes on with an edit that comes meanwhile, answered in the order %j', async (order) => {
    const schedule = small();
    const { session, store } = keep(schedule);
    edit(schedule, 2);
    await session.flush();
    const held = store.held = [] as (() => void)[];
    const marked = session.mark({ ended: true });
    edit(schedule, 3);
    expect(held).toHaveLength(2);
    for (const index of order) held[index]!();
    await Promise.all([marked, session.flush()]);
    expect(store.heads.get(1)).toMatchObject({ count: 2, ended: false });
    expect(session.head).toMatchObject({ count: 2, ended: false });
  });
});

describe('when writing fails', () => {
  test.each([
    ['full', new DOMException('no room', 'QuotaExceededError')], ['failed', new DOMException('ended', 'AbortError')],
  ])('a person is told once, nothing is lost, and the next action tries everything again: %s',
    async (trouble, fault) => {
    const schedule = small();
    const { session, store, news } = keep(schedule);
    edit(schedule, 2);
    await session.flush();
    store.fault = fault;
    for (const qty of [3, 4]) {
      edit(schedule, qty);
      await session.flush();
    }
    schedule.undo();
    await session.flush();
    expect(session.trouble).toBe(trouble);
    expect(news).toEqual(['trouble']);
    store.fault = undefined;
    edit(schedule, 5);
    await session.flush();
    expect(session.trouble).toBeUndefined();
    expect(steps((await readFrom(store, 1))!)).toEqual(steps(schedule));
  });

  test('one action alone, it is written at its place as soon as another could be written', async () => {
    const schedule = small();
    const { session, store } = keep(schedule);
    edit(schedule, 2);
    await session.flush();
    const held = store.held = [] as (() => void)[];
    edit(schedule, 3);
    edit(schedule, 4);
    store.fault = new DOMException('ended', 'AbortError');
    held[0]!();
    await expect.poll(() => session.trouble).toBe('failed');
    store.fault = store.held = undefined;
    held[1]!();
    await expect.poll(() => session.trouble).toBeUndefined();
    expect(steps((await readFrom(store, 1))!)).toEqual(steps(schedule));
  });

  test('the first writing is tried again with the second action', async () => {
    const schedule = small();
    const { session, store } = keep(schedule);
    store.fault = new DOMException('no room', 'QuotaExceededError');
    edit(schedule, 2);
    await session.flush();
    store.fault = undefined;
    edit(schedule, 3);
    await session.flush();
    expect(steps((await readFrom(store, session.head!.id))!)).toEqual(steps(schedule));
  });
});

describe('when another goes on with the same draft', () => {
  /** Two sessions on one draft, as two tabs have them where the browser has no locks. */
  async function two() {
    const first = small();
    const one = keep(first);
    edit(first, 2);
    await one.session.flush();
    const body = (await one.store.read(1))!;
    const second = readDraft(body)!;
    const depth = body.actions.reduce((sum, action) => depthAfter(action, sum), NO_DEPTH);
    const news: string[] = [];
    const session = new DraftSession(second, PLACE, one.store, (each) => { news.push(each); },
      { head: one.store.heads.get(1)!, depth, release: () => undefined });
    second.subscribe((event) => { session.follow(event, true); });
    return { first, one, second, other: { session, news }, store: one.store };
  }

  test('the work of both is kept, as two drafts', async () => {
    const { first, one, second, other, store } = await two();
    edit(first, 3);
    edit(second, 30);
    await one.session.flush();
    await other.session.flush();
    edit(first, 4);
    edit(second, 40);
    await Promise.all([one.session.flush(), other.session.flush()]);
    expect(store.heads.size).toBe(2);
    expect(textOf((await readFrom(store, 1))!)).toBe(textOf(first));
    expect(textOf((await readFrom(store, 2))!)).toBe(textOf(second));
    expect([one.news, other.news]).toEqual([[], ['taken']]);
  });

  test('a draft that was removed goes on as a new one', async () => {
    const { second, other, store } = await two();
    await store.remove(1);
    edit(second, 30);
    await other.session.flush();
    expect(textOf((await readFrom(store, 2))!)).toBe(textOf(second));
  });
});

describe('a damaged draft is not shown', () => {
  const whole = async () => {
    const schedule = small();
    const { session, store } = keep(schedule);
    edit(schedule, 2);
    await session.flush();
    return (await store.read(1))!;
  };

  test.each<[string, (body: Awaited<ReturnType<typeof whole>>) => unknown]>([
    ['no actions', ({ base }) => ({ base })],
    [
      'yes where a number belongs',
      ({ base, actions }) =>
        ({ base: { ...base, sheets: { ...base.sheets, devices: [{ id: 0, cells: { qty: true } }] } }, actions }),
    ],
    ['no sheets', ({ base, actions }) => ({ base: { ...base, sheets: undefined }, actions })],
    [
      'a row that is no row',
      ({ base, actions }) => ({ base: { ...base, sheets: { ...base.sheets, devices: [7] } }, actions }),
    ],
    [
      'a cell that is no cell',
      ({ base, actions }) =>
        ({ base: { ...base, sheets: { ...base.sheets, devices: [{ id: 0, cells: { qty: {} } }] } }, actions }),
    ],
    ['details that are none', ({ base, actions }) => ({ base: { ...base, details: { panel: 7 } }, actions })],
    [
      'a formula that is none',
      ({ base, actions }) =>
        ({ base: { ...base, sheets: { ...base.sheets, devices: [{ id: 0, cells: { distance: '=⟦' } }] } }, actions }),
    ],
    [
      'an action on a row that is not there',
      ({ base, actions }) => (
        {
          base,
          actions: [
            ...actions,
            { cause: 'act', label: '', changes: [{ op: 'set', sheet: 'devices', id: 9, key: 'qty', value: 1 }] },
          ],
        }
      ),
    ],
    [
      'an unknown action',
      ({ base, actions }) =>
        ({ base, actions: [...actions, { cause: 'act', label: '', changes: [{ op: 'nonsense' }] }] }),
    ],
    [
      'an undoing of nothing',
      ({ base, actions }) => ({ base, actions: [...actions, { cause: 'undo' }, { cause: 'undo' }] }),
    ],
  ])('%s', async (_name, damage) => {
    const body = await whole();
    expect(readDraft(body)).toBeDefined();
    expect(readDraft(damage(body) as never)).toBeUndefined();
  });
});
