import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { cdp, page, userEvent } from 'vitest/browser';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import type { Content } from '../../src/schedule/index.ts';
import { mountElement, part, parts, removeElements, textOf } from './element-mount.ts';
import { openWork } from './work-support.ts';

afterEach(() => {
  removeElements();
  localStorage.clear();
});

/**
 * By hand: R1 feeds 2 A at its end, 20 m of 12.1 Ω/km: 2 × 0.0121 × 20 = 0.484 Ω at 20 °C, more where the conductor is
 * warm, so that about 1 V is dropped and about 23 V are expected at its end. The device needs 20 V.
 */
const content = (): Content => ({
  details: { project: 'Boat house' },
  sheets: {
    devices: [{ ref: 'D1', type: 'Lamp', qty: 2, rail: 'L1', run: 'R1' }, { ref: 'D2', type: 'Odd', qty: 1, rail: 'L2' }],
    types: [{ type: 'Lamp', draw: 1000, load: 'current', nodes: 0, minVoltage: 20 }, { type: 'Odd', nodes: 0 }],
    supplies: [{ rail: 'L1', purpose: 'lighting', rated: 5, note: 'Jetty' }, { rail: 'L2', rated: 5 }],
    ways: [{ way: 'F1', rail: 'L1', kind: 'electronic', rated: 4 }],
    runs: [{ run: 'R1', way: 'F1', conductor: 'C', length: 20, temperature: 20 }],
    conductors: [{ conductor: 'C', size: 1.5, resistance: 12.1, maxCurrent: 16.5 }],
  },
});

const row = (tag: string) => `elv-measured-values [data-row=${tag}]`;
const field = (element: Element, tag: string, key: 'measuredVoltage' | 'measuredCurrent') =>
  part(element, `${row(tag)} [data-key=${key}]`) as HTMLInputElement;
const verdict = (element: Element, tag: string) => textOf(element, `${row(tag)} .verdicts`);
const measured = ({ schedule }: LoadScheduleElement, sheet: 'supplies' | 'runs', key: string) =>
  schedule.rows(sheet).map(({ cells }) => cells[key] ?? null);

async function mountMeasured(attributes: Readonly<Record<string, string>> = {}): Promise<LoadScheduleElement> {
  const element = await mountElement({ content: content(), attributes });
  await openWork(element, 'measure');
  return element;
}

/** Touches the middle of an element with a finger. */
async function touch(target: Element): Promise<void> {
  target.scrollIntoView({ block: 'center' });
  const { x, y, width, height } = target.getBoundingClientRect();
  // The tests stand in a frame of the page that the driver sees.
  const frame = window.frameElement?.getBoundingClientRect();
  const scale = frame === undefined ? 1 : frame.width / window.innerWidth;
  const at = { x: (frame?.x ?? 0) + (x + width / 2) * scale, y: (frame?.y ?? 0) + (y + height / 2) * scale };
  await cdp().send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [at] });
  await cdp().send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
}

describe('on a phone', () => {
  beforeEach(async () => {
    await page.viewport(390, 844);
    await cdp().send('Emulation.setTouchEmulationEnabled', { enabled: true });
  });
  afterEach(async () => {
    await cdp().send('Emulation.setTouchEmulationEnabled', { enabled: false });
    await page.viewport(1280, 800);
  });

  test('a finger opens the measured values, enters a voltage with the keyboard of numbers, and the verdict stands below', async () => {
    const element = await mountElement({ content: content() });
    await touch(part(element, '[data-command=measure]')!);
    await expect.poll(() => part(element, 'elv-measured-values')?.hidden).toBe(false);
    const volts = field(element, 'R1', 'measuredVoltage');
    expect(volts.inputMode).toBe('decimal');
    for (const each of parts(element, 'elv-measured-values .fields input')) {
      expect(each.offsetHeight).toBeGreaterThanOrEqual(44);
      // Below 16 px a phone enlarges the page when a field gets the focus.
      expect(Number.parseFloat(getComputedStyle(each).fontSize)).toBeGreaterThanOrEqual(16);
    }
    await touch(volts);
    await expect.poll(() => volts.matches(':focus')).toBe(true);
    await userEvent.keyboard('19.5{Enter}');
    await expect.poll(() => measured(element, 'runs', 'measuredVoltage')).toEqual([19.5]);
    await expect.poll(() => verdict(element, 'R1')).toContain('needs 20.00');
    // Enter went on to the next field.
    expect(field(element, 'R1', 'measuredCurrent').matches(':focus')).toBe(true);
    await touch(volts);
    await userEvent.keyboard('{Control>}a{/Control}23.1{Enter}');
    await expect.poll(() => verdict(element, 'R1')).toBe('Nothing speaks against it.');
  });

  test('the header takes less than an eighth of the height, and nothing but the rows is wider than the page', async () => {
    const element = await mountElement({ content: content() });
    element.style.blockSize = '844px';
    const top = part(element, 'elv-schedule-toolbar')!.getBoundingClientRect().top;
    expect(top).toBeLessThan(844 / 8);
    expect(part(element, '.layout')!.scrollWidth).toBeLessThanOrEqual(390);
    await userEvent.click(part(element, '#unfold')!);
    await expect.poll(() => part(element, '[data-command=takeoff]')!.checkVisibility()).toBe(true);
    expect(part(element, '[data-key=checkedBy]')!.checkVisibility()).toBe(true);
    // One tab, and a button for the others.
    const tabs = () => parts(element, '[role=tab]').filter((each) => each.checkVisibility()).map((each) => each.dataset.sheet);
    expect(tabs()).toEqual(['devices']);
    await userEvent.click(part(element, 'elv-sheet-tabs .more')!);
    await expect.poll(() => tabs().length).toBe(15);
    part(element, '[data-sheet=runs]')!.click();
    await expect.poll(tabs).toEqual(['runs']);
  });
});

