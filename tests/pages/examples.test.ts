import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { COLUMN, scheduleOf } from './support/schedule.ts';
import { useSite } from './support/site.ts';

const site = useSite();

test('every page is linked from the list of pages or from the hardest ones, and no link leads nowhere', async () => {
  const { page, address } = await site.open('overview.html');
  const linked = new Set<string>(['/examples/overview.html']);
  for (const from of ['overview.html', 'hardest.html', 'form.html', 'hardest/sandboxed.html']) {
    await page.goto(`${address}/examples/${from}`);
    const links = await page.locator('a[href], iframe[src], form[action]').evaluateAll((all) => all.map((each) =>
      new URL(
        (each.getAttribute('href') ?? each.getAttribute('src') ?? each.getAttribute('action'))!, location.href
      ).pathname));
    links.forEach((link) => linked.add(link));
  }
  const folder = join(import.meta.dirname, '../../examples');
  const pages = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.html'));
  expect([...linked].sort()).toEqual(pages.map((name) => `/examples/${name.replaceAll('\\', '/')}`).sort());
});

test('one script tag and one element: a person begins to type', async () => {
  const { page, faults } = await site.open('minimal.html');
  const schedule = scheduleOf(page);
  await schedule.cell(0, COLUMN.ref).waitFor();
  await schedule.enter(0, COLUMN.ref, 'D1');
  expect(await schedule.device(0)).toEqual({ ref: 'D1' });
  expect(faults).toEqual([]);
});

test('a form sends the schedule as it is at that moment, and resetting it takes the work back', async () => {
  const { page, address, faults } = await site.open('form.html');
  const schedule = scheduleOf(page);
  await schedule.shown();
  const before = await schedule.value();
  await schedule.enter(1, COLUMN.qty, '20');
  const sent = await schedule.value();
  expect(JSON.parse(sent)).toMatchObject({ sheets: { devices: [{}, { qty: 20 }, {}, {}] } });
  await page.getByRole('button', { name: 'Reset' }).click();
  expect(await schedule.value()).toBe(before);
  await schedule.enter(2, COLUMN.qty, '3');
  const again = await schedule.value();

  await page.getByRole('button', { name: 'Send' }).click();
  await page.waitForURL(/received\.html\?/);
  await schedule.shown();
  expect(await page.locator('#job').textContent()).toBe('24-117');
  expect(await page.locator('#size').textContent()).toBe(String(again.length));
  expect(await schedule.value()).toBe(again);

  await page.goto(`${address}/examples/form.html`);
  await schedule.shown();
  await schedule.enter(1, COLUMN.qty, '20');
  await page.locator('form').evaluate((form) => { Object.assign(form, { method: 'post', action: '/echo' }); });
  await page.getByRole('button', { name: 'Send' }).click();
  await page.waitForURL(/echo/);
  const received = JSON.parse((await page.locator('pre').textContent())!) as Record<string, string>;
  // What is posted by the rules of forms has its lines ended by CR and LF.
  expect(received).toEqual({ job: '24-117', schedule: sent.replaceAll('\n', '\r\n') });
  expect(faults).toEqual([]);
});

test('what is typed while the file is on its way can be had back', async () => {
  const { page, address, faults } = await site.open('overview.html');
  let arrive = (): void => undefined;
  const asked = new Promise<void>((resolve) => { arrive = resolve; });
  await page.route('**/greenhouse.schedule.json', async (route) => {
    await asked;
    await route.continue();
  });
  await page.goto(`${address}/examples/form.html`);
  const schedule = scheduleOf(page);
  await schedule.cell(0, COLUMN.area).waitFor();
  await schedule.enter(0, COLUMN.area, 'Potting shed');
  arrive();
  await schedule.shown();
  await schedule.cell(1, COLUMN.area).click();
  await page.keyboard.press('Control+z');
  expect((await schedule.file()).sheets.devices).toEqual([{ area: 'Potting shed' }]);
  await page.keyboard.press('Control+y');
  expect((await schedule.file()).sheets.devices).toHaveLength(4);
  expect(faults).toEqual([]);
});

test('two on a page speak their own language and keep their own undo', async () => {
  const { page, faults } = await site.open('two.html');
  const english = scheduleOf(page, '[lang=en] elv-load-schedule');
  const german = scheduleOf(page, '[lang=de] elv-load-schedule');
  await english.shown();
  await german.shown();
  await expect.poll(() => english.says('elv-schedule-panel')).toContain('within limits');
  // By hand: 3 × 2.1 A × 0.67 + 8 × 0.18 A = 5.66 A of 5 A.
  await expect.poll(() => german.says('elv-schedule-panel')).toMatch(/überschritten.*5,66/);
  const first = await english.value();
  await english.enter(0, COLUMN.qty, '5');
  await german.enter(0, COLUMN.qty, '1');
  await page.keyboard.press('Control+z');
  expect(await german.device(0)).toMatchObject({ qty: 3 });
  expect(await english.device(0)).toMatchObject({ qty: 5 });
  await page.keyboard.press('Control+z');
  expect(await english.value()).not.toBe(first);
  expect(faults).toEqual([]);
});

