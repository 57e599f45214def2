import { afterEach, describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import demo from '../../data/demo.schedule.json?raw';
import type { CellExplanation } from '../../components/cell-explanation/cell-explanation.ts';
import type { ScheduleGrid } from '../../components/grid/index.ts';
import { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { readSchedule } from '../../src/exchange/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { SCHEMA, SHEET_NAMES, type Content } from '../../src/schedule/index.ts';
import { PSEUDO } from '../support/pseudo-words.ts';
import { GRID_KEY, mountElement, part, parts, sample, textOf } from './element-mount.ts';
import { englishLeft } from './support/english-left.ts';
import { untranslated } from './support/untranslated.ts';

/** An element that speaks the pseudo language from the start. */
class PseudoElement extends LoadScheduleElement {
  constructor() {
    super();
    this.spoken.words = PSEUDO;
    this.holder.speak(PSEUDO);
  }
}

customElements.define('pseudo-load-schedule', PseudoElement);

const mounted: Element[] = [];

afterEach(() => {
  for (const element of mounted.splice(0)) element.remove();
  for (const element of document.querySelectorAll('elv-load-schedule')) element.remove();
  localStorage.clear();
});

const demoContent = (): Content => {
  const reading = readSchedule(demo);
  if (!reading.ok) throw new Error('The demo cannot be read.');
  return reading.content;
};

async function mountPseudo(content: Content, key: string | null = GRID_KEY): Promise<PseudoElement> {
  const element = new PseudoElement();
  element.lang = 'en';
  element.licenseKey = key;
  element.schedule = new LoadSchedule(content);
  element.style.cssText = 'display: block; block-size: 780px';
  document.body.append(element);
  mounted.push(element);
  await element.updateComplete;
  if (key !== null) await expect.poll(() => part(element, 'elv-schedule-grid td')).not.toBeNull();
  return element;
}

test('the searches find what is not said through the words, and what is English', async () => {
  const element = await mountElement({ content: sample() });
  expect(untranslated(element)).toContain('elv-sheet-tabs span.title: Devices');
  expect(untranslated(element)).toContain('elv-schedule-grid th.: Select the whole sheet');
  expect(englishLeft(element).some((each) => each.includes('1.16\u00a0A of 1.00\u00a0A'))).toBe(true);
});

describe('what is on the screen is said through the words of the element', () => {
  test.each(SHEET_NAMES)('the sheet %s, and the explanation of each of its figures', async (sheet) => {
    const element = await mountPseudo(demoContent());
    const explanation = part(element, 'elv-cell-explanation') as CellExplanation;
    const found = new Set<string>();
    for (const { key } of SCHEMA[sheet].columns) {
      for (const row of [1, element.schedule.rows(sheet).length]) {
        await element.select(sheet, row, key);
        await explanation.updateComplete;
        for (const each of untranslated(element, explanation.shadowRoot!)) found.add(each);
      }
    }
    expect([...found]).toEqual([]);
    expect(untranslated(element)).toEqual([]);
  });

  test('device rows per rail and per branch, with rows that name none', async () => {
    const content = sample();
    const devices = [...content.sheets.devices!, { ref: 'D4', type: 'Lamp', qty: 1 }];
    const element = await mountPseudo({ ...content, sheets: { ...content.sheets, devices } });
    for (const grouping of ['rail', 'branch']) {
      part(element, `[data-grouping=${grouping}]`)!.click();
      await expect.poll(() => part(element, 'elv-schedule-grid .group')).not.toBeNull();
      expect(untranslated(element)).toEqual([]);
    }
  });

  test('empty sheets, with what they offer', async () => {
    const element = await mountPseudo({ details: {}, sheets: {} });
    element.demoSrc = 'demo.json';
    for (const sheet of SHEET_NAMES) {
      part(element, `[data-sheet=${sheet}]`)!.click();
      await element.updateComplete;
      await expect.poll(() => textOf(element, '.begin h3')).toContain(SCHEMA[sheet].title);
      expect(untranslated(element)).toEqual([]);
    }
  });

  test('an element without a key', async () => {
    const element = await mountPseudo(sample(), null);
    expect(part(element, '.card')).not.toBeNull();
    expect(untranslated(element)).toEqual([]);
  });

  test('actions, what is told of them, and what is refused', async () => {
    const element = await mountPseudo(sample());
    const seen = async (): Promise<void> => {
      await element.updateComplete;
      expect(untranslated(element)).toEqual([]);
    };
    await element.select('devices', 'D1', 'qty');
    const grid = part(element, 'elv-schedule-grid') as ScheduleGrid;
    for (const command of ['insertAbove', 'moveDown', 'removeRows', 'fillDown', 'clearCells', 'moveUp'] as const) {
      grid[command]();
      await seen();
    }
    for (const text of ['7\tL1\t\n8', 'Qty\tColour\tDemand\n7\tred\t3', '', 'seven\nx\t1', '2\n3\n4\n5\n6\n7']) {
      grid.pasteText(text);
      await seen();
    }
    await element.select('devices', 'D1', 'qty');
    await userEvent.keyboard('many{Enter}');
    await seen();
    await userEvent.keyboard('{Escape}{Control>}z{/Control}');
    await seen();
    await element.select('devices', 1, 'branch');
    await userEvent.keyboard('{Enter}');
    await seen();
    await userEvent.keyboard('{Escape}');
    await element.select('supplies', 'L1', 'rail');
    await userEvent.keyboard('L9{Enter}');
    await seen();
    expect(part(element, 'elv-sheet-view .said')!.textContent).toContain('L9');
    await element.select('supplies', 'L9', 'redundant');
    await userEvent.keyboard('{Enter}');
    await seen();
  });

  test('the form in which a finding is accepted, accepted findings, and findings of one severity', async () => {
    const element = await mountPseudo(sample());
    part(element, '.accept')!.click();
    await expect.poll(() => part(element, 'elv-acceptance-form form')).not.toBeNull();
    part(element, 'elv-acceptance-form button')!.click();
    await expect.poll(() => part(element, 'elv-acceptance-form .missing')).not.toBeNull();
    expect(untranslated(element)).toEqual([]);
    part(element, '[data-severity=over]')!.click();
    await element.updateComplete;
    expect(untranslated(element)).toEqual([]);
    element.schedule.accept(element.schedule.findings[0]!, { reason: 'because', name: 'somebody', date: '2026-11-25' });
    await expect.poll(() => part(element, '#findings-accepted')).not.toBeNull();
    part(element, '#findings-accepted summary')!.click();
    await expect.poll(() => part(element, '.withdraw')).not.toBeNull();
    expect(untranslated(element).filter((each) => !/because|somebody/.test(each))).toEqual([]);
  });

  test('the keys, the cautions and what a file dragged over the element is for', async () => {
    const element = await mountPseudo(sample());
    part(element, '#keys')!.showPopover();
    part(element, '.cautions summary')!.click();
    element.dispatchEvent(new DragEvent('dragenter', { dataTransfer: withFile(), bubbles: true, composed: true }));
    await element.updateComplete;
    expect(part(element, '.drop')).not.toBeNull();
    expect(untranslated(element)).toEqual([]);
  });
});

/** What an element in German and French is expected to say; the figures are those of the comment of the sample. */
const SPOKEN = [
  {
    lang: 'de', tabs: ['Geräte', 'Gerätetypen', 'Versorgungen'], save: 'Speichern', loading: '1,16 A von 1,00 A, 116 %, Zielwert 80 %',
    rule: 'Strombedarf von D1 = Anschlussstrom × Gleichzeitigkeitsfaktor = 0,70 A × 80 % = 0,56 A', lighting: 'Beleuchtung', yes: 'ja',
    keys: 'Strg+D', none: 'Gehäuse: noch keine Zeilen', headings: 'Kennzeichen\tAnzahl', pasted: '1 Zeile mit 2 Spalten eingefügt.',
  },
  {
    lang: 'fr', tabs: ['Appareils', 'Types d’appareil', 'Alimentations'], save: 'Enregistrer', loading: '1,16 A sur 1,00 A, 116 %, cible 80 %',
    rule: 'Courant demandé de D1 = courant raccordé × facteur de simultanéité = 0,70 A × 80 % = 0,56 A', lighting: 'éclairage', yes: 'oui',
    keys: 'Ctrl+D', none: 'Enveloppes : pas encore de lignes', headings: 'Repère\tQuantité', pasted: '1 ligne collée, sur 2 colonnes.',
  },
];

const tabsOf = (element: Element): string[] => parts(element, 'elv-sheet-tabs .title').map((each) => each.textContent);

describe.each(SPOKEN)('in $lang', (expected) => {
  const { lang } = expected;

  test('tabs, commands, gauges, explanations, keys and empty sheets are in the language of the page', async () => {
    const element = await mountElement({ content: sample(), attributes: { lang } });
    expect(part(element, '.element')!.lang).toBe(lang);
    expect(tabsOf(element).slice(0, 3)).toEqual(expected.tabs);
    expect(textOf(element, '[data-command=save]')).toBe(expected.save);
    expect(textOf(element, 'elv-schedule-panel .sentence')).toBe(expected.loading);
    expect(textOf(element, '#keys')).toContain(expected.keys);
    await element.select('devices', 'D1', 'demand');
    await expect.poll(() => textOf(element, 'elv-cell-explanation .rule')).toBe(expected.rule);
    part(element, '[data-sheet=enclosures]')!.click();
    await expect.poll(() => textOf(element, '.begin h3')).toBe(expected.none);
  });

  test('no sheet has an English word left, nor the explanation of any figure', async () => {
    const element = await mountElement({ content: demoContent(), attributes: { lang } });
    const explanation = part(element, 'elv-cell-explanation') as CellExplanation;
    const found = new Set<string>();
    for (const sheet of SHEET_NAMES) {
      for (const { key } of SCHEMA[sheet].columns) {
        await element.select(sheet, 1, key);
        await explanation.updateComplete;
        for (const each of englishLeft(element, explanation.shadowRoot!)) found.add(each);
      }
      for (const each of englishLeft(element)) found.add(each);
    }
    expect([...found]).toEqual([]);
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

function withFile(): DataTransfer {
  const dataTransfer = new DataTransfer();
  dataTransfer.items.add(new File(['{}'], 'a.json'));
  return dataTransfer;
}
