import { afterEach, describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { Content } from '../../src/schedule/index.ts';
import { cellAt, frame, mountGrid, textsOf, unmountAll } from './support/mount.ts';
import { COLUMN, sample } from './support/sample-content.ts';

afterEach(unmountAll);

const headings = (grid: Element & { renderRoot: ParentNode }): string[] =>
  [...grid.renderRoot.querySelectorAll<HTMLElement>('.group')]
    .sort((one, other) => one.getBoundingClientRect().top - other.getBoundingClientRect().top)
    .map((element) => element.innerText.replace(/\s+/g, ' ').trim());

/** Two rails with 60 rows each, entered in turns. */
const long = (): Content => ({
  details: {},
  sheets: {
    devices: Array.from(
      { length: 120 },
      (_, index) => ({ ref: `D${index + 1}`, qty: 1, unitDraw: 100, rail: index % 2 === 0 ? 'L1' : 'L2' })
    ),
    supplies: [{ rail: 'L1', rated: 5 }, { rail: 'L2', rated: 10 }],
  },
});

describe('device rows per rail and per branch', () => {
  test('headings carry tag, purpose, total, target and status in words', async () => {
    const { grid } = await mountGrid(sample(), { grouping: 'rail' });
    expect(textsOf(grid, [COLUMN.ref], [1, 2, 4, 6])).toEqual([['D1'], ['D2'], ['D3'], ['D4']]);
    const plain = headings(grid).map((text) => text.replace(/[\u00a0\u202f]/g, ' '));
    expect(plain).toEqual([
      'L1 lighting 0.96 A of 10.00 A, 10 %, target 80 % within limits 2 rows',
      'L2 control 0.28 A of 5.00 A, 6 %, target 80 % within limits 1 row',
      'No known rail 0.30 A on no supply 1 row',
    ]);
    expect(grid.renderRoot.querySelectorAll('.group .bar .tick')).toHaveLength(2);
    expect(cellAt(grid, 0, 0).textContent.replace(/[\u00a0\u202f]/g, ' ')).toBe(
      'L1, lighting, 0.96 A of 10.00 A, 10 %, target 80 %, within limits, 2 rows');
  });

  test('per branch they count nodes', async () => {
    const { grid } = await mountGrid(sample(), { grouping: 'branch' });
    const plain = headings(grid).map((text) => text.replace(/[\u00a0\u202f]/g, ' '));
    expect(plain[0]).toMatch(/^B1 6 of 50 nodes, 12 %/);
    expect(plain[2]).toBe('No known branch 3 nodes on no branch 1 row');
  });

  test('a sum over rows of which one is not known is at least so much', async () => {
    const content: Content = {
      details: {}, sheets: { devices: [
        { ref: 'D1', area: 'Hall', qty: 2, unitDraw: 100 }, { ref: 'D2', area: 'Hall' }, { ref: 'D3', area: 'Bar', qty: 1, unitDraw: 100 },
      ] },
    };
    const { grid } = await mountGrid(content, { grouping: 'area' });
    expect(headings(grid).map((text) => text.replace(/[\u00a0\u202f]/g, ' ')))
      .toEqual(['Hall demand ≥ 0.20 A 2 rows', 'Bar demand 0.10 A 1 row']);
  });

  test('the heading of the first visible row stays in view, and the next one pushes it out', async () => {
    const { grid } = await mountGrid(long(), { grouping: 'rail', height: 320 });
    const holder = grid.renderRoot.querySelector<HTMLElement>('.ht_master .wtHolder')!;
    holder.scrollTop = 600;
    await frame();
    expect(headings(grid)).toHaveLength(1);
    expect(headings(grid)[0]).toContain('L1');
    const head = grid.renderRoot.querySelector('.ht_clone_top thead')!.getBoundingClientRect();
    const pinned = grid.renderRoot.querySelector('.group')!.getBoundingClientRect();
    expect(Math.abs(pinned.top - head.bottom)).toBeLessThanOrEqual(1);
    holder.scrollTop = 61 * pinned.height + 5;
    await frame();
    expect(headings(grid)[0]).toContain('L2');
  });

  test('a row reached with the keys does not lie behind the heading', async () => {
    const { grid, schedule } = await mountGrid(long(), { grouping: 'rail', height: 320 });
    grid.goTo(schedule.document.rows('devices')[60]!.id, 'qty');
    await userEvent.keyboard('{ArrowUp}'.repeat(14));
    await frame();
    const group = grid.renderRoot.querySelector('.group')!.getBoundingClientRect();
    const cell = grid.renderRoot.querySelector('.ht_master td.current')!.getBoundingClientRect();
    expect(cell.top).toBeGreaterThanOrEqual(group.bottom - 2);
  });

  test('keys pass over headings, which cannot be edited', async () => {
    const { grid, schedule } = await mountGrid(sample(), { grouping: 'rail' });
    await userEvent.click(cellAt(grid, 2, COLUMN.qty));
    await userEvent.keyboard('{ArrowDown}8{Enter}');
    expect(schedule.document.rows('devices')[2]!.cells.qty).toBe(8);
    await userEvent.click(cellAt(grid, 1, COLUMN.qty));
    await userEvent.keyboard('{ArrowUp}5{Enter}');
    expect(schedule.document.rows('devices')[0]!.cells.qty).toBe(5);
    expect(schedule.document.rows('devices')).toHaveLength(4);
  });

  test('a row inserted in a group belongs to it; one typed on the blank line to none', async () => {
    const { grid, schedule } = await mountGrid(sample(), { grouping: 'rail' });
    grid.goTo(schedule.document.rows('devices')[2]!.id, 'qty');
    grid.insertBelow();
    expect(schedule.document.rows('devices')[3]!.cells).toEqual({ rail: 'L2' });
    await frame();
    await userEvent.keyboard('4{Enter}');
    expect(schedule.document.rows('devices')[3]!.cells).toEqual({ rail: 'L2', qty: 4 });
  });

  test('a row that gets another rail goes to its group, with the selection', async () => {
    const { grid, schedule, selections } = await mountGrid(sample(), { grouping: 'rail' });
    const id = schedule.document.rows('devices')[0]!.id;
    schedule.act('Edit of Rail', [{ op: 'set', sheet: 'devices', id, key: 'rail', value: 'L2' }]);
    await frame();
    expect(textsOf(grid, [COLUMN.ref], [1, 3, 4])).toEqual([['D2'], ['D1'], ['D3']]);
    grid.goTo(id, 'rail');
    await frame();
    await userEvent.keyboard('L1{Enter}');
    await frame();
    expect(textsOf(grid, [COLUMN.ref], [1, 2, 4])).toEqual([['D1'], ['D2'], ['D3']]);
    expect(selections.at(-1)!.key).toBe('rail');
  });

  test('moving a row stays within its group', async () => {
    const { grid, schedule, messages } = await mountGrid(sample(), { grouping: 'rail' });
    const id = schedule.document.rows('devices')[2]!.id;
    grid.goTo(id, 'qty');
    grid.moveUp();
    expect(messages.at(-1)!.text).toBe('There is no row above to change places with.');
    expect(schedule.undoLabel).toBeUndefined();
  });
});
