import { expect, test } from 'vitest';
import { DraftKeeper, type DraftsHost } from '../../components/drafts/draft-keeper.ts';
import { VERSION } from '../../src/exchange/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import type { LoggedAction } from '../../src/schedule/index.ts';
import { MemoryDraftStore } from '../support/memory-draft-store.ts';

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
  const store = await storeWith(Array.from({ length: 201 }, (_, index) => ({ cause: 'act', label: `${index}`, changes: [...many, setQty(index + 2)] })));
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
