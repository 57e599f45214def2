import { afterEach, expect, test } from 'vitest';
import draft from '../data/versions/1.draft.json' with { type: 'json' };
import { mountElement, removeElements } from './element-mount.ts';
import { change, freshKey, kept, notices } from './draft-support.ts';

afterEach(removeElements);

/** Puts the frozen draft of version 1 where the browser keeps drafts, as software of that version left it there. */
async function leaveOldDraft(key: string): Promise<void> {
  await kept(key);
  const { base, actions, format: _format, ...head } = draft;
  const id = Date.now();
  await change('heads', { ...head, id, key });
  const entries = [base, ...actions].map((entry, number) => change('entries', entry, [id, number]));
  await Promise.all(entries);
}

/** The page's file of version 1, with which the draft began. */
function pageFile(): string {
  const { base: { details, accepted, sheets } } = draft;
  const rows = Object.fromEntries(Object.entries(sheets).map(([sheet, list]) => [
    sheet, list.map(({ cells }) => ({ ...cells })),
  ]));
  Object.assign(rows.devices![1]!, { qty: '=L1+types!G1+D1' });
  const file = { format: 'elv-load-schedule', version: 1, details, sheets: rows, accepted };
  return URL.createObjectURL(new Blob([JSON.stringify(file)], { type: 'application/json' }));
}

test('a draft that version 1 left in the browser is shown, can be taken back, and goes on as one of version 2',
  async () => {
  const key = freshKey();
  await leaveOldDraft(key);
  const element = await mountElement({ key: null, attributes: { 'storage-key': key, src: pageFile() } });
  const nodes = () => element.schedule.value('branches', 0, 'nodes');
  // By hand, as version 1 showed it: 4 drives of 2 nodes, 8 sensors of 1, 6 of the third type of 1.
  await expect.poll(() => element.schedule.rows('branches').length && nodes()).toBe(22);
  expect(notices(element)[0]).toMatch(/^Draft of .* restored/);
  expect(await kept(key)).toMatchObject([{ version: 2, count: 12 }]);
  // The quantity of the third type was 7 before.
  element.undo();
  expect(nodes()).toBe(23);
  await expect.poll(async () => (await kept(key)).map(({ count }) => count)).toEqual([13]);
});
