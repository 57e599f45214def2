import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { today } from '../../components/look/today.ts';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { renameTag, setCells, type Cells } from '../../src/schedule/index.ts';
import { layOutTerminals, layoutChanges } from '../../src/terminals/index.ts';
import { mountElement, part, parts, removeElements, textOf } from './element-mount.ts';
import { demoContent } from './support/demo-content.ts';
import { openWork, press } from './work-support.ts';

beforeEach(() => { sessionStorage.clear(); });
afterEach(async () => {
  removeElements();
  sessionStorage.clear();
  await page.viewport(1280, 800);
});

/** The demo with its terminals laid out, in the view of what is wired. */
async function mountProgress(): Promise<LoadScheduleElement> {
  const element = await mountElement({ content: demoContent() });
  const { schedule } = element;
  schedule.act('Terminals', layoutChanges(schedule.document, layOutTerminals(schedule.document, schedule.figures)));
  await openWork(element, 'wiring');
  await press(element, '[data-view=progress]');
  await expect.poll(() => boxes(element, 'wired').length).toBeGreaterThan(10);
  return element;
}

const boxes = (element: LoadScheduleElement, name: 'wired' | 'checked') =>
  parts(element, `elv-wiring-progress .tick [name=${name}]`) as HTMLInputElement[];
const said = (element: LoadScheduleElement) => textOf(element, 'elv-wiring-progress .said');
const sum = (element: LoadScheduleElement) => textOf(element, 'elv-wiring-progress [data-sum=all]');
const terminal = (element: LoadScheduleElement, at = 0): Cells => element.schedule.rows('terminals')[at]!.cells;
const count = (element: LoadScheduleElement) => element.schedule.rows('terminals').length;
const enterName = (element: LoadScheduleElement, name: string) => userEvent.fill(part(element, 'elv-wiring-progress [name=who]')!, name);

