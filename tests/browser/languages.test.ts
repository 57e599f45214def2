import { afterEach, describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { ScheduleGrid } from '../../components/grid/index.ts';
import { SCHEMA, SHEET_NAMES } from '../../src/schedule/index.ts';
import { mountElement, openSheet, part, parts, removeElements, sample, textOf } from './element-mount.ts';
import { demoContent } from './support/demo-content.ts';
import { englishLeft } from './support/english-left.ts';
import { explainEach } from './support/explain-each.ts';

afterEach(() => {
  removeElements();
  localStorage.clear();
});

/** What an element in German and French is expected to say; the figures are those of the comment of the sample. */
const SPOKEN = [
  {
    lang: 'de', tabs: [
      'Geräte', 'Versorgungen', 'Bus-Stränge',
    ], save: 'Speichern', loading: '1,16 A von 1,00 A, 116 %, Zielwert 80 %',
    rule: 'Strombedarf von D1 = Anschlussstrom × Gleichzeitigkeitsfaktor = 0,70 A × 80 % = 0,56 A',
    lighting: 'Beleuchtung', yes: 'ja',
    keys: 'Strg+D', none: 'Gehäuse: noch keine Zeilen', headings: 'Kennzeichen\tAnzahl',
    pasted: '1 Zeile mit 2 Spalten eingefügt.',
  },
  {
    lang: 'fr', tabs: [
      'Appareils', 'Alimentations', 'Segments de bus',
    ], save: 'Enregistrer', loading: '1,16 A sur 1,00 A, 116 %, cible 80 %',
    rule: 'Courant d’emploi de D1 = courant installé × facteur de simultanéité = 0,70 A × 80 % = 0,56 A',
    lighting: 'éclairage', yes: 'oui',
    keys: 'Ctrl+D', none: 'Enveloppes : pas encore de lignes', headings: 'Repère\tQuantité',
    pasted: '1 ligne collée, sur 2 colonnes.',
  },
];

test('the search for English words finds them in an English element', async () => {
  const element = await mountElement({ content: sample() });
  expect(englishLeft(element).some((each) => each.includes('1.16\u00a0A of 1.00\u00a0A'))).toBe(true);
});

const tabsOf = (element: Element): string[] => parts(element, 'elv-sheet-tabs .title').map((each) => each.textContent);

describe.each(SPOKEN)('in $lang', (expected) => {
  const { lang } = expected;

  test('tabs, commands, gauges, explanations, keys and empty sheets are in the language of the page', async () => {
    const element = await mountElement({ content: sample(), attributes: { lang } });
    expect(part(element, '.element')!.lang).toBe(lang);
    expect(tabsOf(element).slice(0, 3)).toEqual(expected.tabs);
    expect(textOf(element, '[data-command=save]')).toBe(expected.save);
    expect(textOf(element, 'elv-schedule-panel .sentence')).toBe(expected.loading);
    part(element, '#keys')!.showPopover();
    await expect.poll(() => textOf(element, '#keys')).toContain(expected.keys);
    part(element, '#keys')!.hidePopover();
    await element.select('devices', 'D1', 'demand');
    await expect.poll(() => textOf(element, 'elv-cell-explanation .rule')).toBe(expected.rule);
    await openSheet(element, 'enclosures');
    await expect.poll(() => textOf(element, '.begin h3')).toBe(expected.none);
  });

  test('no sheet has an English word left, nor the explanation of any figure', async () => {
    const element = await mountElement({ content: demoContent(), attributes: { lang } });
    const found = new Set<string>();
    for (const sheet of SHEET_NAMES) {
      await explainEach(element, sheet, [1], (explanation) => {
        for (const each of englishLeft(element, explanation)) found.add(each);
      });
      for (const each of englishLeft(element)) found.add(each);
    }
    expect([...found]).toEqual([]);
  });

  test('no heading of a column is cut, nor a title of the details', async () => {
    const element = await mountElement({ content: { ...sample(), view: { rare: SHEET_NAMES } }, attributes: { lang } });
    const isCut = (each: HTMLElement) => each.scrollWidth > each.clientWidth;
    // 40 px beyond what the fonts of a Debian machine ask for, as those of other machines differ.
    element.style.inlineSize = '1320px';
    const details = parts(element, 'elv-details-strip span');
    expect(details.filter(isCut).map((each) => each.textContent)).toEqual([]);
    expect(isCut(part(element, 'elv-details-strip .block')!)).toBe(false);
    // As wide as it takes to have every column drawn.
    element.style.inlineSize = '8000px';
    for (const sheet of SHEET_NAMES) {
      await openSheet(element, sheet);
      const { columns } = SCHEMA[sheet];
      const headings = () => parts(element, 'elv-schedule-grid .ht_clone_top .title')
        .concat(parts(element, 'elv-schedule-grid .ht_clone_top_inline_start_corner .title'));
      await expect.poll(() => headings().length).toBeGreaterThanOrEqual(columns.length - 3);
      expect(headings().filter(isCut).map((each) => each.textContent)).toEqual([]);
    }
  });

  test('words of choices are shown and typed in the language, and kept as in every other', async () => {
    const element = await mountElement({ content: sample(), attributes: { lang } });
    await element.select('supplies', 'L2', 'purpose');
    // The driver has no key for é, which opens no editor by itself.
    await userEvent.keyboard(`{Enter}${expected.lighting}{Enter}`);
    await expect.poll(() => element.schedule.value('supplies', 1, 'purpose')).toBe('lighting');
    expect(parts(element, 'elv-schedule-grid td').map((each) => each.textContent)).toContain(expected.lighting);
    await element.select('supplies', 'L2', 'redundant');
    await userEvent.keyboard(`${expected.yes}{Enter}`);
    await expect.poll(() => element.schedule.value('supplies', 1, 'redundant')).toBe(true);
    await element.select('supplies', 'L2', 'rated');
    await userEvent.keyboard('2,5{Enter}');
    await expect.poll(() => element.schedule.value('supplies', 1, 'rated')).toBe(2.5);
  });

  test('headings in the language choose the columns of a paste', async () => {
    const element = await mountElement({ content: sample(), attributes: { lang } });
    await element.select('devices', 'D1', 'area');
    (part(element, 'elv-schedule-grid') as ScheduleGrid).pasteText(`${expected.headings}\nD9\t12`);
    await element.updateComplete;
    expect(element.schedule.rows('devices')[0]!.cells).toMatchObject({ ref: 'D9', qty: 12 });
    expect(textOf(element, 'elv-sheet-view .said')).toBe(expected.pasted);
  });
});

test('another language is spoken at once, and the selection, what was typed and what can be undone stay', async () => {
  const element = await mountElement({ content: sample(), attributes: { lang: 'en' } });
  await element.select('devices', 'D3', 'qty');
  await userEvent.keyboard('5{Enter}');
  await element.select('devices', 'D3', 'qty');
  const heading = (key: string) => parts(element, 'elv-schedule-grid .title').find((each) => each.textContent === key);
  expect(heading('Unit draw')).toBeDefined();
  element.lang = 'de';
  await expect.poll(() => heading('Stromaufnahme je Gerät')).toBeDefined();
  // The column is as wide as its new heading asks.
  const title = heading('Stromaufnahme je Gerät')!;
  expect(title.scrollWidth).toBeLessThanOrEqual(title.clientWidth);
  await expect.poll(() => textOf(element, 'elv-cell-explanation .rule')).toContain('Anzahl von D3 = 5');
  await userEvent.keyboard('6{Enter}{Control>}z{/Control}{Control>}z{/Control}');
  expect(element.schedule.value('devices', 2, 'qty')).toBe(3);
  element.lang = 'fr';
  await expect.poll(() => tabsOf(element)[0]).toBe('Appareils');
  element.lang = 'en';
  await expect.poll(() => tabsOf(element)[0]).toBe('Devices');
});

test('two elements on a page speak two languages', async () => {
  const one = await mountElement({ content: sample(), attributes: { lang: 'de' } });
  const other = await mountElement({ content: sample(), attributes: { lang: 'fr' } });
  expect([tabsOf(one)[0], tabsOf(other)[0]]).toEqual(['Geräte', 'Appareils']);
  one.lang = 'en';
  await expect.poll(() => tabsOf(one)[0]).toBe('Devices');
  expect(tabsOf(other)[0]).toBe('Appareils');
});

test('a language that is not spoken gives English words, and figures by its custom', async () => {
  const element = await mountElement({ content: sample(), attributes: { lang: 'it' } });
  expect(textOf(element, 'elv-schedule-panel .sentence')).toBe('1,16 A of 1,00 A, 116 %, target 80 %');
  expect(part(element, '.element')!.lang).toBe('en');
  await element.select('devices', 'D1', 'unitDraw');
  await userEvent.keyboard('12,5{Enter}');
  await expect.poll(() => element.schedule.value('devices', 0, 'unitDraw')).toBe(12.5);
});
