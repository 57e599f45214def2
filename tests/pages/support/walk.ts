import type { Download, Page } from 'playwright';
import { makeWorkbook } from '../../support/make-workbook.ts';
import { COLUMN, scheduleOf } from './schedule.ts';

type Schedule = ReturnType<typeof scheduleOf>;

/** Names of the files that a person was handed on the way. */
export type Saved = string[];

/**
 * Goes through the whole software on a page that shows the demo: every sheet with its editors and lists, the panel,
 * pictures, every work area with every save, files in and out, drafts and languages.
 * @returns names of the files that were saved, in order.
 */
export async function walkThrough(page: Page): Promise<Saved> {
  const schedule = scheduleOf(page);
  const saved: Saved = [];
  const save = async (press: () => Promise<void>): Promise<Download> => {
    const download = page.waitForEvent('download');
    await press();
    saved.push((await download).suggestedFilename());
    return download;
  };
  await schedule.shown();
  await schedule.element.evaluate((each) => { each.setAttribute('storage-key', 'walk'); });
  await throughSheets(page, schedule);
  await throughRows(page, schedule);
  await throughPanel(page, schedule);
  const json = await save(() => schedule.command('save').click());
  const csv = await save(() => schedule.command('csvOut').click());
  await throughFiles(schedule, await json.path(), await csv.path());
  await throughTakeoff(page, schedule);
  await throughSharing(schedule);
  await schedule.command('sizing').click();
  await save(() => schedule.element.locator('elv-sizing-table [data-do=csv]:enabled').click());
  await page.keyboard.press('Escape');
  await schedule.command('bill').click();
  for (const form of ['csv', 'xlsx']) await save(() => schedule.element.locator(`elv-bill-table [data-do=${form}]`).click());
  await schedule.command('join').click();
  await schedule.element.locator('elv-schedule-join').waitFor();
  await page.keyboard.press('Escape');
  await schedule.command('loadTable').click();
  const table = schedule.element.locator('elv-load-table');
  await table.locator('iframe').contentFrame().locator('table').first().waitFor();
  await save(() => table.locator('[data-do=html]').click());
  const workbook = await save(() => table.locator('[data-do=xlsx]').click());
  await save(() => table.locator('[data-do=csv]').click());
  await throughLoadTable(schedule, await workbook.path());
  await throughLanguages(page, schedule);
  return saved;
}

async function throughSheets(page: Page, schedule: Schedule): Promise<void> {
  // It is seen only where a sheet has no rows, or the page is narrow.
  const more = schedule.element.locator('elv-sheet-tabs .more');
  if (await more.isVisible()) await more.click();
  const tabs = schedule.element.locator('elv-sheet-tabs [role=tab]');
  for (let index = await tabs.count() - 1; index >= 0; index -= 1) {
    await tabs.nth(index).click();
    // Every editor and every list of a sheet, from its first cells on.
    await schedule.cell(0, 0).click();
    for (let cell = 0; cell < 9; cell += 1) {
      await page.keyboard.press('Alt+ArrowDown');
      await page.keyboard.press('Escape');
      await page.keyboard.press('ArrowRight');
    }
  }
}

async function throughRows(page: Page, schedule: Schedule): Promise<void> {
  for (const grouping of ['rail', 'branch', 'area', 'entered']) {
    await schedule.element.locator('[data-choice=groupings]').selectOption(grouping);
  }
  for (const rows of ['own', 'over', '']) await schedule.element.locator('[data-choice=rows]').selectOption(rows);
  await schedule.enter(0, COLUMN.qty, '=2*3');
  await schedule.enter(0, COLUMN.qty, 'many');
  await page.keyboard.press('Escape');
  await schedule.cell(0, COLUMN.rail).dblclick();
  await schedule.element.locator('.suggestions li').last().click();
  await schedule.cell(1, COLUMN.qty).click();
  const keys = [
    'Shift+ArrowDown', 'Control+d', 'Control+c', 'ArrowDown', 'Control+v', 'Control+x', 'Control+z', 'Delete',
    'Control+z',
    'Alt+Enter', 'Alt+Shift+Enter', 'Alt+Shift+ArrowUp', 'Alt+Shift+ArrowDown', 'Alt+Delete', 'Control+z', 'Control+y',
    'Control+Shift+Home', 'Control+c',
  ];
  for (const key of keys) await page.keyboard.press(key);
  await page.keyboard.press('Control+Shift+L');
  for (const name of ['sort=up', 'sort=up', 'freeze']) await schedule.element.locator(`[data-${name}]`).click();
  await page.keyboard.press('Escape');
  await schedule.element.locator('[popovertarget=columns]').click();
  await schedule.element.locator('[data-column=note]').uncheck();
  await schedule.element.locator('[data-column=note]').check();
  await page.keyboard.press('Escape');
  await schedule.cell(1, COLUMN.qty).click();
  for (
    const command of ['insertAbove', 'insertBelow', 'moveDown', 'moveUp', 'fillDown', 'removeRows', 'undo', 'redo']
  ) {
    await schedule.command(command).click();
  }
  await schedule.element.locator('elv-details-strip input').first().fill('Walk');
  await page.keyboard.press('Tab');
}

