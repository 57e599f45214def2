import axe from 'axe-core';
import { afterEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { aliveOf } from './support/alive.ts';
import { mountElement, part, parts, removeElements, sample, textOf } from './element-mount.ts';

afterEach(removeElements);

/** Violations outside the grid, whose own are its tests' business. */
async function violations(element: Element): Promise<string[]> {
  const { violations: found } = await axe.run(element, { resultTypes: ['violations'] });
  return found.flatMap(({ id, nodes }) => nodes
    .filter(({ target }) => !JSON.stringify(target).includes('elv-schedule-grid'))
    .map(({ target, failureSummary }) => `${id}: ${JSON.stringify(target)} ${failureSummary ?? ''}`));
}

test.each(['light', 'dark'])('axe finds nothing of ours: %s', async (scheme) => {
  document.documentElement.style.colorScheme = scheme;
  document.body.style.background = scheme === 'light' ? '#fff' : '#000';
  const element = await mountElement({ content: sample() });
  await element.select('supplies', 'L1', 'demand');
  expect(await violations(element)).toEqual([]);
  document.documentElement.style.colorScheme = document.body.style.background = '';
});

test('axe finds nothing in an empty element, nor in one with problems and the keys open', async () => {
  const element = await mountElement();
  expect(await violations(element)).toEqual([]);
  await element.openFile({ name: 'bad.csv', text: 'Ref,Qty\nD1,two\n' });
  part(element, '#keys')!.showPopover();
  await element.updateComplete;
  expect(await violations(element)).toEqual([]);
});

test('a script that brings a cell into view scrolls the grid alone, never the header out of sight', async () => {
  const element = await mountElement({ content: sample() });
  const box = part(element, '.element')!;
  box.scrollTop = 100;
  expect([box.scrollTop, element.scrollTop]).toEqual([0, 0]);
});

test('without a key the element says what is needed, and the rest works', async () => {
  const element = await mountElement({ content: sample(), key: null });
  await expect.poll(() => textOf(element, 'elv-sheet-view .card')).toContain('Give its key in the attribute license-key');
  expect(textOf(element, 'elv-sheet-view .card')).toContain('non-commercial-and-evaluation');
  expect(part(element, 'elv-schedule-grid')).toBeNull();
  expect(textOf(element, 'elv-schedule-panel .sentence')).toBe('1.16 A of 1.00 A, 116 %, target 80 %');
  await element.select('supplies', 'L1', 'demand');
  await element.updateComplete;
  expect(textOf(element, 'elv-cell-explanation .result')).toBe('1.16 A');
  expect(await violations(element)).toEqual([]);
});

test('a key that is given later brings the rows', async () => {
  const element = await mountElement({ content: sample(), key: null });
  element.licenseKey = 'non-commercial-and-evaluation';
  await expect.poll(() => part(element, 'elv-schedule-grid td')).not.toBeNull();
});

test('figures follow the language of the page', async () => {
  const element = await mountElement({ content: sample(), attributes: { lang: 'de' } });
  expect(textOf(element, 'elv-schedule-panel .sentence')).toBe('1,16 A von 1,00 A, 116 %, Zielwert 80 %');
  element.lang = 'en';
  await element.updateComplete;
  await expect.poll(() => textOf(element, 'elv-schedule-panel .sentence')).toContain('1.16 A');
});

test('the keys are shown by a key, and Escape puts them away', async () => {
  const element = await mountElement({ content: sample() });
  part(element, '[data-command=save]')!.focus();
  await userEvent.keyboard('{Control>}/{/Control}');
  expect(part(element, '#keys')!.matches(':popover-open')).toBe(true);
  // The list is fetched when it is asked for.
  await expect.poll(() => textOf(element, '#keys')).toContain('Ctrl+D');
  await userEvent.keyboard('{Escape}');
  expect(part(element, '#keys')!.matches(':popover-open')).toBe(false);
});

test('the cautions are always in view, and the rest of them a press away', async () => {
  const element = await mountElement({ content: sample() });
  expect(textOf(element, '.cautions summary')).toContain('competent person');
  part(element, '.cautions summary')!.click();
  expect((part(element, '.cautions') as HTMLDetailsElement).open).toBe(true);
  expect(textOf(element, '.cautions p')).toContain('licensed electricians');
});

test('an element that is moved keeps its schedule, its sheet and its rows', async () => {
  const element = await mountElement({ content: sample() });
  await element.select('supplies', 'L2', 'rated');
  const box = document.createElement('div');
  document.body.append(box);
  box.append(element);
  await element.updateComplete;
  expect(part(element, '[aria-selected=true]')!.dataset.sheet).toBe('supplies');
  await userEvent.keyboard('{Escape}');
  element.schedule.act('Rated', [{ op: 'set', sheet: 'supplies', id: 1, key: 'rated', value: 7 }]);
  await expect.poll(() => parts(element, 'elv-schedule-panel .sentence').map((each) => each.textContent))
    .toContain('0.84\u00a0A of 7.00\u00a0A, 12\u202f%, target 80\u202f%');
  box.remove();
});

test('elements that are removed are freed', async () => {
  const gone: WeakRef<Element>[] = [];
  for (let round = 0; round < 5; round += 1) {
    const element = await mountElement({ content: sample() });
    gone.push(new WeakRef(element));
    element.remove();
  }
  // The last one may be held by what the browser remembers of the focus.
  await expect.poll(() => aliveOf(gone), { timeout: 10_000, interval: 200 }).toBeLessThanOrEqual(1);
});
