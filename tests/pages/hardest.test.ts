import { expect, test } from 'vitest';
import { COLUMN, scheduleOf } from './support/schedule.ts';
import { useSite } from './support/site.ts';

const site = useSite();

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Middle of a part on the screen. */
const middle = ({ x, y, width, height }: Box) => ({ x: x + width / 2, y: y + height / 2 });

test('shadow root in shadow root in a modal dialog: typing, lists, the clipboard, undo, the sheet of keys',
  async () => {
  const { page, faults } = await site.open('hardest/shadow.html');
  await page.getByRole('button', { name: 'Open the dialog' }).click();
  const schedule = scheduleOf(page);
  await schedule.shown();
  await schedule.enter(0, COLUMN.qty, '6');
  expect(await schedule.device(0)).toMatchObject({ qty: 6 });

  // The list of a cell is not inert, and a click on a word takes it.
  await schedule.cell(0, COLUMN.rail).dblclick();
  await schedule.element.locator('.suggestions li', { hasText: 'G2' }).click();
  expect(await schedule.device(0)).toMatchObject({ rail: 'G2' });

  await schedule.cell(0, COLUMN.area).click();
  await page.keyboard.press('Control+c');
  await schedule.cell(3, COLUMN.area).click();
  await page.keyboard.press('Control+v');
  await expect.poll(async () => (await schedule.device(3)).area).toBe('Palm house');
  for (let step = 0; step < 3; step += 1) await page.keyboard.press('Control+z');
  expect([await schedule.device(0), await schedule.device(3)])
    .toMatchObject([{ qty: 4, rail: 'G1' }, { area: 'Fern house' }]);

  await page.keyboard.press('Control+/');
  await expect.poll(() => schedule.element.locator('#keys').isVisible()).toBe(true);
  await page.keyboard.press('Escape');
  await expect.poll(() => schedule.element.locator('#keys').isVisible()).toBe(false);
  await schedule.cell(0, COLUMN.area).click();
  await page.keyboard.type('Orangery');
  await page.keyboard.press('Escape');
  expect(await schedule.device(0)).toMatchObject({ area: 'Palm house' });
  expect(await schedule.element.isVisible()).toBe(true);
  expect(faults).toEqual([]);
});

