import { afterEach, beforeEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { LoadScheduleElement } from '../../../components/load-schedule/load-schedule.ts';
import { LoadSchedule } from '../../../src/load-schedule.ts';
import { makeWorkbook } from '../../support/make-workbook.ts';
import { drop, GRID_KEY, mountElement, part, parts, removeElements, said, sample, textOf } from '../element-mount.ts';
import { PSEUDO_TAG, PseudoElement } from '../support/pseudo-element.ts';
import { untranslated } from '../support/untranslated.ts';
import { openWork, paste, press } from '../work-support.ts';

beforeEach(() => { localStorage.clear(); });
afterEach(() => {
  removeElements();
  document.querySelector(PSEUDO_TAG)?.remove();
});

/** Known, unknown and doubtful names, titles, totals, lengths and quantities in doubt. */
const LIST = 'Device\tQty\tQqq\nLamp\t3\t\nLamp\t1\t\nLamp q\t2\t\nSensor q\t2\t\nWinch\tca. 2,5\tZz\nLamp\t\t\nTotal\t6\t\nLamp\t4 m\t\n\t3\t\nLamp\t0\t';
const LIST_TEXTS = [...new Set(LIST.split(/[\t\n]/)), 'L1', 'L2', '1.xlsx'].filter((text) => text !== '');

/** What is not said through the words, but for what stands in the list itself. */
function leftOver(element: LoadScheduleElement): string[] {
  return untranslated(element).filter((each) => !LIST_TEXTS.some((text) => each.endsWith(`: ${text}`)));
}

test('everything in the takeoff is said through the words of the element', async () => {
  const element = new PseudoElement();
  element.licenseKey = GRID_KEY;
  element.schedule = new LoadSchedule(sample());
  element.style.cssText = 'display: block; block-size: 780px';
  document.body.append(element);
  await element.updateComplete;
  await openWork(element, 'takeoff');
  expect(leftOver(element)).toEqual([]);
  paste(element, LIST);
  await expect.poll(() => part(element, '.lines tbody tr')).not.toBeNull();
  expect(leftOver(element)).toEqual([]);
  await press(element, '[data-do=likest]');
  await press(element, '[data-do=leave-undecided]');
  await expect.poll(() => part(element, '[data-do=take]:not([disabled])')).not.toBeNull();
  expect(leftOver(element)).toEqual([]);
  await press(element, '[data-do=take]');
  await expect.poll(() => said(element)).toContain('Takeoff of');
  // The note of a new type is a part of the schedule, in the language in which the list was taken.
  expect(element.schedule.rows('types').map(({ cells }) => cells.note)).toEqual([undefined, undefined]);
  await openWork(element, 'takeoff');
  const bytes = makeWorkbook({ L1: { rows: [['Lamp', 1]] }, L2: { rows: [['Lamp', 2]] } });
  await userEvent.upload(part(element, 'elv-takeoff-reader .file input')!, new File([bytes], '1.xlsx'));
  await expect.poll(() => part(element, '[data-sheet-of-list]')).not.toBeNull();
  expect(leftOver(element)).toEqual([]);
  drop(element, '2.csv', '\0');
  await expect.poll(() => part(element, '.work .refused')).not.toBeNull();
  expect(leftOver(element)).toEqual([]);
});

test('a list is read, decided on and taken in German; another language keeps the decisions', async () => {
  const element = await mountElement({ content: sample(), attributes: { lang: 'de' } });
  await openWork(element, 'takeoff');
  await expect.poll(() => textOf(element, '.work h2')).toBe('Mengenauszug');
  paste(element, 'Gerät\tRaum\tStück\nLamp\tFlur\t3 Stk.\nLamp\tFlur\tca. 2,5\nDrehtor\tFlur\t1');
  await expect.poll(() => textOf(element, '.work .sum')).toBe('Gelesen 6,5 = übernommen 4 + weggelassen 0 + offen 2,5');
  expect(parts(element, '.lines select').map((each) => (each as HTMLSelectElement).selectedOptions[0]!.text))
    .toEqual(['Typ', 'Bereich', 'Anzahl']);
  expect(textOf(element, '[data-line="3"] .why'))
    .toContain('„ca. 2,5“ ist keine eindeutige Stückzahl. Angeben, wie viele es sind.');
  await press(element, '[data-line="3"] [data-do=leave-out]');
  element.lang = 'fr';
  await expect.poll(() => textOf(element, '.work h2')).toBe('Métré');
  await expect.poll(() => textOf(element, '.work .sum')).toBe('Lu 6,5 = retenu 4 + écarté 2,5 + à décider 0');
  expect(textOf(element, '[data-line="4"] .why')).toContain('devient un nouveau type');
  element.lang = 'de';
  await expect.poll(() => textOf(element, '[data-do=take]')).toBe('4 Geräte in 2 Zeilen übernehmen');
  await press(element, '[data-do=take]');
  await expect.poll(() => said(element)).toContain('Mengenauszug: 4 Geräte in 2 Zeilen');
  expect(element.schedule.rows('types').at(-1)!.cells).toMatchObject({
    type: 'Drehtor', note: 'Aus einem Mengenauszug. Stromaufnahme oder Leistung eintragen und angeben, woher der Wert stammt.',
  });
});

test('what was refused is said in the language of the element', async () => {
  const element = await mountElement({ content: sample(), attributes: { lang: 'fr' } });
  await openWork(element, 'takeoff');
  drop(element, 'liste.csv', '\0');
  await expect.poll(() => textOf(element, '.work .refused'))
    .toContain('Le fichier contient des caractères NUL, qu’aucun texte ne contient. L’enregistrer en CSV, en UTF-8.');
  expect(textOf(element, '.work .refused')).toContain('liste.csv : lecture impossible. Rien n’a été modifié.');
});
