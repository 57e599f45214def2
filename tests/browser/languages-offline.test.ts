import { afterEach, expect, test, vi } from 'vitest';
import { mountElement, parts, removeElements, said, sample, textOf } from './element-mount.ts';

// As where the network is gone when the words are fetched.
vi.mock('../../src/words/catalogue/index.ts', () => ({
  translationsInto: () => { throw new Error('The catalogue cannot be fetched.'); },
}));

afterEach(removeElements);

test('where words cannot be fetched the element says so, speaks English, and shows everything', async () => {
  const element = await mountElement({ content: sample(), attributes: { lang: 'de' } });
  expect(parts(element, 'elv-sheet-tabs .title').map((each) => each.textContent)[0]).toBe('Devices');
  expect(textOf(element, 'elv-schedule-panel .sentence')).toBe('1,16 A of 1,00 A, 116 %, target 80 %');
  await expect.poll(() => said(element)).toContain('could not be loaded');
  element.lang = 'en';
  await expect.poll(() => textOf(element, 'elv-schedule-panel .sentence')).toContain('1.16 A of 1.00 A');
});
