import { afterEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import axe from 'axe-core';
import { mountElement, part, parts, removeElements, sample, said, textOf } from './element-mount.ts';

afterEach(() => {
  removeElements();
  localStorage.clear();
});

const open = (element: Element, group: string) => parts(element, `#findings-${group} .finding`).length;

async function acceptFirst(element: Element, reason: string, name: string): Promise<void> {
  part(element, '#findings-over .accept')!.click();
  await expect.poll(() => part(element, 'elv-acceptance-form [name=reason]')).not.toBeNull();
  await userEvent.fill(part(element, 'elv-acceptance-form [name=reason]')!, reason);
  await userEvent.fill(part(element, 'elv-acceptance-form [name=name]')!, name);
  await userEvent.keyboard('{Enter}');
}

test('a finding is accepted with reason, name and date, stands apart, and is open again after undo', async () => {
  const element = await mountElement({ content: sample() });
  const { schedule } = element;
  expect(open(element, 'over')).toBe(1);
  await acceptFirst(element, 'Lamps are dimmed to half', 'A. N. O.');
  await expect.poll(() => part(element, '#findings-over')).toBeNull();
  expect(schedule.content().accepted).toMatchObject([{
    sheet: 'supplies', tag: 'L1', rule: 'supply-over-usable', reason: 'Lamps are dimmed to half', name: 'A. N. O.',
    date: new Date().toISOString().slice(0, 10),
  }]);
  expect(textOf(element, '[data-severity=over] b')).toBe('0');
  expect(said(element)).toBe('Acceptance of a finding');
  const group = part(element, '#findings-accepted') as HTMLDetailsElement;
  group.querySelector('summary')!.click();
  await expect.poll(() => textOf(element, '#findings-accepted .acceptance'))
    .toMatch(/^Accepted by A\. N\. O\. on \w{3} \d{1,2}, \d{4}: Lamps are dimmed to half$/);
  schedule.undo();
  await expect.poll(() => open(element, 'over')).toBe(1);
});

test('an acceptance is withdrawn, and falls away when the finding grows worse, which is said', async () => {
  const element = await mountElement({ content: sample() });
  const { schedule } = element;
  const finding = () => schedule.findings.find(({ rule }) => rule === 'supply-over-usable')!;
  schedule.accept(finding(), { reason: 'Seldom', name: 'N.', date: '2026-01-02' });
  await element.updateComplete;
  (part(element, '#findings-accepted summary'))!.click();
  await expect.poll(() => part(element, '.withdraw')).not.toBeNull();
  part(element, '.withdraw')!.click();
  await expect.poll(() => open(element, 'over')).toBe(1);
  expect(schedule.content().accepted ?? []).toEqual([]);
  schedule.undo();
  await expect.poll(() => part(element, '#findings-over')).toBeNull();
  const [first] = schedule.rows('devices');
  schedule.act('More', [{ op: 'set', sheet: 'devices', id: first!.id, key: 'qty', value: 4 }]);
  await expect.poll(() => textOf(element, '#findings-over .acceptance'))
    .toBe('Worse than when it was accepted by N. on Jan 2, 2026: Seldom');
});

test('what is missing is asked for, Escape closes the form, and nothing has changed', async () => {
  const element = await mountElement({ content: sample() });
  part(element, '#findings-over .accept')!.click();
  await expect.poll(() => part(element, 'elv-acceptance-form [name=reason]')).not.toBeNull();
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => textOf(element, 'elv-acceptance-form [role=alert]'))
    .toBe('Say why and by whom it is accepted.');
  const { violations } = await axe.run(element, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] });
  expect(violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([]);
  await userEvent.keyboard('{Escape}');
  await expect.poll(() => part(element, 'elv-acceptance-form')).toBeNull();
  expect(part(element, '.accept')!.matches(':focus')).toBe(true);
  expect(element.schedule.undoLabel).toBeUndefined();
});

test('a finding is accepted and opened again where its figure is explained', async () => {
  const element = await mountElement({ content: sample() });
  await element.select('supplies', 'L1', 'demand');
  await expect.poll(() => part(element, '.found .link')).not.toBeNull();
  part(element, '.found .link')!.click();
  await expect.poll(() => part(element, '.text elv-acceptance-form [name=reason]')).not.toBeNull();
  await userEvent.keyboard('Only at rehearsals{Tab}N. N.{Enter}');
  await expect.poll(() => textOf(element, '.found .acceptance'))
    .toMatch(/^Accepted by N\. N\. on .*: Only at rehearsals$/);
  expect(textOf(element, '.found .link')).toBe('Withdraw');
  part(element, '.found .link')!.click();
  await expect.poll(() => textOf(element, '.found .link')).toBe('Accept …');
  expect(element.schedule.content().accepted ?? []).toEqual([]);
});

test('a schedule that may only be looked at is not accepted in', async () => {
  const element = await mountElement({ content: sample(), attributes: { readonly: '' } });
  expect(open(element, 'over')).toBe(1);
  expect(part(element, '.accept')).toBeNull();
});
