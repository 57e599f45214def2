import { afterEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { mountElement, part, parts, removeElements, sample, textOf } from './element-mount.ts';

afterEach(removeElements);

const choice = (element: Element) => part(element, 'elv-language-choice select') as HTMLSelectElement | null;

test('a page that names languages shows a choice of those that are spoken, each by its own name', async () => {
  const element = await mountElement({ content: sample(), attributes: { languages: 'en-GB  de fr-CH nl not_a_tag', lang: 'de' } });
  await expect.poll(() => choice(element)).not.toBeNull();
  expect(parts(element, 'elv-language-choice option').map(({ lang }) => lang)).toEqual(['en-GB', 'de', 'fr-CH']);
  expect(choice(element)!.options[1]!.text).toBe('Deutsch');
  expect(choice(element)!.options[2]!.text).toMatch(/^Français/);
  expect(choice(element)!.value).toBe('de');
});

test('what a person chooses becomes the language of the element, and the page hears of it; what the page sets is silent', async () => {
  const element = await mountElement({ content: sample(), attributes: { languages: 'en de fr' } });
  await expect.poll(() => choice(element)).not.toBeNull();
  const heard: string[] = [];
  const hear = ({ language }: { readonly language: string }) => { heard.push(`${language} ${element.lang}`); };
  element.addEventListener('elv-language', hear);
  await userEvent.selectOptions(choice(element)!, 'fr');
  await expect.poll(() => textOf(element, '[data-sheet=devices] .title')).toBe('Appareils');
  expect(heard).toEqual(['fr fr']);
  element.lang = 'de';
  await expect.poll(() => textOf(element, '[data-sheet=devices] .title')).toBe('Geräte');
  await expect.poll(() => choice(element)!.value).toBe('de');
  expect(heard).toEqual(['fr fr']);
  // By keys alone.
  choice(element)!.focus();
  await userEvent.keyboard('{ArrowUp}');
  await expect.poll(() => textOf(element, '[data-sheet=devices] .title')).toBe('Devices');
  expect(heard).toEqual(['fr fr', 'en en']);
});

test('without languages there is no choice, and it goes when the page takes them away', async () => {
  const element = await mountElement({ content: sample() });
  expect(choice(element)).toBeNull();
  element.languages = 'en de';
  await expect.poll(() => choice(element)).not.toBeNull();
  element.languages = null;
  await expect.poll(() => choice(element)).toBeNull();
});