async function throughPanel(page: Page, schedule: Schedule): Promise<void> {
  const panel = schedule.element.locator('elv-schedule-panel');
  const closed = panel.locator('details:not([open]) > summary');
  while (await closed.count() > 0) await closed.first().click();
  await panel.locator('.finding').first().click();
  await panel.locator('.accept').first().click();
  const form = panel.locator('elv-acceptance-form');
  await form.locator('button').first().click();
  await form.locator('[name=reason]').fill('Only during the walk');
  await form.locator('[name=name]').fill('N. N.');
  await form.locator('button').first().click();
  await panel.locator('.withdraw').first().click();
  // The picture of a run, of supplies, of branches.
  for (const [sheet, key] of [['runs', 'drop'], ['supplies', 'loading'], ['branches', 'nodes']] as const) {
    await schedule.select(sheet, 1, key);
    if (sheet === 'runs') await schedule.element.locator('elv-sheet-view .views button').last().click();
    await schedule.element.locator('elv-picture svg').first().waitFor();
  }
  await schedule.element.locator('[popovertarget=keys]').click();
  await schedule.element.locator('#keys').waitFor();
  await page.keyboard.press('Escape');
  await schedule.element.locator('.footer summary').click();
}

async function throughFiles(schedule: Schedule, json: string, csv: string): Promise<void> {
  const field = schedule.element.locator('.element > input[type=file]');
  // One after the other: an earlier file that takes longer than a later one is refused is shown, and the refusal goes.
  const loaded = schedule.element.evaluate((element) => new Promise<void>((resolve) => {
    element.addEventListener('elv-load', () => { resolve(); }, { once: true });
  }));
  await field.setInputFiles(json);
  await loaded;
  const offer = schedule.element.locator('elv-rows-offer');
  for (const way of ['update', 'append', 'replace']) {
    await field.setInputFiles([]);
    await field.setInputFiles(csv);
    await offer.locator(`[value=${way}]`).click();
    await offer.locator('[data-do=take]').click();
    await offer.waitFor({ state: 'detached' });
  }
  await field.setInputFiles({ name: 'bad.csv', mimeType: 'text/csv', buffer: Buffer.from('Ref,Qty\nX,many\n') });
  await schedule.element.locator('.problems button').click();
}

async function throughTakeoff(page: Page, schedule: Schedule): Promise<void> {
  const reader = schedule.element.locator('elv-takeoff-reader');
  await schedule.command('takeoff').click();
  await reader.locator('textarea').fill('Type\tQty\tRoom\nStep light\t4\t0.04\nNobody knows it\t2\t0.05\nTotal\t6\t');
  await reader.locator('[data-do=read]').click();
  await reader.locator('table').first().waitFor();
  const workbook = makeWorkbook({ Counts: { rows: [['Type', 'Qty'], ['Step light', 3]] } });
  await reader.locator('footer .link').first().click();
  await reader.locator('input[type=file]')
    .setInputFiles({ name: 'list.xlsx', mimeType: 'application/octet-stream', buffer: Buffer.from(workbook) });
  await reader.locator('[data-do=take]:enabled').click();
  await page.keyboard.press('Control+z');
}

async function throughSharing(schedule: Schedule): Promise<void> {
  const work = schedule.element.locator('elv-share-out');
  await schedule.command('shareOut').click();
  for (const over of ['supplies', 'branches']) {
    await work.locator(`[data-over=${over}]`).click();
    await work.locator('.verdict .sum').waitFor();
  }
  await work.locator('[data-option=keepPlaced]').click();
  await work.locator('[data-option=wholeRows]').click();
  await work.locator('[data-do=share]:enabled').click();
  await schedule.element.locator('[data-choice=groupings]').selectOption('entered');
}

async function throughLoadTable(schedule: Schedule, older: string): Promise<void> {
  const table = schedule.element.locator('elv-load-table');
  await table.locator('[data-do=paper]').selectOption({ index: 2 });
  await table.locator('[data-view=revisions]').click();
  await table.locator('[data-do=addRevision]').click();
  await table.locator('[data-view=changes]').click();
  await table.locator('input[type=file]').setInputFiles(older);
  await table.locator('[data-do=noOlder]').waitFor();
  await table.locator('[data-do=print]').click();
  await table.locator('iframe').contentFrame().locator('table').first().waitFor();
  await table.locator('.back').click();
}

async function throughLanguages(page: Page, schedule: Schedule): Promise<void> {
  for (const [lang, words] of [['de', 'überschritten'], ['fr', ''], ['en', 'over']] as const) {
    await schedule.element.evaluate((each, tag) => { each.setAttribute('lang', tag); }, lang);
    await page.waitForTimeout(200);
    if (!(await schedule.says('elv-schedule-panel')).includes(words)) {
      throw new Error(`The panel does not speak ${lang}.`);
    }
  }
}
