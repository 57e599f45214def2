import { afterEach, expect, test, vi } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { LoadScheduleElement } from '../../../components/load-schedule/load-schedule.ts';
import { fileOf, one } from '../draft-support.ts';
import { mountElement, parts, removeElements, said } from '../element-mount.ts';

// As where the network is gone when the formula engine is fetched: the module fails, not its making, which would end
// the run. That it is had later is tested on a built page (`tests/pages/formulas`), as a module that failed by itself
// never comes back.
vi.mock('../../../src/engine/formula-engine.ts', () => ({
  get FormulaEngine() { throw new Error('The formula engine cannot be fetched.'); },
}));

afterEach(removeElements);

const UNFETCHED = 'This part could not be fetched. Check the connection, then try again.';
const WHY = 'Ref D1: the formula in Qty is not calculated yet, because a part of the software has not been fetched. If this stays, check the connection and enter the formula again; if that does not help, save the schedule and load the page again.';

const valueOf = (element: LoadScheduleElement) =>
  element.schedule.value('devices', element.schedule.rows('devices')[0]!.id, 'qty');

test('where formulas cannot be calculated a person is told, they stay unknown, and all else goes on', async () => {
  const reported = vi.fn();
  vi.stubGlobal('reportError', reported);
  const element = await mountElement({ content: one(3) });
  // What is fetched ahead of the first formula is no matter of a person.
  await expect.poll(() => reported.mock.calls.length).toBe(1);
  expect(said(element)).toBe('');
  await element.select('devices', 'D1', 'qty');
  await userEvent.keyboard('=2*3{Enter}');
  await expect.poll(() => said(element)).toBe(UNFETCHED);
  expect([valueOf(element), JSON.parse(element.value)]).toMatchObject([null, { sheets: { devices: [{ qty: '=2*3' }] } }]);
  await expect.poll(() => parts(element, 'elv-schedule-panel li').some(({ textContent }) => textContent.includes(WHY)))
    .toBe(true);
  // A person is told once, and works on.
  await element.select('devices', 'D1', 'area');
  await userEvent.keyboard('Hall{Enter}');
  expect(element.schedule.rows('devices')[0]!.cells.area).toBe('Hall');
  await expect.poll(() => said(element)).not.toBe(UNFETCHED);
  // A file is opened all the same.
  await element.openFile({ name: 'other.schedule.json', text: fileOf('=7*8') });
  expect(valueOf(element)).toBeNull();
  await expect.poll(() => said(element)).toBe(UNFETCHED);
});
