import { readFileSync } from 'node:fs';
import { afterEach, expect, test, vi } from 'vitest';
import { DraftKeeper, type DraftsHost } from '../../components/drafts/draft-keeper.ts';
import { renewDraft } from '../../components/drafts/read-draft.ts';
import type { DraftBody, DraftHead } from '../../components/drafts/draft-store.ts';
import { VERSION } from '../../src/exchange/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import type { LoggedAction } from '../../src/schedule/index.ts';
import { MemoryDraftStore } from '../support/memory-draft-store.ts';

afterEach(() => {
  vi.useRealTimers();
  vi.restoreAllMocks();
});

/** An element that shows nothing yet, and then what it is told to. */
function emptyHost(): DraftsHost & { schedule: LoadSchedule } {
  return {
    schedule: new LoadSchedule(),
    untouched: true,
    dirty: false,
    awaitsPage: false,
    pageContent: undefined,
    showDraft(schedule) { this.schedule = schedule; },
    markSaved: () => Promise.resolve(),
    showPage: () => Promise.resolve(),
    saveText: () => undefined,
    requestUpdate: () => undefined,
  };
}

const setQty = (value: number) => ({ op: 'set', sheet: 'devices', id: 0, key: 'qty', value }) as const;

async function storeWith(actions: LoggedAction[]): Promise<MemoryDraftStore> {
  const store = new MemoryDraftStore();
  const base = new LoadSchedule({ details: {}, sheets: { devices: [{ ref: 'D1', qty: 1 }] } }).document.snapshot();
  const head = { id: store.newId(), key: 'key', version: VERSION, at: 0, count: actions.length, ended: false };
  await store.create(head, { base, actions });
  return store;
}

test('a long draft begins anew with the next visit, and is the same', async () => {
  const many = Array.from({ length: 1000 }, (_, index) => setQty(index));
  const store = await storeWith(Array.from(
    { length: 201 }, (_, index) => ({ cause: 'act', label: `${index}`, changes: [...many, setQty(index + 2)] })
  ));
  const host = emptyHost();
  const keeper = new DraftKeeper({ key: 'key', source: '' }, host, store);
  await keeper.find();
  expect(await keeper.given(undefined, true)).toBe(true);
  expect(host.schedule.rows('devices')[0]!.cells.qty).toBe(202);
  expect([...store.heads.values()].map(({ count }) => count)).toEqual([0]);
  expect(keeper.notices).toMatchObject([{ kind: 'unchecked', head: { id: 2 } }]);
  host.schedule.subscribe((event) => { keeper.follow(event, true); });
  host.schedule.act('more', [setQty(7)]);
  await keeper.pause();
  expect((await store.read(2))!.actions).toHaveLength(1);
});

test('a long draft stays as it is when there is no room for another', async () => {
  const many = Array.from({ length: 201_000 }, () => setQty(5));
  const store = await storeWith([{ cause: 'act', label: 'many', changes: many }]);
  store.fault = new DOMException('no room', 'QuotaExceededError');
  const host = emptyHost();
  const keeper = new DraftKeeper({ key: 'key', source: '' }, host, store);
  await keeper.find();
  await keeper.given(undefined, true);
  expect(host.schedule.rows('devices')[0]!.cells.qty).toBe(5);
  expect([...store.heads.keys()]).toEqual([1]);
  expect(keeper.notices.map(({ kind }) => kind)).toContain('full');
});

/** A store with the frozen draft of version 1, in which something may be changed. */
async function storeOfVersion1(change: (body: DraftBody) => DraftBody = (body) => body): Promise<MemoryDraftStore> {
  const store = new MemoryDraftStore();
  const text = readFileSync(new URL('../data/versions/1.draft.json', import.meta.url), 'utf8');
  const { version, at, count, base, actions } = JSON.parse(text) as DraftHead & DraftBody;
  await store.create({ id: store.newId(), key: 'key', version, at, count, ended: false }, change({ base, actions }));
  return store;
}

test('a draft of version 1 is shown, goes on as one of this version, and can be taken back', async () => {
  const store = await storeOfVersion1();
  const host = emptyHost();
  const keeper = new DraftKeeper({ key: 'key', source: '' }, host, store);
  await keeper.find();
  expect(await keeper.given(undefined, true)).toBe(true);
  expect(host.schedule.rows('types').map(({ cells }) => cells.nodes ?? null)).toEqual([2, 1, 1, null, 1]);
  expect([...store.heads.values()])
    .toMatchObject([{ id: 2, key: 'key', version: VERSION, at: 0, count: 12, ended: false }]);
  expect(keeper.notices).toMatchObject([{ kind: 'unchecked', head: { id: 2 } }]);
  host.schedule.subscribe((event) => { keeper.follow(event, true); });
  host.schedule.undo();
  await keeper.pause();

  const next = emptyHost();
  const other = new DraftKeeper({ key: 'key', source: '' }, next, store);
  await other.find();
  await other.given(undefined, true);
  expect(next.schedule.content()).toEqual(host.schedule.content());
});