test('what is expected stands beside each field, and it is said where it is not known', async () => {
  const element = await mountMeasured();
  const expected = (tag: string) => parts(element, `${row(tag)} .field`).map((each) => each.lastElementChild!.textContent.trim());
  expect(expected('L1')).toEqual(['24.00 V expected', '2.00 A expected']);
  expect(expected('L2')).toEqual(['24.00 V expected', 'not known what to expect']);
  // 24 V − 2 A × 0.484 Ω = 23.03 V; from a supply that was measured at 23.5 V: 22.53 V.
  expect(expected('R1')).toEqual(['23.03 V expected', '2.00 A expected']);
  await userEvent.fill(field(element, 'L1', 'measuredVoltage'), '23.5');
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => expected('R1')[0]).toBe('22.53 V expected');
});

test('nothing is said to be well that could not be held against anything', async () => {
  const element = await mountMeasured();
  await userEvent.fill(field(element, 'L2', 'measuredCurrent'), '1');
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => verdict(element, 'L2')).toBe('Not judged: it is not known what to expect.');
});

test('a formula that gives no number is told where it was entered, and not called well', async () => {
  const element = await mountMeasured();
  await userEvent.fill(field(element, 'R1', 'measuredCurrent'), '=1/0');
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => verdict(element, 'R1')).toContain('the formula in Measured current divides by zero');
  expect(verdict(element, 'R1')).not.toContain('Nothing speaks against it');
});

test('a text that is no number is kept with what is wrong; the sign is changed where a keyboard has none', async () => {
  const element = await mountMeasured();
  const volts = field(element, 'L1', 'measuredVoltage');
  await userEvent.fill(volts, 'many');
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => textOf(element, `${row('L1')} [role=alert]`)).toContain('many');
  expect(volts.ariaInvalid).toBe('true');
  expect(volts.value).toBe('many');
  expect(measured(element, 'supplies', 'measuredVoltage')).toEqual([null, null]);
  await userEvent.fill(volts, '24');
  await userEvent.keyboard('{Enter}');
  await userEvent.click(part(element, `${row('L1')} .sign`)!);
  await expect.poll(() => measured(element, 'supplies', 'measuredVoltage')).toEqual([-24, null]);
  await expect.poll(() => verdict(element, 'L1')).toContain('plus and minus are changed over');
  expect(part(element, `${row('L1')} [role=alert]`)).toBeNull();
  // Two actions, each with its undo.
  element.undo();
  await expect.poll(() => volts.value).toBe('24');
});

test('only what is still to be measured is listed where a person asks for it; a row stays until that is asked anew', async () => {
  const element = await mountMeasured({ lang: 'de' });
  await userEvent.fill(field(element, 'L1', 'measuredVoltage'), '24,1');
  await userEvent.keyboard('{Enter}');
  await userEvent.click(part(element, '[data-left=true]')!);
  await userEvent.fill(field(element, 'L1', 'measuredCurrent'), '2');
  await userEvent.keyboard('{Enter}');
  const tags = () => parts(element, 'elv-measured-values [data-row]').map((each) => each.dataset.row);
  await expect.poll(() => textOf(element, 'elv-measured-values footer')).toBe('2 von 6 Werten gemessen');
  expect(tags()).toEqual(['L1', 'L2', 'R1']);
  await userEvent.click(part(element, '[data-left=true]')!);
  await expect.poll(tags).toEqual(['L2', 'R1']);
  await userEvent.click(part(element, '[data-left=false]')!);
  await userEvent.fill(part(element, 'elv-measured-values input[type=search]')!, 'jetty');
  await expect.poll(tags).toEqual(['L1']);
});

test('what is being typed is saved with Ctrl+S', async () => {
  const element = await mountMeasured();
  const saved = new Promise<string>((resolve) => { element.addEventListener('elv-save', ({ value }) => { resolve(value); }); });
  await userEvent.fill(field(element, 'R1', 'measuredCurrent'), '1.9');
  await userEvent.keyboard('{Control>}s{/Control}');
  expect(await saved).toContain('"measuredCurrent":1.9');
});

test('in the cells of the sheets, too, what is measured is typed on the keyboard of numbers, and nothing else is', async () => {
  const element = await mountElement({ content: content() });
  await element.select('supplies', 'L1', 'measuredVoltage');
  await userEvent.keyboard('{F2}');
  const editor = () => document.activeElement!.shadowRoot!.querySelector('elv-sheet-view')!.shadowRoot!
    .querySelector('elv-schedule-grid')!.shadowRoot!.activeElement as HTMLTextAreaElement;
  await expect.poll(() => editor().inputMode).toBe('decimal');
  await userEvent.keyboard('{Escape}');
  await element.select('supplies', 'L1', 'rated');
  await userEvent.keyboard('{F2}');
  await expect.poll(() => editor().inputMode).toBe('');
  await userEvent.keyboard('{Escape}');
});