describe('ticks of terminals', () => {
  test('ask for a name once, keep who, when and what for, and each is an action that is taken back', async () => {
    const element = await mountProgress();
    expect(sum(element)).toBe(`0 of ${count(element)} wired, 0 checked`);
    await userEvent.click(boxes(element, 'wired')[0]!);
    expect(said(element)).toContain('Enter your name first');
    expect(boxes(element, 'wired')[0]!.checked).toBe(false);
    expect(terminal(element).wired).toBeUndefined();
    // The field has the focus.
    await userEvent.keyboard('Ada');
    await userEvent.click(boxes(element, 'wired')[0]!);
    const { inside, potential, outside, core, bridge } = terminal(element);
    expect(terminal(element)).toMatchObject({
      wired: true, by: 'Ada', on: today(), wiredAs: [inside, potential, outside, core, bridge].map((each) => each ?? '–').join(' · '),
    });
    expect(sum(element)).toBe(`1 of ${count(element)} wired, 0 checked`);
    expect(boxes(element, 'wired')[0]!.checked).toBe(true);
    await press(element, '[data-do=takeBack]');
    expect(terminal(element).wired ?? null).toBeNull();
    expect(terminal(element).by ?? null).toBeNull();
    await expect.poll(() => boxes(element, 'wired')[0]!.checked).toBe(false);
    // Undo of the page works alike.
    await userEvent.click(boxes(element, 'wired')[0]!);
    element.schedule.undo();
    await expect.poll(() => sum(element)).toBe(`0 of ${count(element)} wired, 0 checked`);
  });

  test('who checks what is not wired is told; a tick that is taken back takes who and when along', async () => {
    const element = await mountProgress();
    await enterName(element, 'Ada');
    await userEvent.click(boxes(element, 'checked')[0]!);
    expect(said(element)).toContain('is not ticked as wired');
    expect(boxes(element, 'checked')[0]!.checked).toBe(false);
    expect(terminal(element).checked).toBeUndefined();
    await userEvent.click(boxes(element, 'wired')[0]!);
    await userEvent.click(boxes(element, 'checked')[0]!);
    expect(said(element)).toContain('somebody else sees more');
    await userEvent.click(boxes(element, 'checked')[0]!);
    await enterName(element, 'Ben');
    await userEvent.click(boxes(element, 'checked')[0]!);
    expect(terminal(element)).toMatchObject({ by: 'Ada', checkedBy: 'Ben', checkedOn: today() });
    expect(sum(element)).toContain('1 of 2');
    await userEvent.click(boxes(element, 'wired')[0]!);
    expect(said(element)).toContain('both ticks are taken back');
    expect(['wired', 'by', 'on', 'wiredAs', 'checked', 'checkedBy', 'checkedOn', 'checkedAs'].filter((key) => (terminal(element)[key] ?? null) !== null)).toEqual([]);
  });

  test('one that joins something else by now is open again, and said; a new tag alone changes nothing', async () => {
    const element = await mountProgress();
    const { schedule } = element;
    await enterName(element, 'Ada');
    await userEvent.click(boxes(element, 'wired')[0]!);
    const feed = schedule.rows('feeds')[0]!;
    schedule.act('Rename', renameTag(schedule.document, 'feeds', feed.id, 'Q77'));
    await expect.poll(() => parts(element, 'elv-wiring-progress .wires')[0]!.textContent).toContain('Q77');
    expect(sum(element)).toBe(`1 of ${count(element)} wired, 0 checked`);
    const { id } = schedule.rows('terminals')[0]!;
    schedule.act('Edit', setCells(schedule.document, [{ sheet: 'terminals', id, key: 'core', value: '7' }]));
    await expect.poll(() => sum(element)).toBe(`0 of ${count(element)} wired, 0 checked; 1 changed since it was ticked`);
    expect(boxes(element, 'wired')[0]!.indeterminate).toBe(true);
    expect(textOf(element, 'elv-wiring-progress .changed')).toContain('Changed since: ticked as wired for');
    // Laying out says beforehand which ticks it disturbs.
    schedule.undo();
    schedule.act('Delete', [{ op: 'remove', sheet: 'feeds', at: 0, count: 1 }]);
    await press(element, '[data-view=layOut]');
    await expect.poll(() => textOf(element, 'elv-wiring [data-ticked]')).toContain('1 terminal that is ticked');
    schedule.undo();
    schedule.act('Edit', setCells(schedule.document, [{ sheet: 'terminals', id, key: 'core', value: '7' }]));
    await press(element, '[data-view=progress]');
    await expect.poll(() => sum(element)).toContain('1 changed');
    // It is ticked anew for what it joins now.
    await userEvent.click(boxes(element, 'wired')[0]!);
    expect(sum(element)).toBe(`1 of ${count(element)} wired, 0 checked`);
    expect(String(terminal(element).wiredAs)).toContain('7');
  });

  test('what is left is shown alone, by strip or by cable, and nothing vanishes under the hand', async () => {
    const element = await mountProgress();
    await enterName(element, 'Ada');
    await userEvent.click(boxes(element, 'wired')[0]!);
    await press(element, '[data-choice=wired]');
    await expect.poll(() => parts(element, 'elv-wiring-progress .group').length).toBeGreaterThan(2);
    const all = boxes(element, 'wired').length;
    await userEvent.click(boxes(element, 'wired')[0]!);
    expect(boxes(element, 'wired')).toHaveLength(all);
    await press(element, '[data-choice=checked]');
    await expect.poll(() => boxes(element, 'checked').length).toBe(2);
    await press(element, '[data-choice=all]');
    await press(element, '[data-choice=outside]');
    await expect.poll(() => parts(element, 'elv-wiring-progress .group').at(-1)!.textContent).toContain('Without a cable');
    const cables = parts(element, 'elv-wiring-progress .group').map((group) => group.dataset.group!);
    expect(cables.slice(0, -1)).toEqual([...cables.slice(0, -1)].sort((one, other) => one.localeCompare(other, 'en', { numeric: true })));
    const cable = cables.indexOf(String(terminal(element).outside));
    expect(parts(element, 'elv-wiring-progress .group')[cable]!.textContent).toContain('1 of');
  });

  test('by keys: Space ticks, arrows go up, down and across, a fault is noted and Escape leaves the note alone', async () => {
    const element = await mountProgress();
    await enterName(element, 'Ada');
    boxes(element, 'wired')[0]!.focus();
    await userEvent.keyboard(' {ArrowRight} {ArrowDown}');
    expect(terminal(element)).toMatchObject({ wired: true, checked: true });
    const root = part(element, 'elv-wiring-progress')!.shadowRoot!;
    expect(root.activeElement).toBe(boxes(element, 'checked')[1]);
    await userEvent.keyboard('{ArrowLeft} ');
    expect(terminal(element, 1)).toMatchObject({ wired: true });
    await userEvent.click(part(element, 'elv-wiring-progress [data-note]')!);
    await expect.poll(() => (root.activeElement as HTMLInputElement).name).toBe('note');
    await userEvent.keyboard('core broken{Enter}');
    expect(terminal(element).note).toBe('core broken');
    expect(textOf(element, 'elv-wiring-progress .fault')).toBe('core broken');
    await userEvent.click(part(element, 'elv-wiring-progress [data-note]')!);
    await expect.poll(() => (root.activeElement as HTMLInputElement).name).toBe('note');
    await userEvent.keyboard(' twice{Escape}');
    expect(terminal(element).note).toBe('core broken');
    expect(part(element, 'elv-wiring')!.hidden).toBe(false);
  });

  test('a spare terminal has nothing to tick; read-only nothing is ticked', async () => {
    const element = await mountProgress();
    const { schedule } = element;
    const { id } = schedule.rows('terminals')[0]!;
    schedule.act('Edit', setCells(schedule.document, ['potential', 'inside', 'outside', 'core', 'bridge'].map((key) => ({ sheet: 'terminals', id, key, value: null }))));
    await expect.poll(() => boxes(element, 'wired')[0]!.disabled).toBe(true);
    expect(sum(element)).toBe(`0 of ${count(element) - 1} wired, 0 checked`);
    element.readonly = true;
    await expect.poll(() => boxes(element, 'wired').every(({ disabled }) => disabled)).toBe(true);
  });
});