test('a draft of version 1 goes on from a page’s file of version 1 that did not change since', async () => {
  const { base } = renewDraft((await (await storeOfVersion1()).read(1))!, 1)!;
  const page = new LoadSchedule(undefined, { session: { base, actions: [] } }).content();
  for (
    const [content, kinds] of [[page, ['restored']], [{ ...page, details: { panel: 'another' } }, ['changed']]] as const
  ) {
    const keeper = new DraftKeeper({ key: 'key', source: '' }, emptyHost(), await storeOfVersion1());
    await keeper.find();
    await keeper.given(content, true);
    expect(keeper.notices.map(({ kind }) => kind)).toEqual(kinds);
  }
});

test('a draft of version 1 that is damaged is left as it is', async () => {
  const store = await storeOfVersion1(({ base, actions }) =>
    ({ base: { ...base, sheets: { ...base.sheets, devices: [{ id: 4e9, cells: {} }] } }, actions }));
  const keeper = new DraftKeeper({ key: 'key', source: '' }, emptyHost(), store);
  await keeper.find();
  expect(await keeper.given(undefined, true)).toBe(false);
  expect(keeper.notices).toMatchObject([{ kind: 'damaged', head: { id: 1 } }]);
  expect([...store.heads.values()]).toMatchObject([{ id: 1, version: 1 }]);
});

/** A keeper whose database does not answer until it is told to, beyond what the page's file can wait for. */
async function lateKeeper(host = emptyHost()) {
  vi.useFakeTimers();
  const store = await storeWith([{ cause: 'act', label: '5', changes: [setQty(5)] }]);
  let come: (error?: Error) => void = () => undefined;
  const answered = new Promise<void>((resolve, reject) => {
    come = (error) => { if (error === undefined) resolve(); else reject(error); };
  });
  const list = store.list.bind(store);
  store.list = async (key) => {
    await answered;
    return list(key);
  };
  const keeper = new DraftKeeper({ key: 'key', source: '' }, host, store);
  const finding = keeper.find();
  await vi.advanceTimersByTimeAsync(10_000);
  await finding;
  expect(keeper.notices).toEqual([{ kind: 'unavailable' }]);
  return {
    host, keeper, store,
    come: async (error?: Error) => {
      come(error);
      await vi.advanceTimersByTimeAsync(10_000);
    },
  };
}

test('a database that answers late keeps drafts from then on, and what it has is shown', async () => {
  const { host, keeper, store, come } = await lateKeeper();
  expect(await keeper.given(undefined, true)).toBe(false);
  await come();
  expect(keeper.notices).toMatchObject([{ kind: 'unchecked', head: { id: 1 } }]);
  expect(host.schedule.rows('devices')[0]!.cells.qty).toBe(5);
  host.schedule.subscribe((event) => { keeper.follow(event, true); });
  host.schedule.act('more', [setQty(7)]);
  await keeper.pause();
  expect((await store.read(1))!.actions).toHaveLength(2);
});

test('where something was done before the database answered, its draft is offered, and that is kept too', async () => {
  const host = { ...emptyHost(), schedule: new LoadSchedule({ details: {}, sheets: { devices: [{ qty: 1 }] } }) };
  const { keeper, store, come } = await lateKeeper(host);
  await keeper.given(host.schedule.content(), true);
  host.schedule.subscribe((event) => { keeper.follow(event, true); });
  host.schedule.act('more', [setQty(7)]);
  await come();
  expect(host.schedule.rows('devices')[0]!.cells.qty).toBe(7);
  expect(keeper.notices.map(({ kind }) => kind)).not.toContain('unavailable');
  expect([...store.heads.values()]).toMatchObject([{ id: 1, count: 1 }, { id: 2, count: 1 }]);
});

test('a draft that is found when its element has left the page is let go of, and not shown', async () => {
  const { host, keeper, come } = await lateKeeper();
  await keeper.close();
  await come();
  expect(host.schedule.rows('devices')).toEqual([]);
  expect(keeper.notices).toMatchObject([{ kind: 'kept', head: { id: 1 } }]);
});

test('where the browser refuses to keep anything, though late, that stays said', async () => {
  vi.spyOn(console, 'warn').mockReturnValue(undefined);
  const { keeper, come } = await lateKeeper();
  await come(new DOMException('denied', 'SecurityError'));
  expect(keeper.notices).toEqual([{ kind: 'unavailable' }]);
});
