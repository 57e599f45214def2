import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { LoadScheduleElement } from '../../../components/load-schedule/load-schedule.ts';
import { LoadSchedule } from '../../../src/load-schedule.ts';
import type { Content } from '../../../src/schedule/index.ts';
import { GRID_KEY, mountElement, part, parts, removeElements, sample, textOf } from '../element-mount.ts';
import { englishLeft } from '../support/english-left.ts';
import { PSEUDO_TAG, PseudoElement } from '../support/pseudo-element.ts';
import { untranslated } from '../support/untranslated.ts';
import { openWork, press } from '../work-support.ts';

beforeEach(() => { localStorage.clear(); });
afterEach(() => {
  removeElements();
  document.querySelector(PSEUDO_TAG)?.remove();
});

/**
 * Devices that move, have no place, or stay where there is too little; branches and supplies of which something is not
 * known.
 */
const CONTENT: Content = {
  details: {},
  sheets: {
    types: [
      { type: 'Sensor', draw: 100, nodes: 1 }, { type: 'Winch', purpose: 'lighting', draw: 9000, nodes: 1 },
      { type: 'Lamp', purpose: 'lighting', draw: 500, nodes: 0 },
    ],
    branches: [{ branch: 'B1', limit: 10 }, { branch: 'B2', limit: '=1/0' }],
    supplies: [{ rail: 'L1', rated: 2.5, purpose: 'lighting' }, { rail: 'L2' }],
    devices: [
      {
        ref: 'D1', type: 'Sensor', qty: 8, branch: 'B1',
      }, { ref: 'D2', type: 'Sensor', qty: 4, branch: 'B1' }, { ref: 'D3', type: 'Winch', qty: 1 },
      { ref: 'D4', type: 'Sensor', branch: 'B1' }, { type: 'Lamp', qty: 3 }, { ref: 'D6', type: 'Sensor', qty: 11 },
    ],
    outputs: [{ output: 'Q1' }],
  },
};

/** What is not said through the words, but for the tags of branches and supplies that are yet to be made. */
const leftOver = (element: LoadScheduleElement) => untranslated(element).filter((each) => !/: [BL]\d$/.test(each));

test('sharing out and sizing are said through the words of the element', async () => {
  const element = new PseudoElement();
  element.licenseKey = GRID_KEY;
  element.schedule = new LoadSchedule(CONTENT);
  element.style.cssText = 'display: block; block-size: 780px';
  document.body.append(element);
  await element.updateComplete;
  await openWork(element, 'shareOut');
  for (const over of ['branches', 'supplies']) {
    await press(element, `[data-over=${over}]`);
    for (const option of ['keepPlaced', 'wholeRows', 'keepPlaced', 'wholeRows']) {
      await expect.poll(() => part(element, '.fills tbody tr')).not.toBeNull();
      expect(leftOver(element)).toEqual([]);
      await press(element, `[data-option=${option}]`);
    }
  }
  await press(element, '[data-do=share]');
  expect(element.schedule.undoLabel).toMatch(/^⟦.*⟧$/);
  await openWork(element, 'sizing');
  await expect.poll(() => part(element, '.sizing tbody tr')).not.toBeNull();
  expect(untranslated(element)).toEqual([]);
  for (const text of ['5; many', '']) {
    await userEvent.fill(part(element, '[data-list=ways]')!, text);
    await userEvent.tab();
    await expect.poll(() => textOf(element, '#problem-ways')).toMatch(/^⟦.*⟧$/);
    expect(untranslated(element).filter((each) => !each.includes('many'))).toEqual([]);
  }
});

const SPOKEN = [
  {
    lang: 'de', verdict: '2 Bus-Stränge, davon 1 neu: nachweislich die kleinste Zahl.',
    offer: 'Auf 2 Bus-Stränge aufteilen', label: 'Aufteilung auf 2 Bus-Stränge',
    change: '12 von 10', item: 'Versorgung 24 V, Sonstiges, 2,5 A', close: 'Schließen',
    problem: 'many ist keine Zahl über 0. Zahlen durch Semikolon trennen.',
  },
  {
    lang: 'fr', verdict: '2 segments de bus, dont 1 nouveau : nombre minimal démontré.',
    offer: 'Répartir sur 2 segments de bus', label: 'Répartition sur 2 segments de bus',
    change: '12 sur 10', item: 'Alimentation 24 V, autre, 2,5 A', close: 'Fermer',
    problem: 'many n’est pas un nombre supérieur à 0. Séparer les nombres par des points-virgules.',
  },
];

describe.each(SPOKEN)('in $lang', ({ lang, verdict, offer, label, change, item, close, problem }) => {
  test('devices are shared out', async () => {
    const sheets = {
      types: [{ type: 'Sensor', draw: 10, nodes: 1 }], branches: [{ branch: 'B1', limit: 10 }],
      devices: [
        { ref: 'D1', type: 'Sensor', qty: 8, branch: 'B1' }, { ref: 'D2', type: 'Sensor', qty: 4, branch: 'B1' },
      ],
    };
    const element = await mountElement({ content: { details: {}, sheets }, attributes: { lang } });
    await openWork(element, 'shareOut');
    await press(element, '[data-option=keepPlaced]');
    await expect.poll(() => textOf(element, '.verdict .sum')).toBe(verdict);
    expect(textOf(element, '[data-do=share]')).toBe(offer);
    expect(textOf(element, '.back')).toBe(close);
    expect(parts(element, '.fills .figure')[0]!.textContent).toBe(change);
    expect(englishLeft(element)).toEqual([]);
    await press(element, '[data-do=share]');
    expect(element.undo()).toBe(label);
  });

  test('what a job needs is counted, and follows a change of the language', async () => {
    const element = await mountElement({ content: sample(), attributes: { lang: 'en' } });
    await openWork(element, 'sizing');
    await expect.poll(() => textOf(element, '.sizing tbody td')).toBe('Supply 24 V, other, 2.5 A');
    await userEvent.fill(part(element, '[data-list=ratings]')!, '5; many');
    await userEvent.tab();
    element.lang = lang;
    await expect.poll(() => textOf(element, '.sizing tbody td')).toBe(item);
    expect(textOf(element, '#problem-ratings')).toBe(problem);
    expect(englishLeft(element).filter((each) => !each.includes('many'))).toEqual([]);
  });
});
