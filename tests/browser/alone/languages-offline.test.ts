import { afterEach, expect, test, vi } from 'vitest';
import { mountElement, parts, removeElements, said, sample, textOf } from '../element-mount.ts';

// As where the network is gone when the words are fetched: the module fails, not its making, which would end the run.
const { unreachable } = vi.hoisted(() => ({
  unreachable: () => ({ get default() { throw new Error('The catalogue cannot be fetched.'); } }),
}));
vi.mock('../../../src/words/catalogue/de.json', unreachable);
vi.mock('../../../src/words/catalogue/fr.json', unreachable);

afterEach(removeElements);

test.each([
  [
    'de',
    'Die Texte dieser Sprache konnten nicht geladen werden: Verbindung prüfen und die Seite neu laden. Bis dahin erscheinen sie auf Englisch.',
  ],
  [
    'fr',
    'Les textes de cette langue n’ont pas pu être chargés\u00a0: vérifier la connexion et recharger la page. D’ici là, ils s’affichent en anglais.',
  ],
])('where words cannot be fetched the element says so in the language of the page, speaks English, and shows everything: %s', async (lang, sentence) => {
  const element = await mountElement({ content: sample(), attributes: { lang } });
  expect(parts(element, 'elv-sheet-tabs .title').map((each) => each.textContent)[0]).toBe('Devices');
  expect(textOf(element, 'elv-schedule-panel .sentence')).toBe('1,16 A of 1,00 A, 116 %, target 80 %');
  await expect.poll(() => said(element)).toBe(sentence.replace('\u00a0', ' '));
  element.lang = 'en';
  await expect.poll(() => textOf(element, 'elv-schedule-panel .sentence')).toContain('1.16 A of 1.00 A');
});
