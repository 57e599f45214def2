import { afterEach, expect, test, vi } from 'vitest';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { mountElement, part, removeElements, sample } from './element-mount.ts';
import { addressOf, enter, fileOf, one, qtyOf } from './draft-support.ts';

afterEach(() => {
  removeElements();
  localStorage.clear();
  for (const form of document.querySelectorAll('form')) form.remove();
});

async function inForm(
  attributes: Readonly<Record<string, string>> = {}, content = sample(),
): Promise<{ form: HTMLFormElement; element: LoadScheduleElement }> {
  const element = await mountElement({ content, key: null, attributes: { name: 'schedule', ...attributes } });
  const form = document.createElement('form');
  document.body.append(form);
  form.append(element);
  await element.updateComplete;
  return { form, element };
}

test('it is a form control by its name, type, form and labels', async () => {
  const { form, element } = await inForm({ id: 'here' });
  const label = document.createElement('label');
  label.htmlFor = 'here';
  form.append(label);
  expect([element.name, element.type, element.form]).toEqual(['schedule', 'elv-load-schedule', form]);
  expect([...element.labels]).toEqual([label]);
  expect(form.elements.namedItem('schedule')).toBe(element);
  element.name = 'other';
  expect(new FormData(form).get('other')).toBe(element.value);
  element.removeAttribute('name');
  expect([...new FormData(form).keys()]).toEqual([]);
});

test('a disabled element gives a form nothing and cannot be changed', async () => {
  const { form, element } = await inForm();
  element.disabled = true;
  await element.updateComplete;
  expect(element.hasAttribute('disabled')).toBe(true);
  expect([...new FormData(form).keys()]).toEqual([]);
  expect((part(element, '[data-command=open]') as HTMLButtonElement).disabled).toBe(true);
  expect(element.willValidate).toBe(false);
  element.removeAttribute('disabled');
  await element.updateComplete;
  expect(element.disabled).toBe(false);
  expect((part(element, '[data-command=open]') as HTMLButtonElement).disabled).toBe(false);
});

test('while a finding is over a limit the form is not sent, and a person is told how many', async () => {
  const { form, element } = await inForm();
  let sent = 0;
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    sent += 1;
  });
  // By the sample, L1 alone is asked for more than it may give.
  expect(element.validity.customError).toBe(true);
  expect(element.validationMessage).toBe('1 finding is over a limit: put it right or accept it.');
  expect([element.checkValidity(), form.checkValidity(), element.reportValidity()]).toEqual([false, false, false]);
  expect(part(element, ':focus')!.id).toBe('panel');
  form.requestSubmit();
  expect(sent).toBe(0);
  form.noValidate = true;
  form.requestSubmit();
  expect(sent).toBe(1);
  form.noValidate = false;
  element.schedule.accept(
    element.schedule.findings[0]!, { reason: 'Replaced next week', name: 'Site', date: '2026-11-25' }
  );
  await element.updateComplete;
  expect(element.schedule.findingCounts.over).toBe(1);
  expect([element.validity.valid, element.validationMessage]).toEqual([true, '']);
  form.requestSubmit();
  expect(sent).toBe(2);
});

test('the sentence follows the number of findings and the language of the page', async () => {
  const content = sample();
  const { element } =
    await inForm({}, { ...content, sheets: { ...content.sheets, feeds: [{ feed: 'F1', rated: 1 }] } });
  // K1 draws 4 × 60 W ÷ 230 V = 1.04 A from F1, by hand.
  expect(element.validationMessage).toBe('2 findings are over a limit: put them right or accept them.');
  element.lang = 'de';
  await expect.poll(() => element.validationMessage)
    .toBe('2 Befunde überschreiten eine Grenze: beheben oder akzeptieren.');
  element.lang = 'fr';
  await expect.poll(() => element.validationMessage)
    .toBe('2 constats dépassent une limite\u00a0: y remédier ou les accepter.');
});

test('a read-only element keeps no form from being sent', async () => {
  const { form, element } = await inForm({ readonly: '' });
  expect(element.willValidate).toBe(false);
  expect(form.checkValidity()).toBe(true);
});

test('resetting takes every action back, and each can be done again', async () => {
  const { form, element } = await inForm({}, one(1));
  for (const qty of [2, 3, 4]) enter(element, qty);
  form.reset();
  expect([qtyOf(element), element.dirty]).toEqual([1, false]);
  expect([element.redo(), element.redo(), element.redo(), element.redo()])
    .toEqual(['Quantity 2', 'Quantity 3', 'Quantity 4', undefined]);
  expect(qtyOf(element)).toBe(4);
});

test('what the browser brings back is shown and is dirty, and what is none changes nothing', async () => {
  const { element } = await inForm({}, one(1));
  element.formStateRestoreCallback(fileOf(7));
  expect([qtyOf(element), element.dirty]).toEqual([7, true]);
  element.formStateRestoreCallback(null);
  element.formStateRestoreCallback('{"no": "schedule"}');
  expect(qtyOf(element)).toBe(7);
});

test('what the browser brings back is not overwritten by the page’s file', async () => {
  const element = document.createElement('elv-load-schedule');
  element.src = addressOf(3);
  element.formStateRestoreCallback(fileOf(7));
  document.body.append(element);
  await element.updateComplete;
  await new Promise((resolve) => { setTimeout(resolve, 300); });
  expect(qtyOf(element)).toBe(7);
  element.src = addressOf(4);
  await expect.poll(() => qtyOf(element)).toBe(4);
});

test('the browser is given what to bring back when the page is left, and not with every edit', async () => {
  const { form, element } = await inForm({}, one(1));
  const given = vi.spyOn(ElementInternals.prototype, 'setFormValue');
  window.dispatchEvent(new PageTransitionEvent('pagehide'));
  enter(element, 2);
  await element.updateComplete;
  expect(given).not.toHaveBeenCalled();
  window.dispatchEvent(new PageTransitionEvent('pagehide'));
  expect(given.mock.calls).toEqual([[null, element.value]]);
  // The form itself is still given it once.
  expect(new FormData(form).getAll('schedule')).toEqual([element.value]);
  given.mockRestore();
});

test('a form that is not sent shows why also where the panel is closed', async () => {
  const { element } = await inForm();
  await expect.poll(() => element.validity.valid).toBe(false);
  part(element, '[aria-controls=panel]')!.click();
  await element.updateComplete;
  element.reportValidity();
  // Closed it is a strip, which counts what is wrong.
  expect(element.shadowRoot!.activeElement).toBe(part(element, 'elv-schedule-panel'));
});

test('in a flexible row it is as wide as there is room', async () => {
  const row = document.createElement('div');
  row.style.cssText = 'display: flex; inline-size: 700px';
  const { element, form } = await inForm();
  form.append(row);
  row.append(document.createElement('span'), element);
  await expect.poll(() => element.getBoundingClientRect().width).toBe(700);
});
