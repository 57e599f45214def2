import { expect, test } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { KNOWN_FUNCTIONS } from '../../src/schedule/formula/known-functions.ts';
import { COLUMN, scheduleOf } from './support/schedule.ts';
import { useSite } from './support/site.ts';

const site = useSite();

const ARGUMENTS = [
  '', '2', '0.5;3', '7;2;1', '[devices.diversity#1:#3]', '[devices.diversity#1:#3];">0.2"', '"text";2', '"text";2;1',
  '2;[devices.diversity#1:#3];0', 'TRUE();1;2', '"x";"x"', '[diversity#1];0', '44927;2', '2026;11;30', '1/0',
];

/** Calls of every function with some of everything: numbers, texts, ranges, errors, too many and too few. */
const CALLS = [...KNOWN_FUNCTIONS].flatMap((name) => ARGUMENTS.map((given) => `=${name}(${given})`));

const content = {
  details: {},
  sheets: {
    devices: [
      ...[0.1, 0.5, 0.9].map((diversity, at) => ({ ref: `D${at}`, qty: 2, diversity })),
      ...CALLS.map((distance, at) => ({ ref: `F${at}`, distance })),
    ],
  },
};

/** What a schedule says of each call: its figure, or what is wrong. It runs in the page too, and so names no other. */
const says = (schedule: LoadSchedule): readonly string[] => {
  const found = schedule.findings.filter(({ key }) => key === 'distance').map(({ row, message }) => `${row}: ${message}`);
  return [
    ...schedule.rows('devices').map(({ id }) => {
      const value = schedule.value('devices', id, 'distance');
      // The last digit of a cosine is the script engine's own.
      return typeof value === 'number' ? value.toPrecision(14) : String(value);
    }), ...found,
  ];
};

test('formulas on a built page give what they give from the source: of its engine only what is never called is left out', async () => {
  const { page, faults } = await site.open('minimal.html');
  const file = JSON.stringify({ format: 'elv-load-schedule', version: 2, ...content });
  const schedule = await page.locator('elv-load-schedule').evaluateHandle((element, text) =>
    (Object.assign(element, { value: text }) as unknown as { schedule: LoadSchedule }).schedule, file);
  await schedule.evaluate((each) => each.formulasReady());
  const built = await schedule.evaluate(says);
  const source = new LoadSchedule(content);
  const expected = says(source);
  source.dispose();
  expect(built.filter((each) => /^-?\d/.test(each)).length).toBeGreaterThan(KNOWN_FUNCTIONS.size);
  expect(built).toEqual(expected);
  expect(faults).toEqual([]);
}, 60_000);

/** A busy machine draws late. */
const SLOW = { timeout: 15_000 };

/** The chunk of the formula engine. */
const ENGINE = '**/chunks/formula-engine-*.js';
const ofEngine = (address: string) => address.includes('/chunks/formula-engine-');
const fileOf = (qty: number | string) =>
  JSON.stringify({ format: 'elv-load-schedule', version: 2, details: {}, sheets: { devices: [{ ref: 'D1', qty }] } });

test('the page is painted and works without the formula engine, which is fetched once though no formula asks for it', async () => {
  const { page, requests, faults } = await site.open('minimal.html');
  let open = (): void => undefined;
  const answer = new Promise<void>((resolve) => { open = resolve; });
  // What the page before fetches while it is idle is none of this one.
  await expect.poll(() => requests.filter(ofEngine).length, SLOW).toBe(1);
  await page.route(ENGINE, async (route) => {
    await answer;
    await route.continue();
  });
  requests.length = 0;
  await page.reload();
  await expect.poll(() => requests.filter(ofEngine).length, SLOW).toBe(1);
  const schedule = scheduleOf(page);
  await schedule.element.evaluate((each, text) => { Object.assign(each, { value: text }); }, fileOf(3));
  await schedule.shown();
  await schedule.enter(0, COLUMN.qty, '4');
  expect(await schedule.device(0)).toMatchObject({ qty: 4 });
  expect(await page.evaluate(() => performance.getEntriesByName('first-contentful-paint').length)).toBe(1);
  // A press of the mouse that comes while the grid draws anew may go beside its cell.
  await expect.poll(async () => {
    await schedule.enter(0, COLUMN.qty, '=2*3');
    return schedule.device(0);
  }, SLOW).toMatchObject({ qty: '=2*3' });
  await expect.poll(() => schedule.cell(0, COLUMN.qty).textContent(), SLOW).not.toMatch(/\d/);
  open();
  await expect.poll(() => schedule.cell(0, COLUMN.qty).textContent(), SLOW).toBe('6');
  expect([requests.filter(ofEngine).length, faults]).toEqual([1, []]);
});

test('a formula waits for an engine that cannot be fetched, and has its figure once that can', async () => {
  const { page, faults } = await site.open('minimal.html');
  let refused = 0;
  await page.route(ENGINE, async (route) => {
    refused += 1;
    await route.abort('internetdisconnected');
  });
  await page.reload();
  const schedule = scheduleOf(page);
  await schedule.element.evaluate((each, text) => { Object.assign(each, { value: text }); }, fileOf(3));
  await schedule.shown();
  await schedule.enter(0, COLUMN.qty, '=2*3');
  const line = 'elv-sheet-view .line [role=alert]';
  await expect.poll(() => schedule.says(line)).toBe(
    'This part could not be fetched. Check the connection, then try again.'
  );
  await expect.poll(() => schedule.says('elv-schedule-panel')).toContain('the formula in Qty is not calculated yet');
  await expect.poll(() => schedule.cell(0, COLUMN.qty).textContent(), SLOW).not.toMatch(/\d/);
  expect(await schedule.device(0)).toMatchObject({ qty: '=2*3' });
  expect(refused).toBeGreaterThan(0);
  // The connection is there again: whatever a person does next has it fetched.
  await page.unroute(ENGINE);
  await schedule.enter(0, COLUMN.area, 'Hall');
  await expect.poll(() => schedule.cell(0, COLUMN.qty).textContent(), SLOW).toBe('6');
  await expect.poll(() => schedule.says('elv-schedule-panel')).not.toContain('is not calculated yet');
  // The browser itself and the page say that it could not be had, and nothing else went wrong.
  expect(faults.length).toBeGreaterThan(0);
  expect(faults.filter((each) => !each.includes('formula-engine'))).toEqual([]);
});
