import axe from 'axe-core';
import { afterEach, expect, test } from 'vitest';
import { mountElement, removeElements, sample } from '../element-mount.ts';
import { VIEWS } from '../access/every-view.ts';

afterEach(() => {
  removeElements();
  document.documentElement.style.colorScheme = '';
  document.body.style.background = '';
});

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
/** Rules about colours, which are all that light and dark do not share. */
const OF_COLOURS = ['color-contrast', 'link-in-text-block'];
/** About whole pages, which is the host's business. */
const OF_PAGES = { region: { enabled: false }, 'page-has-heading-one': { enabled: false } };

test.each(VIEWS)('axe finds nothing in %s, light and dark', { timeout: 60_000 }, async (_name, show) => {
  const element = await mountElement({ content: sample() });
  await show(element);
  for (const [scheme, ground, runOnly] of [['light', '#fff', TAGS], ['dark', '#000', OF_COLOURS]] as const) {
    document.documentElement.style.colorScheme = scheme;
    document.body.style.background = ground;
    const { violations } = await axe.run(element, { runOnly: [...runOnly], rules: OF_PAGES, resultTypes: ['violations'] });
    const found = violations.flatMap(({ id, nodes }) => nodes.map(({
      target, failureSummary,
    }) => `${id}: ${JSON.stringify(target)} ${failureSummary ?? ''}`));
    expect(found, scheme).toEqual([]);
  }
});
