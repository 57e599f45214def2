import { afterEach, expect, test } from 'vitest';
import { mountElement, parts, removeElements, sample } from '../element-mount.ts';
import { isSeen, VIEWS } from './every-view.ts';

afterEach(removeElements);

/** Least side of a target [CSS px]. WCAG 2.2, success criterion 2.5.8. */
const LEAST = 24;
const TARGETS = 'button,input,select,textarea,summary,a[href],[role=tab],[role=radio],[tabindex="0"]';

/** What a pointer may hit: a box with a label is hit on its label too. */
function boxOf(target: Element): DOMRect {
  return (target.matches('input') ? target.closest('label') ?? target : target).getBoundingClientRect();
}

/** Whether a circle of the least size around the middle of a small target touches no other target. */
function hasRoom(box: DOMRect, others: readonly DOMRect[]): boolean {
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  return others.every((other) => {
    const [dx, dy] = [Math.max(other.left - x, 0, x - other.right), Math.max(other.top - y, 0, y - other.bottom)];
    return Math.hypot(dx, dy) >= LEAST / 2;
  });
}

test.each(VIEWS)('in %s no target is too small to hit', async (_name, show) => {
  const element = await mountElement({ content: sample() });
  await show(element);
  const targets = parts(element, TARGETS).filter((each) => isSeen(each) && each.closest('.handsontable') === null
    && !each.matches('input[type=file], .handsontableInput'));
  expect(targets.length).toBeGreaterThan(20);
  const boxes = targets.map(boxOf);
  const small = targets.filter((_target, index) => {
    const box = boxes[index]!;
    if (box.width >= LEAST && box.height >= LEAST) return false;
    return !hasRoom(box, boxes.filter((_other, at) => at !== index));
  });
  expect(small.map((each) => `${each.outerHTML.slice(0, 90)} ${boxOf(each).width} × ${boxOf(each).height}`))
    .toEqual([]);
});
