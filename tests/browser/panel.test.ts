import { afterEach, expect, test } from 'vitest';
import { mountElement, part, parts, removeElements, sample, textOf } from './element-mount.ts';
import { userEvent } from 'vitest/browser';

afterEach(() => {
  removeElements();
  localStorage.clear();
});

const lines = (element: Element) => parts(element, 'elv-schedule-panel .gauge').map((line) =>
  [...line.querySelectorAll('b, .status, .sentence')].map((each) => each.textContent.replace(/\s+/g, ' ').trim()));

test('each supply, branch, output and feed has its sentence and its status in words', async () => {
  const element = await mountElement({ content: sample() });
  // By hand, from the comment of the sample; what is left of K1, 2 − 240 ÷ (230 × 0.9) = 0.8406 A, is rounded
  // down; the inrush of its lamps is not known.
  expect(lines(element)).toEqual([
    ['L1', 'over limit', '1.16 A of 1.00 A, 116 %, target 80 %'],
    ['L2', 'near limit', '0.84 A of 1.00 A, 84 %, target 80 %'],
    ['L3', 'within limits', '0.00 A of 2.00 A, 0 %, target 80 %'],
    ['B1', 'within limits', '8 of 10 nodes, 80 %, 2 left'],
    ['B2', 'within limits', '3 of 10 nodes, 30 %, 7 left'],
    ['K1', 'incomplete', '1.16 A of 2.00 A, 58 %, 0.84 A left'],
    ['F1', 'within limits', '1.16 A of 10.00 A, 12 %, target 80 %'],
  ]);
});

test('the bar is filled to 100 % of what may be used, ticked at the target, and hatched beyond', async () => {
  const element = await mountElement({ content: sample() });
  const [l1, l2] = parts(element, 'elv-schedule-panel .bar').slice(0, 2).map((bar) => {
    const box = bar.getBoundingClientRect();
    const of = (name: string) => bar.querySelector(`.${name}`)?.getBoundingClientRect();
    const frame = of('frame')!;
    const share = (x: number) => (x - box.left) / frame.width;
    return {
      fill: share(of('fill')!.right), tick: share(of('tick')!.left + 1),
      beyond: of('beyond') === undefined ? undefined : of('beyond')!.width / frame.width,
    };
  });
  expect(l1!.fill).toBeCloseTo(1, 2);
  expect(l1!.beyond).toBeCloseTo(0.16, 2);
  expect(l1!.tick).toBeCloseTo(0.8, 2);
  expect(l2!.fill).toBeCloseTo(0.84, 2);
  expect(l2!.beyond).toBeUndefined();
});

test('a gauge follows an edit', async () => {
  const element = await mountElement({ content: sample() });
  await element.select('devices', 'D2', 'qty');
  await userEvent.keyboard('1{Enter}');
  // 2 × 0.35 A × 0.8 + 1 × 0.1 A, by hand.
  await expect.poll(() => lines(element)[0]).toEqual(['L1', 'within limits', '0.66 A of 1.00 A, 66 %, target 80 %']);
});

test('a total that lacks rows is shown as at least, and the supply as incomplete', async () => {
  const content = sample();
  const element = await mountElement({ content: { ...content, sheets: { ...content.sheets, devices: [
    { ref: 'D1', type: 'Lamp', qty: 2, rail: 'L3' }, { ref: 'D2', type: 'Lamp', rail: 'L3' },
  ] } } });
  expect(lines(element)[2]).toEqual(['L3', 'incomplete', '≥ 0.56 A of 2.00 A, ≥ 28 %, target 80 %']);
});

test('choosing a finding goes to its cell, on its sheet', async () => {
  const element = await mountElement({ content: sample() });
  const finding = parts(element, 'elv-schedule-panel .finding').find((each) => each.textContent.includes('L2'))!;
  finding.click();
  await expect.poll(() => textOf(element, 'elv-cell-explanation .rule')).toContain('of L2');
  expect(part(element, '[aria-selected=true]')!.dataset.sheet).toBe('supplies');
  // The grid has the focus: typing begins at once.
  expect(part(element, 'elv-schedule-grid')!.matches(':focus-within')).toBe(true);
});

