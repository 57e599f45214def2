import { afterEach, expect, test } from 'vitest';
import { page } from 'vitest/browser';
import type { DraftNotice } from '../../components/drafts/draft-notice.ts';
import '../../components/drafts/draft-notices.define.ts';
import { loadWords } from '../../src/words/index.ts';
import { mountElement, parts, removeElements } from './element-mount.ts';

afterEach(async () => {
  removeElements();
  await page.viewport(1280, 800);
});

const head = {
  id: 1, key: '', version: 2, at: 0, count: 1, ended: false, savedAt: 0,
  title: 'Boat house, KP-1', source: 'https://example.org/boat-house.schedule.json',
};
const TOLD: readonly DraftNotice[] = [
  ...(['restored', 'unchecked', 'kept', 'changed', 'other', 'discarded', 'foreign', 'damaged'] as const)
    .map((kind) => ({ kind, head })),
  { kind: 'saved', at: 0 },
];

const overlap = (one: DOMRect, other: DOMRect): boolean =>
  one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;

/** Where the text within an element is drawn, which may be outside of it. */
function drawn(element: Element): DOMRect {
  const range = document.createRange();
  range.selectNodeContents(element);
  return range.getBoundingClientRect();
}

test.each(
  [390, 1280].flatMap((width) => ['en', 'de', 'fr'].map((language) => [width, language] as const))
)('at %i px no offer of a notice lies over another, in %s', async (width, language) => {
  await page.viewport(width, 844);
  const element = await mountElement({ key: null });
  const notices = document.createElement('elv-draft-notices');
  Object.assign(notices, { notices: TOLD, words: await loadWords(language) });
  element.shadowRoot!.append(notices);
  await notices.updateComplete;
  const lines = parts(element, 'elv-draft-notices li');
  expect(lines).toHaveLength(TOLD.length);
  for (const line of lines) {
    const places = [...line.children].map((each) => ({ text: each.textContent.trim(), box: drawn(each) }));
    const faults = places.flatMap(({ text, box }, index) => [
      ...places.slice(index + 1).filter((other) => overlap(box, other.box)).map((other) => `${text} | ${other.text}`),
      ...(box.right > width ? [`${text} ends at ${box.right} px`] : []),
    ]);
    expect(faults).toEqual([]);
  }
});