test('a page shows totals, keeps and brings back, and hears only what a person does', async () => {
  const { page, faults } = await site.open('host.html');
  const schedule = scheduleOf(page);
  await schedule.shown();
  const totals = () => page.locator('#totals tr').first().innerText();
  const happened = () => page.locator('#events li').allInnerTexts();
  // By hand: (4 + 2) × 0.4 A × 0.5 + 9 × 0.15 A × 0.9 = 2.415 A; 12 × 0.4 × 0.5 more actuators make 4.015 A.
  await expect.poll(totals).toMatch(/^G1\s+2\.4[12] A\s+5\.00 A$/);
  await page.getByRole('button', { name: 'Keep' }).click();
  await schedule.enter(0, COLUMN.qty, '12');
  await expect.poll(totals).toMatch(/^G1\s+4\.0[12] A\s+5\.00 A$/);
  const before = await happened();
  expect(before).toHaveLength(3);
  expect(before[0]).toMatch(/^act: /);
  await page.getByRole('button', { name: 'Bring back' }).click();
  await expect.poll(totals).toMatch(/^G1\s+2\.4[12] A\s+5\.00 A$/);
  expect(await happened()).toEqual(['Brought back by the page', ...before]);
  await page.getByLabel('Only look').check();
  await schedule.enter(0, COLUMN.qty, '9');
  expect(await schedule.device(0)).toMatchObject({ qty: 4 });
  await expect.poll(() => schedule.command('takeoff').isDisabled()).toBe(true);
  expect(faults).toEqual([]);
});

test('in another element, in a tab that is shown later, in a dialog', async () => {
  const { page, faults } = await site.open('places.html');
  const card = scheduleOf(page, 'panel-card elv-load-schedule');
  await card.shown();
  await card.enter(0, COLUMN.qty, '7');
  expect(await card.device(0)).toMatchObject({ qty: 7 });

  await page.getByRole('tab', { name: 'In a hidden tab' }).click();
  const hidden = scheduleOf(page, '#hidden elv-load-schedule');
  await hidden.shown();
  const [row, heading] = [
    await hidden.cell(0, COLUMN.qty).boundingBox(),
    await hidden.element.locator('.ht_clone_top thead th').nth(COLUMN.qty + 1).boundingBox(),
  ];
  expect(row!.x).toBeCloseTo(heading!.x, 0);
  expect(row!.width).toBeCloseTo(heading!.width, 0);
  await hidden.enter(0, COLUMN.qty, '2');
  expect(await hidden.device(0)).toMatchObject({ qty: 2 });

  await page.getByRole('button', { name: 'In a dialog' }).click();
  const dialog = scheduleOf(page, 'dialog elv-load-schedule');
  await dialog.shown();
  await dialog.enter(0, COLUMN.qty, '6');
  expect(await dialog.device(0)).toMatchObject({ qty: 6 });
  await page.keyboard.type('99');
  await page.keyboard.press('Escape');
  expect(await page.locator('dialog').evaluate((each) => (each as HTMLDialogElement).open)).toBe(true);
  expect(await dialog.device(1)).toMatchObject({ qty: 12 });
  expect(faults).toEqual([]);
});

test('the language follows the page and the schedule stays as it is', async () => {
  const { page, faults } = await site.open('languages.html');
  const schedule = scheduleOf(page);
  await schedule.shown();
  const before = await schedule.value();
  const panel = () => schedule.says('elv-schedule-panel');
  await expect.poll(panel).toMatch(/5\.66/);
  await page.getByLabel('Language').selectOption('de');
  await expect.poll(panel).toMatch(/überschritten.*5,66/);
  await page.getByLabel('Language').selectOption('fr');
  await expect.poll(panel).toMatch(/dépassé.*5,66/);
  expect(await panel()).not.toMatch(/überschritten/);
  expect(await schedule.value()).toBe(before);
  expect(faults).toEqual([]);
});

test('a draft comes back after the page was closed, and makes way for the file', async () => {
  const { page, faults } = await site.open('draft.html');
  const schedule = scheduleOf(page);
  const notice = schedule.element.locator('elv-draft-notices li');
  await schedule.shown();
  await schedule.enter(0, COLUMN.qty, '7');
  // What is written as a page is left.
  await page.reload();
  await notice.filter({ hasText: 'restored' }).waitFor();
  expect(await schedule.device(0)).toMatchObject({ qty: 7 });
  await notice.locator('[data-offer=discard]').click();
  await expect.poll(async () => (await schedule.device(0)).qty).toBe(4);
  await page.reload();
  await schedule.shown();
  expect(await schedule.device(0)).toMatchObject({ qty: 4 });
  expect(faults).toEqual([]);
});

