import { afterEach, expect, test, vi } from 'vitest';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { mountElement, removeElements, sample, textOf } from './element-mount.ts';

const root = document.documentElement;
const before = root.getAttribute('lang');

afterEach(() => {
  removeElements();
  for (const each of document.querySelectorAll('body > .holder')) each.remove();
  if (before === null) root.removeAttribute('lang');
  else root.lang = before;
});

const mount = () => mountElement({ content: sample(), key: null });
const saveOf = (element: Element) => textOf(element, '[data-command=save]');

/** A part of a page, which holds an element from then on. */
function holderOf(element: LoadScheduleElement, lang = ''): HTMLElement {
  const holder = document.createElement('div');
  holder.className = 'holder';
  if (lang !== '') holder.lang = lang;
  document.body.append(holder);
  holder.append(element);
  return holder;
}

test('a new language of the page is spoken at once, and the sheet that is shown stays', async () => {
  root.lang = 'en';
  const element = await mount();
  element.showSheet('supplies');
  expect(saveOf(element)).toBe('Save');
  root.lang = 'de';
  await expect.poll(() => saveOf(element)).toBe('Speichern');
  root.setAttribute('lang', 'fr-CH');
  await expect.poll(() => saveOf(element)).toBe('Enregistrer');
  expect(textOf(element, '[aria-selected=true] .title')).toBe('Alimentations');
  root.removeAttribute('lang');
  // That of the browser, which the test driver sets to British English.
  await expect.poll(() => saveOf(element)).toBe('Save');
});

test('the nearest language counts, whichever of them changes', async () => {
  root.lang = 'en';
  const element = await mount();
  const holder = holderOf(element);
  holder.lang = 'fr';
  await expect.poll(() => saveOf(element)).toBe('Enregistrer');
  root.lang = 'de';
  await new Promise((resolve) => { setTimeout(resolve, 50); });
  expect(saveOf(element)).toBe('Enregistrer');
  holder.lang = '';
  await expect.poll(() => saveOf(element)).toBe('Speichern');
  element.lang = 'en';
  await expect.poll(() => saveOf(element)).toBe('Save');
});

test('a page’s language is heeded across the shadow roots that the element stands in', async () => {
  root.lang = 'en';
  const element = await mount();
  const outer = holderOf(element);
  const inner = document.createElement('div');
  outer.attachShadow({ mode: 'open' }).append(inner);
  inner.attachShadow({ mode: 'closed' }).append(element);
  await element.updateComplete;
  root.lang = 'de';
  await expect.poll(() => saveOf(element)).toBe('Speichern');
  inner.lang = 'fr';
  await expect.poll(() => saveOf(element)).toBe('Enregistrer');
  outer.remove();
  element.remove();
});

test.each([
  'append', 'moveBefore',
] as const)('an element that is moved speaks the language of its new place, and heeds it: %s', async (way) => {
  root.lang = 'en';
  const element = await mount();
  const other = holderOf(document.createElement('elv-load-schedule'), 'de');
  if (way === 'append') other.append(element);
  else (other as unknown as { moveBefore(node: Node, before: Node | null): void }).moveBefore(element, null);
  await expect.poll(() => saveOf(element)).toBe('Speichern');
  other.lang = 'fr';
  await expect.poll(() => saveOf(element)).toBe('Enregistrer');
});

test('nothing is watched for an element that is off its page', async () => {
  const observe = vi.spyOn(MutationObserver.prototype, 'observe');
  const disconnect = vi.spyOn(MutationObserver.prototype, 'disconnect');
  root.lang = 'en';
  const element = await mount();
  const watching =
    observe.mock.contexts.filter((_, index) => observe.mock.calls[index]![1]?.attributeFilter?.includes('lang'));
  expect(new Set(watching).size).toBe(1);
  disconnect.mockClear();
  element.remove();
  expect(disconnect.mock.contexts).toContain(watching[0]);
  root.lang = 'de';
  await new Promise((resolve) => { setTimeout(resolve, 50); });
  document.body.append(element);
  await expect.poll(() => saveOf(element)).toBe('Speichern');
  vi.restoreAllMocks();
});
