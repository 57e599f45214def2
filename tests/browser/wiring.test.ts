import { afterEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { mountElement, part, parts, removeElements, textOf } from './element-mount.ts';
import { demoContent } from './support/demo-content.ts';
import { openWork, press } from './work-support.ts';

afterEach(removeElements);

const rows = (element: Awaited<ReturnType<typeof mountElement>>, of: string) =>
  parts(element, `elv-wiring table[data-part=${of}] tbody tr`);

test('terminals are laid out with a preview as one action; a run that goes leaves spare ones; the lists follow', async () => {
  const demo = demoContent();
  const element = await mountElement({ content: { ...demo, sheets: { ...demo.sheets, terminals: [] } } });
  await openWork(element, 'wiring');
  await expect.poll(() => rows(element, 'came').length).toBe(100);
  expect(rows(element, 'came')[0]!.textContent).toContain('+KP-1-X1:1');
  await press(element, '[data-do=layOut]');
  await expect.poll(() => element.schedule.rows('terminals').length).toBeGreaterThan(200);
  expect(element.schedule.findings.filter(({ sheet }) => sheet === 'terminals')).toEqual([]);
  const count = element.schedule.rows('terminals').length;
  element.schedule.undo();
  expect(element.schedule.rows('terminals')).toHaveLength(0);
  element.schedule.redo();
  expect(element.schedule.rows('terminals')).toHaveLength(count);

  element.schedule.act('Deletion', [{ op: 'remove', sheet: 'runs', at: 0, count: 1 }]);
  await openWork(element, 'wiring');
  await expect.poll(() => rows(element, 'gone').length).toBe(2);
  // What is not taken stays as it is.
  await userEvent.click(part(element, 'elv-wiring [name=gone]')!);
  await press(element, '[data-view=wiring]');
  expect(parts(element, 'elv-wiring table').length).toBeGreaterThan(4);
  expect(textOf(element, 'elv-wiring .body')).toContain('K1.1:14');
  await press(element, '[data-view=cables]');
  expect(textOf(element, 'elv-wiring .body')).toContain('L1-W2');
  await press(element, '[data-view=spare]');
  expect(textOf(element, 'elv-wiring .body')).toContain('+KP-1-X2');
});

test('F4 opens it; where nothing is to be wired it says so', async () => {
  const element = await mountElement();
  part(element, '[data-command=save]')!.focus();
  await userEvent.keyboard('{F4}');
  await expect.poll(() => part(element, 'elv-wiring')?.hidden).toBe(false);
  await expect.poll(() => textOf(element, 'elv-wiring .body')).toContain('There is nothing to wire yet');
  expect(part(element, 'elv-wiring [data-do=layOut]')!.matches(':disabled')).toBe(true);
});
