import { afterEach, expect, onTestFinished, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import demo from '../../data/demo.schedule.json?raw';
import { mountElement, openSheet, part, parts, removeElements, sample, textOf } from './element-mount.ts';

afterEach(removeElements);

const chosen = (element: Element) => part(element, 'elv-sheet-tabs [aria-selected=true]')!.dataset.sheet;

test('arrows, Home and End lead through the tabs, and the sheet follows', async () => {
  const element = await mountElement({ content: sample() });
  part(element, '[data-sheet=devices]')!.focus();
  await userEvent.keyboard('{ArrowRight}');
  expect(chosen(element)).toBe('supplies');
  expect(part(element, 'elv-sheet-view')!.ariaLabel).toBe('Supplies');
  await expect.poll(() => textOf(element, 'elv-schedule-grid .ht_master thead')).toContain('Rated');
  await userEvent.keyboard('{End}');
  expect(chosen(element)).toBe('contacts');
  await userEvent.keyboard('{ArrowRight}');
  expect(chosen(element)).toBe('devices');
  await userEvent.keyboard('{Home}{ArrowLeft}');
  expect(chosen(element)).toBe('contacts');
});

test('one tab is a stop of the Tab key', async () => {
  const element = await mountElement({ content: sample() });
  expect(parts(element, '[role=tab]').filter((tab) => tab.tabIndex === 0).map((tab) => tab.dataset.sheet))
    .toEqual(['devices']);
});

test('Alt and Page Down goes to the next sheet from anywhere in the element', async () => {
  const element = await mountElement({ content: sample() });
  part(element, '[data-command=save]')!.focus();
  await userEvent.keyboard('{Alt>}{PageDown}{PageDown}{PageUp}{/Alt}');
  expect(chosen(element)).toBe('supplies');
});

const tabs = (element: Element) => parts(element, '[role=tab]').map((tab) => tab.dataset.sheet);

test('sheets without rows have a tab only when they are asked for or shown; lists come last', async () => {
  const element = await mountElement({ content: sample() });
  const filled = ['devices', 'supplies', 'branches', 'outputs', 'feeds', 'types', 'contacts'];
  expect(tabs(element)).toEqual(filled);
  const more = () => part(element, 'elv-sheet-tabs .more')!;
  expect(more().ariaExpanded).toBe('false');
  await openSheet(element, 'enclosures');
  expect(tabs(element).slice(-7)).toEqual(['enclosures', 'terminals', 'cases', 'factors', 'types', 'conductors', 'contacts']);
  await expect.poll(() => chosen(element)).toBe('enclosures');
  expect(more().ariaExpanded).toBe('true');
  more().click();
  await expect.poll(() => tabs(element)).toEqual([...filled.slice(0, 5), 'enclosures', ...filled.slice(5)]);
  part(element, '[data-sheet=devices]')!.click();
  await expect.poll(() => tabs(element)).toEqual(filled);
  element.schedule.act('a run', [{ op: 'insert', sheet: 'runs', at: 0, rows: [{ id: 0, cells: { run: 'R1' } }] }]);
  await expect.poll(() => tabs(element)).toContain('runs');
});

test('a tab names its number of rows, and the rows that are over, near the limit or incomplete', async () => {
  const element = await mountElement({ content: sample() });
  expect(textOf(element, '[data-sheet=supplies]')).toBe('Supplies 3 rows , 1 row over limit');
  expect(part(element, '[data-sheet=supplies] svg.mark.over')).not.toBeNull();
  expect(textOf(element, '[data-sheet=branches]')).toBe('Branches 2 rows');
});

test.for(['en', 'de', 'fr'])('all sheets of the demo have their names in one line at 1280 px, and their numbers for who asks: %s', async (lang) => {
  await page.viewport(1280, 800);
  const element = await mountElement({ attributes: { lang } });
  element.value = demo;
  await expect.poll(() => parts(element, '[role=tab]').length).toBe(12);
  const all = parts(element, '[role=tab]');
  expect(new Set(all.map((tab) => tab.getBoundingClientRect().top)).size).toBe(1);
  const right = part(element, '.tabs .panels')!.getBoundingClientRect().left;
  for (const tab of all) {
    const title = tab.querySelector('.title')!;
    expect(title.scrollWidth, title.textContent).toBeLessThanOrEqual(Math.ceil(title.getBoundingClientRect().width));
    expect(title.getBoundingClientRect().right).toBeLessThan(right);
    expect(tab.title).toMatch(/^\d+ /);
  }
});

const LANGUAGES = ['en', 'de', 'fr'];
test.for([390, 800, 1280, 1440, 1920].flatMap((width) => LANGUAGES.map((lang) => [width, lang] as const)))(
  'at %i px what is chosen is whole, and tabs, tools of the schedule and of the sheet take a line each: %s', async ([width, lang]) => {
    await page.viewport(width, 844);
    onTestFinished(() => page.viewport(1280, 800));
    const element = await mountElement({ attributes: { lang, languages: 'en de fr' } });
    element.value = demo;
    await expect.poll(() => parts(element, '[role=tab]').length).toBe(12);
    await expect.poll(() => parts(element, 'elv-schedule-toolbar select[data-choice]').length).toBe(2);
    const isWhole = (choice: HTMLSelectElement) => {
      const shown = choice.offsetWidth;
      choice.style.maxInlineSize = 'none';
      expect(shown, choice.selectedOptions[0]!.text).toBeGreaterThanOrEqual(choice.offsetWidth - 1);
      choice.style.maxInlineSize = '';
    };
    const panels = part(element, '.tabs .panels') as HTMLSelectElement;
    for (const place of [1, 2, 3, 0]) {
      panels.selectedIndex = place;
      isWhole(panels);
    }
    for (const choice of parts(element, 'elv-schedule-toolbar select[data-choice]')) isWhole(choice as HTMLSelectElement);
    if (width < 560) return;
    const inOneLine = (selector: string) => {
      const tops = parts(element, selector).filter((each) => each.checkVisibility() && each.offsetWidth > 1)
        .map((each) => each.getBoundingClientRect().top + each.offsetHeight / 2);
      expect(tops.length, selector).toBeGreaterThan(5);
      expect(Math.max(...tops) - Math.min(...tops), selector).toBeLessThan(6);
    };
    inOneLine('[role=tab]');
    inOneLine('.commands button');
    inOneLine('elv-schedule-toolbar .tools button');
  });

test('at 390 px the header leaves more than half of the height to the rows', async () => {
  await page.viewport(390, 844);
  onTestFinished(() => page.viewport(1280, 800));
  const element = await mountElement({ attributes: { lang: 'de' } });
  element.value = demo;
  await expect.poll(() => parts(element, '[role=tab]').length).toBe(12);
  const height = ['.header', '.tabs'].reduce((sum, each) => sum + part(element, each)!.getBoundingClientRect().height, 0);
  expect(height).toBeLessThan(844 / 2);
});