test('the list of an office is offered, looked at and taken', async () => {
  const { page, faults } = await site.open('office-list.html');
  const schedule = scheduleOf(page);
  await schedule.shown();
  const before = await schedule.value();
  const notice = schedule.element.locator('elv-office-list .text');
  await expect.poll(() => notice.textContent())
    .toBe('office-types.csv, the list of the office, says otherwise in 1 row.');
  expect(await schedule.value()).toBe(before);
  await schedule.element.locator('elv-office-list [data-offer=show]').click();
  await schedule.element.locator('elv-rows-offer [data-do=take]').click();
  const types = async () =>
    (JSON.parse(await schedule.value()) as { readonly sheets: { readonly types: unknown[] } }).sheets.types;
  await expect.poll(types).toEqual([
    { type: 'Vent actuator', draw: 450, nodes: 1, diversity: 0.5, note: 'Draw measured while it starts' },
    { type: 'Moisture sensor', draw: 15, nodes: 1 }, { type: 'Path light', draw: 150, nodes: 1, diversity: 0.9 },
  ]);
  expect(faults).toEqual([]);
});

test.each([
  'react', 'vue', 'svelte',
])('hosted by %s: properties, events, slots, both ways, taken away and put back', async (framework) => {
  const { page, faults } = await site.open(`${framework}-host.html`);
  const schedule = scheduleOf(page);
  await schedule.shown();
  expect(await schedule.element.evaluate((each) => (each as unknown as { takeoffColumns: unknown }).takeoffColumns))
    .toEqual({ item: 'type', pieces: 'qty' });

  // From the element to the page, and back without an end: undo is still there.
  await schedule.enter(0, COLUMN.qty, '8');
  await schedule.enter(1, COLUMN.qty, '9');
  expect(await page.locator('#last').innerText()).not.toBe('nothing yet');
  await schedule.cell(0, COLUMN.qty).click();
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  expect([await schedule.device(0), await schedule.device(1)]).toMatchObject([{ qty: 4 }, { qty: 12 }]);
  await page.keyboard.press('Control+y');
  const edited = await schedule.value();
  const project = schedule.element.locator('elv-details-strip input').first();
  await project.fill('Orchard');
  await page.keyboard.press('Tab');
  await expect.poll(() => page.locator('#project').inputValue()).toBe('Orchard');

  // From the page to the element.
  await page.locator('#project').fill('Walled garden');
  await expect.poll(async () => (await schedule.file()).details.project).toBe('Walled garden');
  expect((await schedule.file()).sheets.devices)
    .toEqual((JSON.parse(edited) as { sheets: { devices: unknown } }).sheets.devices);
  await page.locator('#readonly').check();
  await expect.poll(() => schedule.command('takeoff').isDisabled()).toBe(true);
  await page.locator('#readonly').uncheck();
  await expect.poll(() => schedule.command('takeoff').isDisabled()).toBe(false);

  const kept = await schedule.value();
  for (let round = 0; round < 3; round += 1) {
    await page.locator('#shown').uncheck();
    expect(await schedule.element.count()).toBe(0);
    await page.locator('#shown').check();
    await schedule.shown();
    expect(await schedule.value()).toBe(kept);
  }
  await page.locator('#again').click();
  await expect.poll(async () => (await schedule.file()).details.project).toBe('Botanical garden, palm house');
  expect(faults).toEqual([]);
});

test('the demo speaks the language of its address or the one that a person chooses, with data in it; work is not taken away', async () => {
  const { page, faults } = await site.open('index.html?lang=de');
  const schedule = scheduleOf(page);
  await schedule.cell(0, COLUMN.type).waitFor();
  expect(await schedule.device(0)).toMatchObject({ ref: 'L1-001', type: 'Einbaustrahler 7 W' });
  const choice = schedule.element.locator('elv-language-choice select');
  await choice.selectOption('fr');
  await expect.poll(() => schedule.device(0)).toMatchObject({ type: 'Encastré de plafond 7 W' });
  expect(page.url()).toMatch(/\?lang=fr$/);
  await schedule.enter(0, COLUMN.qty, '6');
  await choice.selectOption('en');
  await schedule.element.getByRole('tab', { name: 'Devices' }).waitFor();
  expect(await schedule.device(0)).toMatchObject({ type: 'Encastré de plafond 7 W', qty: 6 });
  expect(faults).toEqual([]);
});