test('findings are counted by severity, and a count leads to its group', async () => {
  const element = await mountElement({ content: sample() });
  const count = (severity: string) => Number(textOf(element, `.summary [data-severity=${severity}] b`));
  expect(count('over')).toBe(element.schedule.findings.filter(({ severity }) => severity === 'over').length);
  expect(count('over')).toBe(1);
  // L2 is above its target, and everything at once, 3 × 0.35 A = 1.05 A, is more than its 1 A.
  expect(count('near')).toBe(2);
  (part(element, '#findings-near') as HTMLDetailsElement).open = false;
  part(element, '[data-severity=near]')!.click();
  await expect.poll(() => (part(element, '#findings-near') as HTMLDetailsElement | null)?.open).toBe(true);
  // The others are put away until the count is pressed again.
  expect(part(element, '#findings-over')).toBeNull();
  part(element, '[data-severity=near]')!.click();
  await expect.poll(() => part(element, '#findings-over')).not.toBeNull();
});

test('the explanation gives the rule in words and with numbers, and each part leads to its cell', async () => {
  const element = await mountElement({ content: sample() });
  await element.select('devices', 'D1', 'demand');
  await expect.poll(() => textOf(element, 'elv-cell-explanation .rule'))
    .toBe('Demand of D1 = connected × diversity = 0.70 A × 80 % = 0.56 A');
  part(element, 'elv-cell-explanation .part')!.click();
  await expect.poll(() => textOf(element, 'elv-cell-explanation .rule')).toContain('Connected of D1');
});

test('a total names the rows that it adds up, the largest first', async () => {
  const element = await mountElement({ content: sample() });
  await element.select('supplies', 'L1', 'demand');
  await expect.poll(() => parts(
    element, 'elv-cell-explanation .part'
  ).map((each) => each.textContent.replace(/\s+/g, ' ').trim()))
    .toEqual(['D2 0.60 A', 'D1 0.56 A']);
});

test('a reference leads to the row that it names', async () => {
  const element = await mountElement({ content: sample() });
  await element.select('devices', 'D3', 'rail');
  await expect.poll(() => textOf(element, 'elv-cell-explanation .text')).toContain('Go to this supply');
  part(element, 'elv-cell-explanation .link')!.click();
  await expect.poll(() => textOf(element, 'elv-cell-explanation .rule')).toContain('of L2');
});

test('the panel folds to a strip that still counts the findings, and opens from there on those of a severity', async () => {
  const element = await mountElement({ content: sample() });
  const button = part(element, '[aria-controls=panel]')!;
  button.click();
  await element.updateComplete;
  const panel = part(element, 'elv-schedule-panel')!;
  await expect.poll(() => panel.offsetWidth).toBeLessThan(60);
  expect(button.ariaExpanded).toBe('false');
  const count = (severity: string) =>
    String(element.schedule.findings.filter((each) => each.severity === severity).length);
  expect(parts(element, 'elv-schedule-panel .summary b').map((each) => each.textContent))
    .toEqual(['over', 'near', 'incomplete', 'note'].map(count));
  part(element, 'elv-schedule-panel [data-severity=near]')!.click();
  await expect.poll(() => panel.offsetWidth).toBeGreaterThan(200);
  expect(button.ariaExpanded).toBe('true');
  await expect.poll(() => textOf(element, 'elv-schedule-panel .column h3')).toContain('Findings: near limit only');
  localStorage.removeItem('elv-load-schedule.view');
});

test('a character that cannot be seen in a tag is named, and one press deletes it', async () => {
  const content = sample();
  const [first, ...others] = content.sheets.devices!;
  const element = await mountElement(
    { content: { ...content, sheets: { ...content.sheets, devices: [{ ...first, rail: 'L1\u200b' }, ...others] } } }
  );
  const remedies = () => parts(element, 'elv-schedule-panel .remedy');
  await expect.poll(() => remedies().map((each) => each.textContent.trim())).toEqual(['Delete U+200B']);
  expect(remedies()[0]!.closest('li')!.textContent).toContain('Ref D1: Rail contains U+200B, which cannot be seen');
  remedies()[0]!.click();
  await expect.poll(remedies).toEqual([]);
  expect(element.schedule.rows('devices')[0]!.cells.rail).toBe('L1');
  element.undo();
  await expect.poll(() => remedies().length).toBe(1);
  element.readonly = true;
  await expect.poll(remedies).toEqual([]);
});
