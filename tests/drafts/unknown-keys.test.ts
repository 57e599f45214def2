import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { DraftSession } from '../../components/drafts/draft-session.ts';
import type { DraftBody } from '../../components/drafts/draft-store.ts';
import { readDraft } from '../../components/drafts/read-draft.ts';
import { readSchedule } from '../../src/exchange/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import type { Content } from '../../src/schedule/index.ts';
import { MemoryDraftStore } from '../support/memory-draft-store.ts';

/** The draft of a person who gave a panel its name. */
async function draftOf(content: Content): Promise<{ body: DraftBody; schedule: LoadSchedule }> {
  const [schedule, store] = [new LoadSchedule(content), new MemoryDraftStore()];
  const session = new DraftSession(schedule, { key: 'key', source: '' }, store, () => undefined);
  schedule.subscribe((event) => { session.follow(event, true); });
  const details = { ...schedule.document.details, panel: 'KP-9' };
  schedule.act('Panel', [{ op: 'details', details }]);
  await session.flush();
  return { body: (await store.read(1))!, schedule };
}

test.each([1, 2])('a draft of the frozen file of version %i keeps what is not known', async (version) => {
  const text = readFileSync(new URL(`../data/versions/${version}.schedule.json`, import.meta.url), 'utf8');
  const read = readSchedule(text);
  if (!read.ok) throw new Error('The frozen file was not read.');
  const { body, schedule } = await draftOf(read.content);
  const content = readDraft(body)?.content();
  expect(content).toEqual(schedule.content());
  expect(content).toMatchObject({ revisions: [{}, { approved: true }] });
});

const PART = { sheets: { supplies: [{ rail: 'P1', rated: 10 }] } };

test.each<[string, unknown, boolean]>([
  ['a variant', [{ name: 'a', base: PART, tried: PART, by: 7 }], true],
  ['none', undefined, true],
  ['no list', { a: 1 }, false],
  ['a variant without a name', [{ base: PART, tried: PART }], false],
  ['a variant whose rows are none', [{ name: 'a', base: PART, tried: { sheets: { supplies: 'x' } } }], false],
])('a draft is damaged where its variants could be read from no file: %s', async (_name, variants, isWhole) => {
  const { body } = await draftOf({ details: {}, sheets: {} });
  expect(readDraft({ base: { ...body.base, variants } as never, actions: [] }) !== undefined).toBe(isWhole);
  const kept = { cause: 'act' as const, label: 'Kept', changes: [{ op: 'variants', at: 0, count: 0, variants: variants ?? [] }] };
  expect(readDraft({ ...body, actions: [kept] } as never) !== undefined).toBe(isWhole);
});

const REVISION = { revision: 'A', date: '2026-01-05', name: 'N. N.', text: 'First issue' };

test.each<[string, object, boolean]>([
  ['an unknown key of the details', { details: { floor: 3 } }, true],
  ['an unknown key of a revision', { revisions: [{ ...REVISION, approved: true, by: { id: 7 } }] }, true],
  ['a detail that is no text', { details: { project: 3 } }, false],
  ['a key of a revision that is no text', { revisions: [{ ...REVISION, date: null }] }, false],
])('only known keys of details and revisions need be texts: %s', async (_name, part, isWhole) => {
  const { body } = await draftOf({ details: {}, sheets: {} });
  expect(readDraft({ base: { ...body.base, ...part }, actions: [] }) !== undefined).toBe(isWhole);
});
