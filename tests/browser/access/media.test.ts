import { afterEach, expect, onTestFinished, test } from 'vitest';
import { cdp } from 'vitest/browser';
import { mountElement, part, parts, removeElements, sample } from '../element-mount.ts';
import { isSeen, VIEWS } from './every-view.ts';

interface Devtools { send: (method: string, params: object) => Promise<unknown> }

/** Has the browser tell pages what a person has set in the system. */
async function emulate(name: string, value: string): Promise<void> {
  await (cdp() as Devtools).send('Emulation.setEmulatedMedia', { features: [{ name, value }] });
}

afterEach(async () => {
  removeElements();
  await (cdp() as Devtools).send('Emulation.setEmulatedMedia', { features: [] });
});

test('whoever wants less motion sees none', async () => {
  await emulate('prefers-reduced-motion', 'reduce');
  expect(matchMedia('(prefers-reduced-motion: reduce)').matches).toBe(true);
  const element = await mountElement({ content: sample() });
  for (const [name, show] of VIEWS) {
    await show(element);
    const moving = parts(element, '*').filter((each) => {
      const { transitionDuration, animationName } = getComputedStyle(each);
      return (transitionDuration !== '0s' || animationName !== 'none') && each.closest('.handsontable') === null;
    });
    expect(moving.map((each) => each.outerHTML.slice(0, 80)), name).toEqual([]);
  }
});

test('under fingers, where what opens a heading is always in sight, it covers no title', async () => {
  const touch = (enabled: boolean) => (cdp() as Devtools).send('Emulation.setTouchEmulationEnabled', { enabled });
  await touch(true);
  onTestFinished(async () => { await touch(false); });
  expect(matchMedia('(hover: none)').matches).toBe(true);
  const element = await mountElement({ content: sample() });
  for (const sheet of ['devices', 'supplies', 'types'] as const) {
    part(element, `[data-sheet=${sheet}]`)!.click();
    await element.updateComplete;
    await expect.poll(() => parts(element, '.ht_clone_top thead th .title').length).toBeGreaterThan(3);
    const covered = parts(element, '.ht_clone_top thead th.named').filter((heading) => {
      const [title, menu] = ['.title', '.menu'].map((each) => heading.querySelector<HTMLElement>(each)!);
      expect(getComputedStyle(menu!).opacity).toBe('1');
      expect(menu!.offsetHeight).toBeGreaterThanOrEqual(24);
      return menu!.getBoundingClientRect().bottom > title!.getBoundingClientRect().top + 2;
    });
    expect(covered.map(({ textContent }) => textContent), sheet).toEqual([]);
  }
});

test('in forced colours what is chosen, the focus and the bars can be told apart', async () => {
  await emulate('forced-colors', 'active');
  expect(matchMedia('(forced-colors: active)').matches).toBe(true);
  const element = await mountElement({ content: sample() });
  await element.select('devices', 'D1', 'qty');
  const tab = part(element, '[role=tab][aria-selected=true]')!;
  expect(getComputedStyle(tab).outlineStyle).toBe('solid');
  part(element, '[data-severity=over]')!.click();
  await element.updateComplete;
  await expect.poll(() => part(element, '[data-severity][aria-pressed=true]')).not.toBeNull();
  expect(getComputedStyle(part(element, '[data-severity][aria-pressed=true]')!).outlineStyle).toBe('solid');
  const border = parts(element, '.wtBorder').find((each) => isSeen(each) && each.getBoundingClientRect().width > 0)!;
  expect(getComputedStyle(border).backgroundColor).not.toBe(getComputedStyle(element).backgroundColor);
  expect(getComputedStyle(border).forcedColorAdjust).toBe('none');
  // Buttons have an edge, since their ground is the page's.
  const save = getComputedStyle(part(element, '[data-command=save]')!);
  expect([save.borderStyle, save.borderWidth]).toEqual(['solid', '1px']);
});
