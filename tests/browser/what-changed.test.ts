import { afterEach, describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import axe from 'axe-core';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { mountElement, part, parts, removeElements, sample, said, textOf } from './element-mount.ts';
import type { Row } from '../../src/schedule/index.ts';
import { paste, putOnClipboard } from './support/clipboard.ts';

afterEach(() => {
  removeElements();
  localStorage.clear();
});

const plain = (text: string | null | undefined) => (text ?? '').replace(/\s+/g, ' ').trim();
const sentence = (element: Element) => plain(textOf(element, 'elv-schedule-panel [role=status]'));
const gauges = (element: Element) => parts(element, 'elv-schedule-panel .gauge').flatMap((gauge) => {
  const change = gauge.querySelector('.change');
  return change === null ? [] : [`${gauge.querySelector('b')!.textContent} ${plain(change.textContent)}`];
});
const listed = (element: Element) => parts(element, 'elv-schedule-panel #changes li').map((line) => plain(line.textContent));

async function mounted(): Promise<LoadScheduleElement> {
  const element = await mountElement({ content: sample() });
  // It is fetched once the overview is there.
  await expect.poll(() => part(element, 'elv-schedule-panel [role=status]')).not.toBeNull();
  return element;
}

/** By hand: with 1 sensor L1 is asked for 0.56 + 0.1 = 0.66 A of 1 A, and B1 carries 3 of 10 nodes. */
async function oneSensor(element: LoadScheduleElement): Promise<void> {
  await element.select('devices', 'D2', 'qty');
  await userEvent.keyboard('1{Enter}');
}

describe('after an edit', () => {
  test('gauges show what was and what is, with the direction, for some seconds', async () => {
    const element = await mounted();
    await oneSensor(element);
    await expect.poll(() => gauges(element)).toEqual(['L1 ▼ 116 % → 66 %', 'B1 ▼ 80 % → 30 %']);
    expect(part(element, 'elv-schedule-panel .change [aria-hidden]')!.textContent).toBe('▼');
    await expect.poll(() => gauges(element), { timeout: 9000 }).toEqual([]);
    // The list stays until the next action.
    expect(part(element, '#changes')).not.toBeNull();
  });

  test('one polite sentence says it, and a list names each status that moved, with the reason', async () => {
    const element = await mounted();
    await oneSensor(element);
    await expect.poll(() => sentence(element)).toMatch(/: L1 116 % → 66 %, over limit → within limits; B1 80 % → 30 %$/);
    await userEvent.click(part(element, '#changes summary')!);
    await expect.poll(() => listed(element)).toEqual([
      '→ L1 Supplies over limit → within limits: no limit is passed and no entry is missing',
    ]);
    // On a phone what is offered and what opens below the rows stand beside each other, or below.
    element.style.inlineSize = '374px';
    await expect.poll(() => {
      const [offer, views] = ['[data-offer=whatChanged]', '.views'].map((each) => part(element, each)!.getBoundingClientRect());
      return offer!.right <= views!.left || offer!.bottom <= views!.top;
    }).toBe(true);
    element.style.inlineSize = '';
    const { violations } = await axe.run(part(element, '#changes')!);
    expect(violations.map(({ id }) => id)).toEqual([]);
  });

  test('a press in the list goes to the row', async () => {
    const element = await mounted();
    await oneSensor(element);
    await expect.poll(() => part(element, '#changes summary')).not.toBeNull();
    part(element, '#changes summary')!.focus();
    await userEvent.keyboard('{Enter}');
    await expect.poll(() => listed(element).length).toBe(1);
    await userEvent.keyboard('{Tab}{Enter}');
    await expect.poll(() => part(element, '[data-sheet=supplies]')!.getAttribute('aria-selected')).toBe('true');
  });

  test('that moves nothing says so', async () => {
    const element = await mounted();
    await element.select('devices', 'D3', 'area');
    await userEvent.keyboard('Pier{Enter}');
    await expect.poll(() => sentence(element)).toMatch(/: nothing changed its status$/);
    expect(gauges(element)).toEqual([]);
    expect(parts(element, '[data-offer]').map((each) => each.dataset.offer)).toEqual(['undo']);
  });

  test('it is told where the element was moved in the page too', async () => {
    const element = await mounted();
    document.body.append(element);
    await oneSensor(element);
    await expect.poll(() => sentence(element)).toMatch(/over limit → within limits/);
  });

  test('what is accepted moves too', async () => {
    const element = await mounted();
    const { schedule } = element;
    const found = schedule.findings.filter(({ tag, sheet, severity }) => sheet === 'supplies' && tag === 'L1' && severity !== 'note');
    for (const finding of found) schedule.accept(finding, { reason: 'Seldom', name: 'N.', date: '2026-01-02' });
    await expect.poll(() => sentence(element)).toMatch(/: L1 over limit → accepted$/);
  });
});

describe('beside undo and redo', () => {
  test('what was taken back is said by name, with what that did, and again when it is done again', async () => {
    const element = await mounted();
    await oneSensor(element);
    const { undoLabel } = element.schedule;
    await userEvent.keyboard('{Control>}z{/Control}');
    await expect.poll(() => sentence(element))
      .toBe(plain(`Undone: ${undoLabel}: L1 66 % → 116 %, within limits → over limit; B1 30 % → 80 %`));
    expect(plain(said(element))).toContain(plain(`Undone: ${undoLabel}`));
    expect(parts(element, '[data-offer]').map((each) => each.dataset.offer)).toEqual(['redo', 'whatChanged']);
    await userEvent.click(part(element, '[data-offer=whatChanged]')!);
    await expect.poll(() => listed(element)).toEqual([
      expect.stringMatching(/^→ L1 Supplies within limits → over limit\. Rail L1: demand 1\.16 A exceeds the usable 1\.00 A by 0\.16 A\./),
    ]);
    await userEvent.click(part(element, '[data-offer=redo]')!);
    await expect.poll(() => sentence(element)).toMatch(/^Redone: .*: L1 116 % → 66 %, over limit → within limits/);
  });

  test('the list opens where the overview is a narrow strip', async () => {
    const element = await mounted();
    await userEvent.click(part(element, '[aria-controls=panel]')!);
    await oneSensor(element);
    await expect.poll(() => sentence(element)).toContain('over limit → within limits');
    await userEvent.click(part(element, '[data-offer=whatChanged]')!);
    await expect.poll(() => listed(element).length).toBe(1);
  });
});

describe('many rows', () => {
  test('a paste of 1,000 rows is told in one sentence, and taken back in one', async () => {
    const element = await mounted();
    await putOnClipboard(Array.from({ length: 1000 }, (_row, at) => `P${at}\t\tSensor\t1\tL3`).join('\n'));
    await element.select('devices', 'D3', 'ref');
    await userEvent.keyboard('{ArrowDown}');
    await paste();
    // By hand: 1,000 × 0.1 A are 100 A on L3, which has 2 A.
    await expect.poll(() => sentence(element), { timeout: 5000 }).toMatch(/: L3 0 % → 5000 %, within limits → over limit$/);
    await userEvent.keyboard('{Control>}z{/Control}');
    await expect.poll(() => sentence(element), { timeout: 5000 }).toMatch(/^Undone: .*: L3 5000 % → 0 %, over limit → within limits$/);
  });

  test('rows that come and go are told as new and gone, by their names; blank ones are not', async () => {
    const element = await mounted();
    const { schedule } = element;
    const rows: Row[] = [{ id: 90, cells: { rail: 'N1' } }, { id: 91, cells: {} }, { id: 92, cells: { rail: 'N2', rated: 5 } }];
    schedule.act('Three supplies', [{ op: 'insert', sheet: 'supplies', at: 3, rows }]);
    await expect.poll(() => sentence(element)).toMatch(/: N1 new: incomplete$/);
    schedule.undo();
    await expect.poll(() => sentence(element)).toMatch(/: N1 gone: was incomplete$/);
  });
});
