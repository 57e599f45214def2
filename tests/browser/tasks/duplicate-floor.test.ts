import { afterEach, beforeEach, expect, test } from 'vitest';
import { CommandEvent } from '../../../components/events/index.ts';
import type { Content } from '../../../src/schedule/index.ts';
import { mountElement, part, parts, removeElements, textOf } from '../element-mount.ts';
import { CountedActions } from './counted-actions.ts';

beforeEach(() => { localStorage.clear(); });
afterEach(removeElements);

/** A ground floor on P1, and a first floor on L1 and its own branch B1: two runs, ten device rows, a relay. */
const CONTENT: Content = {
  details: {},
  sheets: {
    types: [{ type: 'Lamp', draw: 50, nodes: 0, minVoltage: 20, maxVoltage: 30 }, { type: 'Button', draw: 5, nodes: 1 }],
    conductors: [{ conductor: '2.5 mm²', size: 2.5, resistance: 7.41, maxCurrent: 23 }],
    supplies: [{ rail: 'P1', rated: 5 }, { rail: 'L1', rated: 5 }],
    branches: [{ branch: 'B1', limit: 20, terminated: true }],
    ways: ['L1-F1', 'L1-F2'].map((way) => ({ way, rail: 'L1', kind: 'electronic', rated: 2 })),
    runs: ['1', '2'].map((n) => ({ run: `L1-W${n}`, way: `L1-F${n}`, conductor: '2.5 mm²', length: 20 })),
    devices: [
      { ref: 'P1-001', area: 'Level 0, hall', type: 'Button', qty: 3, rail: 'P1' },
      ...Array.from({ length: 10 }, (_, at) => ({
        ref: `L1-${String(at + 1).padStart(3, '0')}`, area: `Level 1, room ${at + 1}`, type: at < 8 ? 'Lamp' : 'Button', qty: 2,
        run: `L1-W${1 + at % 2}`, ...at < 8 ? {} : { branch: 'B1' },
      })),
    ],
    modules: [{ module: 'K1' }],
    outputs: [{ output: 'K1.1', module: 'K1', area: 'Level 1', kind: 'resistive', power: 100 }],
  },
};

test('duplicate a floor: from one of its rows, with the tags that are proposed, one undo', async () => {
  const element = await mountElement({ content: CONTENT });
  const before = element.value;
  const act = new CountedActions(element);
  await act.clickOn(act.rowHeading(3));
  await act.press('Alt+Shift+D');
  await expect.poll(() => textOf(element, 'elv-rework .sum')).toBe(
    '18 rows are copied: Supplies 1, Ways 2, Branches 1, Runs 2, Devices 10, Modules 1, Outputs 1.');
  expect(parts(element, 'elv-rework .tags input').map((field) => (field as HTMLInputElement).value).slice(0, 7))
    .toEqual(['L2', 'L2-F1', 'L2-F2', 'B2', 'L2-W1', 'L2-W2', 'L2-001']);
  expect(element.value).toEqual(before);
  await act.press('Control+Enter');
  const { schedule } = element;
  await expect.poll(() => schedule.rows('devices')).toHaveLength(21);
  expect(schedule.rows('devices').slice(11).map(({ cells }) => cells.area)).toEqual(Array.from({ length: 10 }, (_, at) => `Level 2, room ${at + 1}`));
  const [one, two] = ['L1', 'L2'].map((rail) => schedule.rows('supplies').find(({ cells }) => cells.rail === rail)!.id);
  // 16 × 0.05 A + 4 × 0.005 A on each, and what the lamps and cables take alike.
  expect(schedule.value('supplies', two!, 'connected')).toBeCloseTo(Number(schedule.value('supplies', one!, 'connected')), 12);
  expect(schedule.value('supplies', two!, 'connected')).toBeCloseTo(0.82, 2);
  expect(act.count).toBeLessThanOrEqual(3);
  await act.press('Control+z');
  await expect.poll(() => element.value).toEqual(before);
});

test('a supply by mouse: a tag that exists is refused with its place, another one is entered', async () => {
  const element = await mountElement({ content: CONTENT });
  const act = new CountedActions(element);
  await act.openSheet('supplies');
  await expect.poll(() => act.rowHeading(1).textContent).toBe('2');
  await act.clickOn(act.rowHeading(1), { button: 'right' });
  await act.click('.cell-menu [data-entry=duplicate]');
  await expect.poll(() => part(element, 'elv-rework .tags input')).not.toBeNull();
  await act.click('elv-rework [data-tag="supplies-L1"]');
  await act.press('Control+a');
  await act.type('P1');
  await act.press('Tab');
  await expect.poll(() => textOf(element, 'elv-rework .problems'))
    .toBe('Supplies: row 1 has the tag P1 already. Give the copy of L1 another one.');
  expect(part(element, 'elv-rework [data-do=rework]')!.ariaDisabled).toBe('true');
  await act.click('elv-rework [data-tag="supplies-L1"]');
  await act.press('Control+a');
  await act.type('Q7');
  // What is being typed counts.
  await act.press('Control+Enter');
  await expect.poll(() => element.schedule.rows('supplies').map(({ cells }) => cells.rail)).toEqual(['P1', 'L1', 'Q7']);
  expect(element.schedule.rows('ways').slice(2).map(({ cells }) => cells.rail)).toEqual(['Q7', 'Q7']);
  expect(act.count).toBeLessThanOrEqual(13);
  // What is done to device rows and runs is not done on supplies.
  const asked: string[] = [];
  part(element, 'elv-schedule-grid')!.addEventListener(CommandEvent.type, (event) => {
    if (event instanceof CommandEvent) asked.push(event.command);
  });
  await expect.poll(() => part(element, 'elv-rework')!.hidden).toBe(true);
  await act.press('Alt+Shift+X', 'Alt+Shift+M', 'Alt+Shift+S', 'Alt+Shift+D');
  expect(asked).toEqual(['duplicate']);
});
