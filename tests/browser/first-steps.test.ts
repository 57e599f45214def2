import { afterEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { remembered } from '../../components/look/remembered.ts';
import type { Content } from '../../src/schedule/index.ts';
import { mountElement, part, parts, removeElements, sample, textOf } from './element-mount.ts';
import { demoContent } from './support/demo-content.ts';
import { openWork } from './work-support.ts';

afterEach(() => {
  removeElements();
  localStorage.clear();
});

const steps = (element: Element) => parts(element, 'elv-first-steps li button');
const ticked = (element: Element) =>
  steps(element).filter((each) => each.classList.contains('done')).map((each) => each.dataset.step);
const next = (element: Element) => parts(element, 'elv-first-steps [aria-current=step]').map((each) => each.dataset.step);
const isLed = (element: Element) => part(element, 'elv-first-steps') !== null;

async function mountLed(content?: Content): Promise<LoadScheduleElement> {
  const element = await mountElement(content === undefined ? {} : { content });
  await expect.poll(() => steps(element).length).toBe(6);
  return element;
}

/** A panel that lacks nothing: one device of 0.1 A on a supply of 1 A, one run of 10 m behind an electronic way. */
const whole = (): Content => ({
  details: {},
  sheets: {
    devices: [{ ref: 'D1', type: 'Lamp', qty: 1, rail: 'L1', run: 'R1' }],
    types: [{ type: 'Lamp', draw: 100, nodes: 0, minVoltage: 20 }],
    supplies: [{ rail: 'L1', purpose: 'lighting', rated: 1 }],
    ways: [{ way: 'F1', rail: 'L1', kind: 'electronic', rated: 0.5 }],
    runs: [{ run: 'R1', way: 'F1', conductor: 'C', length: 10 }],
    conductors: [{ conductor: 'C', size: 1.5, resistance: 12.1, maxCurrent: 16.5 }],
  },
});

test('an empty schedule leads; ways to begin stand beside each other, each with its words', async () => {
  const element = await mountLed();
  expect(parts(element, '[data-way]').map((each) => each.dataset.way)).toEqual(['begin', 'open', 'takeoff']);
  element.demoSrc = '/demo.json';
  await expect.poll(() => parts(element, '[data-way]').map((each) => each.dataset.way))
    .toEqual(['begin', 'open', 'takeoff', 'loadDemo']);
  const sizes = new Set(parts(element, '[data-way]').map(({ offsetWidth, offsetHeight }) => `${offsetWidth} × ${offsetHeight}`));
  expect(sizes.size).toBe(1);
  expect(ticked(element)).toEqual([]);
  expect(next(element)).toEqual(['devices']);
  expect(textOf(element, 'elv-first-steps .hint')).toContain('List the devices');
});

test('what the document holds is ticked, undo takes the tick away, and the first open step is the next', async () => {
  const element = await mountLed();
  await userEvent.click(part(element, '[data-way=begin]')!);
  await userEvent.keyboard('D1{Tab}{Tab}Lamp{Tab}2{Enter}');
  await expect.poll(() => ticked(element)).toEqual(['devices']);
  expect(part(element, 'elv-first-steps [data-way]')).toBeNull();
  expect(next(element)).toEqual(['types']);
  element.schedule.load({ ...element.schedule.content(), details: { project: 'x' } }, 'a file');
  await expect.poll(() => isLed(element)).toBe(false);
});

test('every step is done by what the document holds, and the last one puts the steps away', async () => {
  const element = await mountElement({ content: whole() });
  const { schedule } = element;
  await userEvent.click(part(element, '[data-command=save]')!);
  await userEvent.keyboard('{Shift>}{F1}{/Shift}');
  await expect.poll(() => ticked(element)).toEqual(['devices', 'types', 'supplies', 'runs', 'findings']);
  expect(next(element)).toEqual(['loadTable']);
  schedule.act('no draw', [{ op: 'set', sheet: 'types', id: schedule.rows('types')[0]!.id, key: 'draw', value: null }]);
  await expect.poll(() => ticked(element)).not.toContain('types');
  expect(ticked(element)).not.toContain('findings');
  schedule.undo();
  await expect.poll(() => next(element)).toEqual(['loadTable']);
  // Whoever does the last step elsewhere stays there.
  part(element, '[data-key=remarks]')!.focus();
  schedule.act('issue', [{ op: 'revisions', revisions: [{ revision: 'A', date: '', name: '', text: '' }] }]);
  await expect.poll(() => isLed(element)).toBe(false);
  expect(part(element, '[data-key=remarks]')!.matches(':focus')).toBe(true);
  // Done is not put away: the next empty schedule leads again.
  expect(remembered('leads', true)).toBe(true);
  // Who asks for them afterwards may look at them.
  await userEvent.keyboard('{Shift>}{F1}{/Shift}');
  await expect.poll(() => ticked(element).length).toBe(6);
  expect(textOf(element, 'elv-first-steps .hint')).toBe('Every step is done.');
});

test('a step goes to its place: a sheet, the worst finding, the load table', async () => {
  const element = await mountElement({ content: sample() });
  await userEvent.click(part(element, '[data-command=save]')!);
  await userEvent.keyboard('{Shift>}{F1}{/Shift}');
  await expect.poll(() => steps(element).length).toBe(6);
  const sheet = () => part(element, '[role=tab][aria-selected=true]')!.dataset.sheet;
  for (const place of ['runs', 'types', 'supplies', 'devices']) {
    await userEvent.click(part(element, `[data-step=${place}]`)!);
    await expect.poll(sheet).toBe(place);
  }
  const [worst] = element.schedule.findings;
  await userEvent.click(part(element, '[data-step=findings]')!);
  await expect.poll(sheet).toBe(worst!.sheet);
  await expect.poll(() => textOf(element, 'elv-cell-explanation .found')).toContain(worst!.message.slice(0, 20));
  await userEvent.click(part(element, '[data-step=loadTable]')!);
  await expect.poll(() => part(element, 'elv-load-table')?.hidden).toBe(false);
});

test('put away they stay away, on the next empty schedule too, until they are asked for by key or in the help', async () => {
  const element = await mountLed();
  await userEvent.click(part(element, 'elv-first-steps .close')!);
  await expect.poll(() => isLed(element)).toBe(false);
  removeElements();
  const other = await mountElement();
  await customElements.whenDefined('elv-first-steps');
  expect(isLed(other)).toBe(false);
  await userEvent.click(part(other, '.begin [data-command=firstSteps]')!);
  await expect.poll(() => steps(other).length).toBe(6);
  await userEvent.click(part(other, 'elv-first-steps .close')!);
  await expect.poll(() => isLed(other)).toBe(false);
  await userEvent.keyboard('{F1}');
  await expect.poll(() => part(other, 'elv-help [data-command=firstSteps]')).not.toBeNull();
  await userEvent.click(part(other, 'elv-help [data-command=firstSteps]')!);
  await expect.poll(() => steps(other).length).toBe(6);
  expect(part(other, '#help')!.matches(':popover-open')).toBe(false);
});

test('a schedule with rows, one that may only be read, and a page that says itself how to begin are not led', async () => {
  for (const prepare of [
    () => mountElement({ content: demoContent() }),
    () => mountElement({ key: null, attributes: { readonly: '' } }),
    async () => {
      const element = document.createElement('elv-load-schedule');
      element.innerHTML = '<p slot="empty">Ask the office.</p>';
      document.body.append(element);
      await element.updateComplete;
      return element;
    },
  ]) {
    const element = await prepare();
    await element.updateComplete;
    expect(isLed(element)).toBe(false);
    removeElements();
  }
});

test('where nothing may be changed the key of the steps leaves what is open', async () => {
  const element = await mountElement({ content: sample(), attributes: { readonly: '' } });
  await openWork(element, 'loadTable');
  await userEvent.keyboard('{Shift>}{F1}{/Shift}');
  await element.updateComplete;
  expect(part(element, 'elv-load-table')!.hidden).toBe(false);
  expect(isLed(element)).toBe(false);
});

test('general types are found by any of their names and taken by name, as one action', async () => {
  const element = await mountLed();
  await userEvent.click(part(element, 'elv-first-steps [popovertarget=general]')!);
  await expect.poll(() => parts(element, 'elv-type-choice li').length).toBeGreaterThan(50);
  await userEvent.keyboard('Einbaustrahler');
  await expect.poll(() => parts(element, 'elv-type-choice li').length).toBe(2);
  await userEvent.click(parts(element, 'elv-type-choice li label')[0]!);
  await userEvent.fill(part(element, 'elv-type-choice input[type=search]')!, 'gâche');
  await expect.poll(() => parts(element, 'elv-type-choice li').length).toBe(1);
  await userEvent.click(part(element, 'elv-type-choice [data-do=all]')!);
  await userEvent.click(part(element, 'elv-type-choice [data-do=take]')!);
  const names = () => element.schedule.rows('types').map(({ cells }) => cells.type);
  await expect.poll(names).toEqual(['Downlight 7 W', 'Door strike']);
  expect(part(element, '#general')!.matches(':popover-open')).toBe(false);
  // What the schedule has is not offered again.
  await userEvent.click(part(element, 'elv-first-steps [popovertarget=general]')!);
  await userEvent.keyboard('Einbaustrahler');
  await expect.poll(() => parts(element, 'elv-type-choice li').length).toBe(1);
  await userEvent.keyboard('{Escape}');
  element.undo();
  expect(names()).toEqual([]);
});
