import { expect, test } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { KNOWN_FUNCTIONS } from '../../src/schedule/formula/known-functions.ts';
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
  const built = await schedule.evaluate(says);
  const source = new LoadSchedule(content);
  const expected = says(source);
  source.dispose();
  expect(built.filter((each) => /^-?\d/.test(each)).length).toBeGreaterThan(KNOWN_FUNCTIONS.size);
  expect(built).toEqual(expected);
  expect(faults).toEqual([]);
}, 60_000);
