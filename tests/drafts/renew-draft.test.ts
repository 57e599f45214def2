import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { DraftBody, DraftHead } from '../../components/drafts/draft-store.ts';
import { readDraftFile } from '../../components/drafts/read-draft-file.ts';
import { readDraft, renewDraft } from '../../components/drafts/read-draft.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { ENGLISH } from '../../src/words/index.ts';

const text = (name: string) => readFileSync(new URL(`../data/versions/${name}`, import.meta.url), 'utf8');
const draft = () => JSON.parse(text('1.draft.json')) as DraftHead & DraftBody;

/** How things stood in version 1 at the beginning and after each action: what it showed, as it wrote it down. */
const STATES = JSON.parse(text('1.draft.states.json')) as readonly State[];
interface State {
  readonly nodes: number;
  readonly free: number;
  readonly qty: number;
  readonly accepted: readonly string[];
  readonly types: readonly (string | null)[];
}

const stateOf = (schedule: LoadSchedule): State => ({
  nodes: schedule.value('branches', 0, 'nodes') as number, free: schedule.value('branches', 0, 'free') as number,
  qty: schedule.value('devices', 1, 'qty') as number,
  accepted: schedule.findings.filter(({ accepted }) => accepted !== undefined)
    .map(({ sheet, tag, rule }) => `${sheet} ${tag} ${rule}`),
  types: schedule.rows('types').map(({ cells }) => cells.type as string | undefined ?? null),
});

/** The schedule of the draft after so many of its actions. */
function after(number: number): LoadSchedule {
  const { base, actions } = draft();
  const body = renewDraft({ base, actions: actions.slice(0, number) }, 1);
  return readDraft(body!)!;
}

describe('a draft of version 1', () => {
  test.each(STATES.map((state, number) => [number, state] as const))('is after action %i what it was',
    (number, state) => {
    expect(stateOf(after(number))).toEqual(state);
  });

  test('can be taken back to where it began, action by action', () => {
    const schedule = after(draft().actions.length);
    const seen: State[] = [];
    while (schedule.undo() !== undefined) seen.push(stateOf(schedule));
    // Two of the actions take one back, one does it again.
    expect(seen).toHaveLength(draft().actions.length - 4);
    expect(seen.at(-1)).toEqual(STATES[0]);
  });

  test('has the keys and purposes of now, and says what empty cells meant', () => {
    const { sheets } = after(draft().actions.length).content();
    expect(sheets.types).toEqual([
      {
        type: 'Drive', purpose: 'field', draw: 500, nodes: 2,
      }, { type: 'Sensor', purpose: 'field', draw: 10, nodes: 1 },
      { type: 'Gate', draw: 100, nodes: 1 }, {}, { type: 'New', draw: 1, nodes: 1 },
    ]);
    expect([sheets.branches, sheets.supplies!.map(({ peak }) => peak)])
      .toEqual([[{ branch: 'B1', limit: 50 }], [1.2, 1.2]]);
    expect(sheets.devices![1]!.qty).toBe('=[devices.connected@D-1]+[types.nodes@Drive]+[devices.qty@D-1]');
  });

  test('leaves a row empty that was emptied', () => {
    // The seventh action empties the row of a type.
    expect(after(7).content().sheets.types![2]).toEqual({});
  });

  test('that was saved as a file opens too, up to where it is damaged', () => {
    const whole = readDraftFile(text('1.draft.json'), ENGLISH);
    expect(whole).toMatchObject({ ok: true, notes: [] });
    expect(stateOf(new LoadSchedule(whole.ok ? whole.content : undefined))).toEqual(STATES.at(-1));
    const file = draft();
    const damaged = JSON.stringify(
      { ...file, actions: file.actions.with(5, { cause: 'act', label: '', changes: [{ op: 'accept' } as never] }) }
    );
    const read = readDraftFile(damaged, ENGLISH);
    expect(read.ok && read.notes).toEqual(
      [`The draft is damaged from action 6 of ${file.count} on; everything before it is restored`]
    );
    expect(stateOf(new LoadSchedule(read.ok ? read.content : undefined))).toEqual(STATES[5]);
  });

  test.each<[string, (body: DraftBody) => unknown]>([
    ['a beginning without acceptances', ({ base, actions }) => ({ base: { ...base, accepted: undefined }, actions })],
    ['a beginning without rows', ({ base, actions }) => ({ base: { ...base, sheets: undefined }, actions })],
    [
      'a row with an id that would fill the memory',
      ({ base, actions }) =>
        ({ base: { ...base, sheets: { ...base.sheets, feeds: [{ id: 4e9, cells: {} }] } }, actions }),
    ],
    ['an action about a row that is not there', ({ base, actions }) =>
      (
        {
          base,
          actions: [
            ...actions,
            { cause: 'act', label: '', changes: [{ op: 'set', sheet: 'feeds', id: 5, key: 'rated', value: 1 }] },
          ],
        }
      )],
    ['no actions', ({ base }) => ({ base })],
  ])('with %s is damaged', (_what, damage) => {
    expect(renewDraft(damage(draft()) as DraftBody, 1)).toBeUndefined();
  });
});
