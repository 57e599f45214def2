import { afterEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { mountElement, parts, removeElements, sample } from '../element-mount.ts';
import { isSeen, VIEWS } from '../access/every-view.ts';

afterEach(() => {
  removeElements();
  for (const button of document.querySelectorAll('body > button')) button.remove();
});

/** Presses that the driver is handed at once. */
const AT_ONCE = 10;
/** With so many times as many presses, more than any view has stops: whoever needs more is in a trap. */
const MOST_HANDED = 16;

function focused(): Element | null {
  let at = document.activeElement;
  while (at?.shadowRoot?.activeElement instanceof Element) at = at.shadowRoot.activeElement;
  return at;
}

/** Groups in which one member is a stop and the arrow keys lead to the others. */
const ROVING = '[role=tablist], [role=radiogroup], [role=grid]';

/** Sheets differ in their rows, through which Tab leads in the same way; three stand for the others. */
const WALKED = VIEWS.filter(([name]) =>
  !name.startsWith('the sheet ') || ['devices', 'runs', 'outputs'].some((sheet) => name.endsWith(sheet)));

test.each(WALKED)('in %s Tab reaches everything that can be used, and leaves again, both ways', { timeout: 60_000 },
  async (_name, show) => {
  const [before, after] = ['before', 'after']
    .map((text) => Object.assign(document.createElement('button'), { textContent: text }));
  const element = await mountElement({ content: sample() });
  element.before(before!);
  element.after(after!);
  await show(element);
  const reached = new Set<Element>();
  const walk = async (from: HTMLElement, to: HTMLElement, key: string): Promise<void> => {
    const done = new AbortController();
    const note = (): void => { reached.add(focused()!); };
    // The focus has moved when a key is let go; one that went into a frame is not seen there, but the window lost it.
    addEventListener('keyup', note, { capture: true, signal: done.signal });
    addEventListener('blur', note, done);
    addEventListener('keydown', (event) => {
      if (document.activeElement === to) event.preventDefault();
    }, { capture: true, signal: done.signal });
    from.focus();
    for (let handed = 0; document.activeElement !== to; handed += 1) {
      if (handed === MOST_HANDED) {
        throw new Error(
          `After ${handed * AT_ONCE} presses the focus is still on ${focused()?.outerHTML.slice(0, 120)}`);
      }
      await userEvent.keyboard(key.repeat(AT_ONCE));
    }
    done.abort();
  };
  await walk(before!, after!, '{Tab}');
  const usable = parts(element, 'button,input,select,textarea,summary,a[href],iframe,[tabindex="0"]')
    .filter((each) => isSeen(each) && !each.matches(':disabled, input[type=file]')
      && each.closest('.handsontable') === null);
  const missed = usable.filter((each) => !reached.has(each)
    && !(each.matches('[tabindex="-1"]') && each.closest(ROVING)?.querySelector('[tabindex="0"]') instanceof Element));
  expect(missed.map((each) => each.outerHTML.slice(0, 120))).toEqual([]);
  await walk(after!, before!, '{Shift>}{Tab}{/Shift}');
});

test('the arrow keys lead through the tabs', async () => {
  const element = await mountElement({ content: sample() });
  const members = parts(element, '[role=tablist] [role=tab]');
  expect(members.length).toBeGreaterThan(2);
  members[0]!.focus();
  for (let step = 1; step < members.length; step += 1) {
    await userEvent.keyboard('{ArrowRight}');
    expect(focused()).toBe(parts(element, '[role=tablist] [role=tab]')[step]);
  }
});