test.each([390, 800, 1920])('at %i px ticks are large enough for a thumb and nothing is cut off', async (width) => {
  await page.viewport(width, 800);
  const element = await mountProgress();
  await enterName(element, 'Ada');
  for (const box of [...boxes(element, 'wired').slice(0, 3), ...boxes(element, 'checked').slice(0, 2)]) await userEvent.click(box);
  for (const tick of parts(element, 'elv-wiring-progress .tick').slice(0, 20)) {
    const { width: across, height } = tick.getBoundingClientRect();
    expect(Math.min(across, height)).toBeGreaterThanOrEqual(44);
  }
  for (const line of parts(element, 'elv-wiring-progress .terminal').slice(0, 8)) {
    const [wires, wired, checked] = ['.wires', '.tick', '.tick ~ .tick'].map((of) => line.querySelector(of)!.getBoundingClientRect()) as [DOMRect, DOMRect, DOMRect];
    expect(wires.right).toBeLessThanOrEqual(wired.left);
    expect(wired.right).toBeLessThan(checked.left);
    expect(wired.width).toBeLessThan(110);
  }
  // With a mouse, what is not a tick may be lower.
  const least = width < 1100 ? 44 : 24;
  for (const each of [...parts(element, 'elv-wiring-progress button').slice(0, 12), ...parts(element, 'elv-wiring-progress [name=who]')]) {
    expect(each.getBoundingClientRect().height).toBeGreaterThanOrEqual(least);
  }
  const body = part(element, 'elv-wiring .body')!;
  expect(body.scrollWidth).toBeLessThanOrEqual(body.clientWidth);
});