test('folded away, inert, inside a text that can be edited', async () => {
  const { page, faults } = await site.open('hardest/asleep.html');
  const inert = scheduleOf(page, '#inert elv-load-schedule');
  await inert.shown();
  const { x, y } = middle((await inert.cell(0, COLUMN.qty).boundingBox())!);
  await page.mouse.click(x, y);
  await page.keyboard.type('9');
  await page.keyboard.press('Enter');
  expect(await inert.device(0)).toMatchObject({ qty: 3 });
  await page.getByRole('button', { name: 'Wake' }).click();
  await inert.enter(0, COLUMN.qty, '9');
  expect(await inert.device(0)).toMatchObject({ qty: 9 });

  await page.getByText('Schedule of the panel').click();
  const folded = scheduleOf(page, 'details elv-load-schedule');
  await folded.shown();
  await folded.enter(0, COLUMN.qty, '5');
  expect(await folded.device(0)).toMatchObject({ qty: 5 });

  const editable = scheduleOf(page, '#editable elv-load-schedule');
  await editable.shown();
  const note = () =>
    page.locator('#editable').evaluate((each) => each.outerHTML.replace(/ (?:role|tabindex|class)="[^"]*"/g, ''));
  const before = await note();
  await editable.enter(0, COLUMN.area, 'Orangery');
  await editable.cell(1, COLUMN.area).click();
  await page.keyboard.press('Delete');
  // It opens a work area, and makes nothing bold.
  await page.keyboard.press('Control+b');
  await editable.element.locator('elv-bill-table').waitFor();
  await page.keyboard.press('Escape');
  expect(await editable.device(0)).toMatchObject({ area: 'Orangery' });
  expect(await editable.device(1)).not.toHaveProperty('area');
  await page.keyboard.press('Control+z');
  expect(await editable.device(1)).toMatchObject({ area: 'Palm house' });
  // A heading of the element is no text of the page.
  await editable.element.locator('elv-schedule-panel h2, elv-schedule-panel h3').first().click();
  await page.keyboard.type('x');
  expect(await note()).toBe(before);
  expect(await editable.says('elv-schedule-panel')).not.toMatch(/x\s*Supplies|Suppliesx/);
  expect(faults).toEqual([]);
});

test('from right to left: the left arrow goes on, and figures keep their direction', async () => {
  const { page, faults } = await site.open('hardest/right-to-left.html');
  const schedule = scheduleOf(page);
  await schedule.shown();
  const [area, type] = [
    await schedule.cell(0, COLUMN.area).boundingBox(), await schedule.cell(0, COLUMN.type).boundingBox(),
  ];
  expect(type!.x).toBeLessThan(area!.x);
  await schedule.cell(0, COLUMN.type).click();
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.type('6');
  await page.keyboard.press('Enter');
  expect(await schedule.device(0)).toMatchObject({ qty: 6 });

  await schedule.cell(0, COLUMN.rail).dblclick();
  const [list, cell] = [
    await schedule.element.locator('.suggestions').boundingBox(), await schedule.cell(0, COLUMN.rail).boundingBox(),
  ];
  expect(list!.x + list!.width).toBeGreaterThanOrEqual(cell!.x + cell!.width - 2);
  expect(list!.y).toBeCloseTo(cell!.y + cell!.height, -1);
  await page.keyboard.press('Escape');
  // In a line from right to left «2.42 A of 5.00 A» would begin at its end without a direction of its own.
  const places = (part: string, words: readonly string[]) => schedule.element.locator(part)
    .evaluate((each, [start, end]) => {
    const texts = document.createTreeWalker(each.shadowRoot!, NodeFilter.SHOW_TEXT);
    while (texts.nextNode() !== null) if (texts.currentNode.textContent!.includes(start!)) break;
    return [start!, end!].map((word) => {
      const range = document.createRange();
      const at = texts.currentNode.textContent!.indexOf(word);
      range.setStart(texts.currentNode, at);
      range.setEnd(texts.currentNode, at + word.length);
      return range.getBoundingClientRect().x;
    });
  }, words);
  for (
    const [part, words] of [
      ['elv-schedule-panel', ['of 5.00', '5.00']], ['elv-schedule-panel', ['No runs yet', '.']],
    ] as const
  ) {
    const [start, end] = await places(part, words);
    expect(start!, words[0]).toBeLessThan(end!);
  }
  expect(faults).toEqual([]);
});

test('320 pixels wide: only the rows scroll sideways, every command is in reach', async () => {
  const { page, faults } =
    await site.open('hardest/narrow.html', { viewport: { width: 320, height: 256 }, deviceScaleFactor: 4 });
  const schedule = scheduleOf(page);
  await schedule.shown();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
  // Most of them stand in the header that a button unfolds, one among the columns that another opens.
  await schedule.element.locator('#unfold').click();
  await schedule.element.locator('[popovertarget=columns]').click();
  const commands = await schedule.element.locator('[data-command]').evaluateAll((all) => all.map((each) => {
    const { left, right, width, height } = each.getBoundingClientRect();
    return {
      name: each.getAttribute('data-command'), inReach: left >= 0 && right <= 320 && width >= 24 && height >= 24,
    };
  }));
  expect(commands.length).toBeGreaterThanOrEqual(16);
  expect(commands.filter(({ inReach }) => !inReach)).toEqual([]);
  await page.keyboard.press('Escape');
  // The page has no room for the whole element, and scrolls to what is used.
  await schedule.enter(0, COLUMN.qty, '6');
  expect(await schedule.device(0)).toMatchObject({ qty: 6 });
  for (let step = 0; step < 2; step += 1) await page.keyboard.press('ArrowRight');
  await page.keyboard.type('B2');
  await page.keyboard.press('Enter');
  expect(await schedule.device(1)).toMatchObject({ branch: 'B2' });
  expect(faults).toEqual([]);
});

test('hostile styles do not reach inside', async () => {
  const looks = async (path: string) => {
    const { page, faults } = await site.open(path);
    const schedule = scheduleOf(page);
    await schedule.shown();
    await expect.poll(() => schedule.says('elv-schedule-panel')).toContain('within limits');
    const lookNow = () => schedule.element.evaluate((element) => {
      const KEYS = ['fontFamily', 'fontSize', 'fontStyle', 'lineHeight', 'letterSpacing', 'wordSpacing', 'textAlign',
        'textIndent', 'textTransform',
        'whiteSpace', 'cursor', 'boxSizing', 'color', 'backgroundColor', 'paddingTop', 'marginTop', 'borderTopWidth',
          'display', 'height'] as const;
      const found: Record<string, string> = {};
      const visit = (root: ParentNode, path: string): void => {
        [...root.children].forEach((each, index) => {
          const name = `${path}/${each.localName}:${index}`;
          const style = getComputedStyle(each);
          // A part that leans on the width of the page is as wide as its page.
          found[name] = KEYS.map((key) => style[key]).join(' | ');
          visit(each, name);
          if (each.shadowRoot !== null) visit(each.shadowRoot, `${name}#`);
        });
      };
      visit(element.shadowRoot!, '');
      return found;
    });
    // The rows take the height that is left for them when the parts above are drawn.
    let look = await lookNow();
    await expect.poll(async () => {
      const before = look;
      look = await lookNow();
      return JSON.stringify(look) === JSON.stringify(before);
    }, { interval: 300, timeout: 10_000 }).toBe(true);
    expect(faults).toEqual([]);
    await page.context().close();
    return look;
  };
  const [spared, spoilt] = [await looks('hardest/narrow.html'), await looks('hardest/styles.html')];
  expect(Object.keys(spared).length).toBeGreaterThan(300);
  expect(spoilt).toEqual(spared);
});

test.each([
  '.scaled', '.zoomed',
])('%s: a click means the cell under it, editor and list open over it', async (place) => {
  const { page, faults } = await site.open('hardest/scaled.html');
  const schedule = scheduleOf(page, `${place} elv-load-schedule`);
  await schedule.shown();
  await schedule.enter(1, COLUMN.qty, '21');
  expect(await schedule.device(1)).toMatchObject({ qty: 21 });
  await schedule.cell(2, COLUMN.rail).dblclick();
  const [cell, editor, list] = [await schedule.cell(2, COLUMN.rail).boundingBox(),
    await schedule.element.locator('.handsontableInput:focus').boundingBox(),
      await schedule.element.locator('.suggestions').boundingBox()];
  const { x, y } = middle(cell!);
  expect(Math.abs(middle(editor!).x - x)).toBeLessThan(editor!.width / 2);
  expect(Math.abs(middle(editor!).y - y)).toBeLessThan(editor!.height / 2);
  expect(list!.x).toBeCloseTo(cell!.x, -1);
  expect(list!.y).toBeCloseTo(cell!.y + cell!.height, -1);
  await page.keyboard.press('Escape');

  await schedule.element.locator('[popovertarget=keys]').click();
  const [keys, button] = [
    await schedule.element.locator('#keys').boundingBox(),
    await schedule.element.locator('[popovertarget=keys]').boundingBox(),
  ];
  expect(keys!.y - (button!.y + button!.height)).toBeGreaterThanOrEqual(0);
  expect(keys!.y - (button!.y + button!.height)).toBeLessThan(16);
  expect(Math.abs(keys!.x + keys!.width - (button!.x + button!.width))).toBeLessThan(16);
  expect(faults).toEqual([]);
});

test.each(
  ['append', 'moveBefore', 'replaceWith', 'away']
)('moved by %s: schedule, selection and undo stay', async (way) => {
  const { page, faults } = await site.open('hardest/moved.html');
  const schedule = scheduleOf(page);
  await schedule.shown();
  const before = await schedule.value();
  await schedule.enter(0, COLUMN.qty, '6');
  await schedule.enter(0, COLUMN.area, 'Orangery');
  const kept = await schedule.value();
  for (let round = 0; round < 2; round += 1) {
    await page.locator(`#${way}`).click();
    await page.waitForTimeout(150);
    await schedule.shown();
    expect(await schedule.value()).toBe(kept);
    expect(await schedule.element.locator('elv-schedule-grid .ht_master').count()).toBe(1);
  }
  await schedule.cell(0, COLUMN.qty).click();
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  expect(await schedule.value()).toBe(before);
  expect(faults).toEqual([]);
});

test('a clone is another element with the same attributes', async () => {
  const { page, faults } = await site.open('hardest/moved.html');
  const first = scheduleOf(page, '#one elv-load-schedule');
  await first.shown();
  await first.enter(0, COLUMN.qty, '6');
  await page.locator('#cloneNode').click();
  const clone = scheduleOf(page, '#other elv-load-schedule');
  await clone.shown();
  expect(await clone.device(0)).toMatchObject({ qty: 4 });
  await clone.enter(0, COLUMN.qty, '8');
  expect([await first.device(0), await clone.device(0)]).toMatchObject([{ qty: 6 }, { qty: 8 }]);
  expect(faults).toEqual([]);
});

test('in a sandbox everything works, and it is said that nothing is kept', async () => {
  const { page, faults } = await site.open('hardest/sandboxed.html');
  const frame = page.frameLocator('iframe');
  const element = frame.locator('elv-load-schedule');
  const cell = (row: number, column: number) =>
    element.locator('elv-schedule-grid .ht_master tbody tr').nth(row).locator('td').nth(column);
  await cell(0, COLUMN.qty).filter({ hasText: '4' }).waitFor();
  await cell(0, COLUMN.qty).click();
  await page.keyboard.type('6');
  await page.keyboard.press('Enter');
  await cell(0, COLUMN.qty).filter({ hasText: '6' }).waitFor();
  await expect.poll(() => element.evaluate((each) =>
    each.shadowRoot!.querySelector('elv-draft-notices')?.shadowRoot?.textContent ?? '')).toMatch(/Save/);
  // Sharing out has no worker here, and works all the same.
  await element.locator('[data-command=shareOut]').click();
  await element.locator('elv-share-out [data-option=keepPlaced]').click();
  await expect.poll(() => element.locator('elv-share-out .verdict').innerText()).toMatch(/1/);
  const download = page.waitForEvent('download');
  await element.locator('[data-command=save]').click();
  expect((await download).suggestedFilename()).toBe('GH-1.schedule.json');
  expect(faults.map((fault) => fault.split('\n')[0]))
    .toEqual([expect.stringMatching(/keeps no drafts: SecurityError/)]);
});

const BIRTHS = ['in-page', 'twin', 'early', 'as-text', 'from-template', 'clone', 'parsed'];

test('born in every way, twins in one form, the script twice', async () => {
  const { page, address, faults } = await site.open('hardest/births.html');
  // A copy of the script from another place finds its names taken.
  await page.addScriptTag({ type: 'module', url: `${address}/copy/elv-load-schedule.js` });
  for (const id of BIRTHS) {
    const schedule = scheduleOf(page, `#${id}`);
    await schedule.shown();
    const { qty } = await schedule.device(0) as { qty: number };
    await schedule.enter(0, COLUMN.qty, String(qty + 1));
    expect(await schedule.device(0), id).toMatchObject({ qty: id === 'early' ? qty : qty + 1 });
  }
  expect(
    await page.locator('#others > iframe')
      .contentFrame().locator('elv-schedule-grid .ht_master tbody td', { hasText: 'Vent actuator' }).count()
  ).toBe(2);
  const [english, german] = [scheduleOf(page, '#in-page'), scheduleOf(page, '#twin')];
  await expect.poll(() => german.says('elv-schedule-panel')).toContain('überschritten');
  await expect.poll(() => english.says('elv-schedule-panel')).toContain('within limits');
  const sent = await page.locator('#twins')
    .evaluate((form) => new FormData(form as HTMLFormElement).getAll('schedule'));
  expect(sent).toEqual([await english.value(), await german.value()]);
  expect(faults).toEqual([]);
});
