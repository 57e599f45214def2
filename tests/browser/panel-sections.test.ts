import { afterEach, expect, test } from 'vitest';
import type { Content } from '../../src/schedule/index.ts';
import { mountElement, part, parts, removeElements, sample, textOf } from './element-mount.ts';

afterEach(() => {
  removeElements();
  localStorage.clear();
});

/**
 * Runs and enclosures of invention. By hand: 10 Ω/km at 20 °C is 0.02 Ω for each metre there and back, 1 Ω on 50 m. R1
 * carries 1 A: 1 V of 24 V, 4.2 %, where the devices need 21 V. R2 carries 4 A: 4 V, 16.7 %, so that 20 V are left. R3
 * has no length. E1 by IEC TR 60890, free on all sides: 1.8 × 1 × (1 + 0.5) + 1.4 × 1 × 0.5 = 3.4 m², 187 W ÷ (5.5 ×
 * 3.4) = 10 K above 30 °C, at the top 1.3 times as much.
 */
const wired = (): Content => {
  const { details, sheets } = sample();
  return { details, sheets: {
    ...sheets,
    types: [{ type: 'Ampere', draw: 1000, nodes: 1, minVoltage: 21 }],
    conductors: [{ conductor: 'Ten', resistance: 10, maxCurrent: 10 }],
    runs: [
      { run: 'R1', rail: 'L1', conductor: 'Ten', length: 50, ambient: 20, temperature: 20 },
      { run: 'R2', rail: 'L1', conductor: 'Ten', length: 50, ambient: 20, temperature: 20 },
      { run: 'R3', rail: 'L1', conductor: 'Ten', ambient: 20, temperature: 20 },
    ],
    devices: [
      { ref: 'D1', type: 'Ampere', qty: 1, rail: 'L1', run: 'R1' },
      { ref: 'D2', type: 'Ampere', qty: 4, rail: 'L1', run: 'R2' },
    ],
    enclosures: [
      {
        enclosure: 'E1', height: 1000, width: 1000, depth: 500, mounting: 'free', otherLoss: 187, ambient: 30,
        maxInside: 50,
      },
    ],
  } };
};

const section = (element: Element, title: string) =>
  parts(element, 'elv-schedule-panel details.section')
    .find((each) => each.querySelector('summary')!.textContent.includes(title)) as HTMLDetailsElement;
const lines = (element: Element, title: string) => [...section(element, title).querySelectorAll('.gauge')].map((line) =>
  [...line.querySelectorAll('b, .status, .sentence')].map((each) => each.textContent.replace(/\s+/g, ' ').trim()));

test('runs are listed the worst first, with the voltage at their end against what devices need', async () => {
  const element = await mountElement({ content: wired() });
  expect(lines(element, 'Runs')).toEqual([
    ['R2', 'over limit', '20.00 V, needs 21.00 V; drop 16.7 % of 5 %'],
    ['R3', 'incomplete', 'end voltage unknown, need unknown'],
    ['R1', 'within limits', '23.00 V, needs 21.00 V; drop 4.2 % of 5 %'],
  ]);
  const [over, , fine] = [...section(element, 'Runs').querySelectorAll('.bar')];
  const share = (bar: Element, name: string) => {
    const box = bar.querySelector(name)!.getBoundingClientRect();
    return (box.right - bar.getBoundingClientRect().left) / bar.querySelector('.frame')!.getBoundingClientRect().width;
  };
  // 1 V of the 3 V that may be lost before devices lack voltage; the most drop is 1.2 V of them.
  expect(share(fine!, '.fill')).toBeCloseTo(1 / 3, 2);
  expect(share(fine!, '.tick')).toBeCloseTo(0.4, 1);
  expect(over!.querySelector('.beyond')).not.toBeNull();
});

test('enclosures are listed with the temperature at their top against the most allowed', async () => {
  const element = await mountElement({ content: wired() });
  expect(lines(element, 'Enclosures')).toEqual([['E1', 'within limits', '43.0 °C at the top of 50.0 °C, 7.0 K left']]);
});

test('what makes the status is named where the bar does not show it', async () => {
  const content = wired();
  const element = await mountElement({ content: { ...content, sheets: { ...content.sheets,
    outputs: [{ output: 'K1', contact: 'C2', kind: 'lamp', qty: 4, power: 10, inrush: 50 }],
    contacts: [{ contact: 'C2', lamp: 2, inrush: 100 }] } } });
  // 4 × 50 A when switched on, where the contact may make 100 A; lamps of 10 W have a power factor
  // of 0.5, so that 40 W ÷ (230 V × 0.5) = 0.348 A of 2 A.
  expect(lines(element, 'Outputs')[0]![2]).toBe('0.35 A of 2.00 A, 17 %, 1.65 A left; see “Total inrush”');
});

test('modules are listed with the current of their outputs against what their common side carries', async () => {
  const content = wired();
  const element = await mountElement({ content: { ...content, sheets: { ...content.sheets,
    modules: [{ module: 'M1', common: 10 }, { module: 'M2', common: 1 }],
    outputs: [
      { output: 'K1', module: 'M1', contact: 'C2', kind: 'resistive', power: 460 },
      { output: 'K2', module: 'M2', contact: 'C2', kind: 'resistive', power: 460 },
    ],
    contacts: [{ contact: 'C2', resistive: 5 }] } } });
  // 460 W ÷ 230 V = 2 A each.
  expect(lines(element, 'Modules')).toEqual([
    ['M2', 'over limit', '2.00 A of 1.00 A, 200 %, 1.00 A too much'],
    ['M1', 'within limits', '2.00 A of 10.00 A, 20 %, 8.00 A left'],
  ]);
});

test('a long section lists its worst rows, and all when asked', async () => {
  const content = wired();
  const runs = Array.from(
    { length: 28 }, (_, index) => ({ run: `W${index}`, rail: 'L1', conductor: 'Ten', length: 10 + index })
  );
  const element = await mountElement(
    { content: { ...content, sheets: { ...content.sheets, runs: [...content.sheets.runs!, ...runs] } } }
  );
  expect(lines(element, 'Runs')).toHaveLength(5);
  expect(lines(element, 'Runs')[0]![0]).toBe('R2');
  const more = section(element, 'Runs').querySelector<HTMLElement>('.more')!;
  expect(more.textContent.trim()).toBe('All 31 runs');
  more.click();
  await expect.poll(() => lines(element, 'Runs').length).toBe(31);
});

test('a section that was put away stays so, the next time too', async () => {
  const element = await mountElement({ content: wired() });
  section(element, 'Runs').querySelector('summary')!.click();
  await expect.poll(() => section(element, 'Runs').querySelector('.gauge')).toBeNull();
  expect(section(element, 'Runs').querySelector('summary')!.textContent.replace(/\s+/g, ' '))
    .toMatch(/Runs 3 1 over limit, 1 incomplete/);
  element.remove();
  const again = await mountElement({ content: wired() });
  expect(section(again, 'Runs').open).toBe(false);
  expect(section(again, 'Supplies').open).toBe(true);
});

test('notes ask for nothing and are put away at first', async () => {
  const element = await mountElement({ content: wired() });
  const notes = part(element, '#findings-note') as HTMLDetailsElement;
  expect(notes.open).toBe(false);
  expect(Number(textOf(element, '[data-severity=note] b')))
    .toBe(element.schedule.findings.filter(({ severity }) => severity === 'note').length);
  notes.querySelector('summary')!.click();
  await expect.poll(() => notes.querySelectorAll('.finding').length).toBeGreaterThan(0);
});
