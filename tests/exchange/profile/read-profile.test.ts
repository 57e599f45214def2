import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coincidenceFactor, coincidentPowers, peakPeriod } from '../../../src/electrical/index.ts';
import { readProfile, type ProfileOptions, type ReadProfile } from '../../../src/exchange/profile/index.ts';
import { closeTo, EXACT } from '../../support/close-to.ts';

/** A table as a spreadsheet copies it, with `|` for the tab. */
const tableOf = (text: string) => text.split('\n').map((line) => line.split('|'));

function read(text: string, options?: ProfileOptions): ReadProfile {
  const profile = readProfile(tableOf(text), options);
  if (!profile.ok) throw new Error(profile.problems.map(({ message }) => message).join(' '));
  return profile;
}

/** What is wrong with a table: code, place and sentence. */
function problemsOf(text: string, options?: ProfileOptions): string[] {
  const profile = readProfile(tableOf(text), options);
  return profile.ok ? [] : profile.problems.map(({ code, path, message }) => `${code} ${path}: ${message}`);
}

const namesOf = (profile: ReadProfile) => profile.cases.map((each) => each.case);
const factorsOf = (profile: ReadProfile) => profile.factors.map(({ factor }) => factor);
const EACH_HOUR = Array.from({ length: 24 }, (_none, hour) =>
  `${String(hour).padStart(2, '0')}–${String(hour + 1).padStart(2, '0')}`);

test('what is the same in all hours is a figure, and no row of headings', () => {
  const profile = read(['Router', ...EACH_HOUR.map(() => '12')].join('|'), { unit: 'W' });
  expect(namesOf(profile)).toEqual(EACH_HOUR);
  expect(new Set(factorsOf(profile))).toEqual(new Set([1]));
});

describe('24 columns', () => {
  const row = ['Blinds', ...EACH_HOUR.map((_name, hour) => String(hour / 100))].join('|');
  const starts = EACH_HOUR.map((_name, hour) => hour);

  test.each([
    ['no headings', undefined],
    ['0 to 23', starts.join('|')], ['00 to 23', starts.map((hour) => String(hour).padStart(2, '0')).join('|')],
    ['00:00 to 23:00', starts.map((hour) => `${hour}:00`).join('|')],
    ['0 h to 23 h', starts.map((hour) => `${hour} h`).join('|')],
    ['0h to 23h', starts.map((hour) => `${hour}h`).join('|')],
    ['0 Uhr to 23 Uhr', starts.map((hour) => `${hour} Uhr`).join('|')],
    ['1 to 24, which end', starts.map((hour) => hour + 1).join('|')],
    ['01:00 to 24:00, which end', starts.map((hour) => `${hour + 1}:00`).join('|')],
    ['0–1 to 23–24', starts.map((hour) => `${hour}–${hour + 1}`).join('|')],
    ['0–1 to 23–0', starts.map((hour) => `${hour}–${(hour + 1) % 24}`).join('|')],
  ])('with %s are the hours from midnight on', (_name, headings) => {
    const profile = read(headings === undefined ? row : `Group|${headings}\n${row}`);
    expect(namesOf(profile)).toEqual(EACH_HOUR);
    expect(profile.cases.map(({ hours }) => hours)).toEqual(EACH_HOUR.map(() => 1));
    expect(factorsOf(profile)).toEqual(EACH_HOUR.map((_hour, index) => index / 100));
    expect(new Set(profile.factors.map(({ group }) => group))).toEqual(new Set(['Blinds']));
    expect([...EACH_HOUR].sort()).toEqual(EACH_HOUR);
  });

  test('may begin at any hour, and keep their order', () => {
    const from6 = starts.map((hour) => (hour + 6) % 24);
    const profile = read(`|${from6.join('|')}\n${row}`);
    expect(namesOf(profile)).toEqual(from6.map((hour) => EACH_HOUR[hour]));
    expect(factorsOf(profile)[0]).toBe(0);
    expect(profile.notes).toEqual(['Each heading is taken for the beginning of its hours: “0” is 00–01.']);
  });

  test('that name hours by their end say so', () => {
    const profile = read(`|${starts.map((hour) => hour + 1).join('|')}\n${row}`);
    expect(profile.notes).toEqual(['Each heading is taken for the end of its hours: “24” is 23–24.']);
  });
});

describe('other columns', () => {
  test('by blocks, as textbooks have them: 0–8, 8–14, 14–16, 16–22, 22–24 h', () => {
    const profile = read('Group|0–8|8-14|14 – 16|16:00–22:00|22–24 h\nLights|1|0|0|0.5|1');
    expect(profile).toEqual({
      ok: true, notes: [],
      cases: [
        { case: '00–08', hours: 8 }, { case: '08–14', hours: 6 }, { case: '14–16', hours: 2 },
        { case: '16–22', hours: 6 }, { case: '22–24', hours: 2 },
      ],
      factors: [
        { case: '00–08', group: 'Lights', factor: 1 }, { case: '08–14', group: 'Lights', factor: 0 },
        { case: '14–16', group: 'Lights', factor: 0 }, { case: '16–22', group: 'Lights', factor: 0.5 },
        { case: '22–24', group: 'Lights', factor: 1 },
      ],
    });
  });

  test.each<[headings: string, names: string[], hours: number[]]>([
    ['22–6|6–22', ['22–06', '06–22'], [8, 16]],
    ['0 to 8|8 bis 14|14 à 24', ['00–08', '08–14', '14–24'], [8, 6, 10]],
    ['8–24|0–8', ['08–24', '00–08'], [16, 8]],
    ['0:00–7:30|7h30–24h', ['00:00–07:30', '07:30–24:00'], [7.5, 16.5]],
    ['0|8|12', ['00–08', '08–12', '12–24'], [8, 4, 12]],
    ['8|12|24', ['00–08', '08–12', '12–24'], [8, 4, 12]],
    ['0–24', ['00–24'], [24]],
    ['6–6:20|6:20–6', ['06:00–06:20', '06:20–06:00'], [1 / 3, 24 - 1 / 3]],
  ])('%s', (headings, names, hours) => {
    const profile = read(`Group|${headings}\nPumps|${hours.map(() => '1').join('|')}`);
    expect(namesOf(profile)).toEqual(names);
    expect(profile.cases.map((each) => each.hours)).toEqual(hours.map((each) => closeTo(each, EXACT)));
  });

  test('of half hours', () => {
    const clock = (half: number) => `${Math.floor(half / 2)}:${half % 2 === 0 ? '00' : '30'}`;
    const halves = Array.from({ length: 48 }, (_none, half) => clock(half));
    const profile = read(`|${halves.join('|')}\nPumps|${halves.map(() => '1').join('|')}`);
    expect(namesOf(profile).slice(14, 16)).toEqual(['07:00–07:30', '07:30–08:00']);
    expect(profile.cases.every(({ hours }) => hours === 0.5)).toBe(true);
  });
});

describe('figures', () => {
  test('have a point or a comma or are per cent; an empty one is no factor, and 0 is one', () => {
    const profile = read('Group|0–6|6–12|12–18|18–24\nFans|0,25|25 %|0|\nLights| 1 |.5|7\u202f%|0,125');
    expect(profile.factors).toEqual([
      { case: '00–06', group: 'Fans', factor: 0.25 }, { case: '06–12', group: 'Fans', factor: 0.25 },
      { case: '12–18', group: 'Fans', factor: 0 },
      { case: '00–06', group: 'Lights', factor: 1 }, { case: '06–12', group: 'Lights', factor: 0.5 },
      { case: '12–18', group: 'Lights', factor: 0.07 }, { case: '18–24', group: 'Lights', factor: 0.125 },
    ]);
  });

  test('that could be thousands follow the decimal sign of the others', () => {
    expect(factorsOf(read('|0–12|12–24\nFans|1,000|0,5'))).toEqual([1, 0.5]);
    expect(problemsOf('|0–12|12–24\nFans|1,000|1')).toEqual([
      expect.stringContaining('value-refused /2/2: Row 2, column 2 (00–12): “1,000” can mean 1 or 1000'),
    ]);
  });

  test('of two columns, 0 and 1, are no headings', () => {
    expect(problemsOf('Fans|0|1')).toEqual([expect.stringContaining('there are 2 figures for each group')]);
  });
});

test('empty rows, a title above the headings and what is empty at the right are left out, and rows count from the top', () => {
  const profile = read('Profile of a workday||||\n||||\nGroup|0–12|12–24||\n\nFans|1|0||\nLights|||\n');
  expect(profile.factors).toHaveLength(2);
  expect(profile.notes).toEqual([
    'One row above the hours was left out.',
    'Without any factor, so that their rows keep their own diversity: “Lights”.',
  ]);
  expect(problemsOf('\n\nGroup|0–12|12–24\n\nFans|1|2')).toEqual([expect.stringContaining('/5/3: Row 5, column 3')]);
});

test('names lose the apostrophe that keeps a spreadsheet from running them, and spaces around', () => {
  expect(read("|0–24\n'=Fans |1").factors[0]!.group).toBe('=Fans');
});

describe('what is refused, with place, value and remedy', () => {
  test.each([
    ['above 1', '1.6', 'value-refused /2/2: Row 2, column 2 (00–12): “1.6” is more than 1; 0 to 1 (at most 100 %) is '
      + 'allowed: diversity is the share expected at the same time. Some texts print its reciprocal: if yours does, '
      + 'type 0.625.'],
    ['a percentage without its sign', '25', 'value-refused /2/2: Row 2, column 2 (00–12): “25” is more than 1; 0 to 1 '
      + '(at most 100 %) is allowed. Type 25 % or 0.25 if 25 in a hundred is meant.'],
    ['above 100 %', '125 %', 'value-refused /2/2: Row 2, column 2 (00–12): “125 %” is more than 100 %; 0 to 1 (at most '
      + '100 %) is allowed. Type a smaller share.'],
    ['below 0', '-0,5', 'value-refused /2/2: Row 2, column 2 (00–12): “-0,5” is out of range; 0 to 1 is allowed. Type '
      + 'such a value, or empty the cell.'],
    ['a text', 'on', 'value-refused /2/2: Row 2, column 2 (00–12): “on” is not a number; a share or a percentage (0 to '
      + '1) is allowed. Type digits, or nothing.'],
    ['a formula', '=B1', 'value-refused /2/2: Row 2, column 2 (00–12): “=B1” is a formula, which is not read here. '
      + 'Paste the values.'],
  ])('a figure %s', (_name, figure, problem) => {
    expect(problemsOf(`|0–12|12–24\nFans|${figure}|1`)).toEqual([problem]);
  });

  test.each([
    ['nothing', '', 'profile-empty : There is no figure in the table. Paste a row for each group: its name, then a '
      + 'figure for each hour.'],
    ['headings alone', '|0–12|12–24\nFans||', 'profile-empty : There is no figure in the table. Paste a row for each '
      + 'group: its name, then a figure for each hour.'],
    ['a group twice', '|0–12|12–24\nFans|1|1\nLights|1|1\n Fans|1|1', 'group-twice /4/1: Rows 2 and 4 both have the '
      + 'group “Fans”; each may stand once. Delete one of them or give it another name.'],
    ['figures of no group', '|0–12|12–24\nFans|1|1\n|1|1', 'group-missing /3/1: Row 3 has figures and no group. Write '
      + 'the name of the group into its first column.'],
    ['a row that is short', '|0–12|12–24\nFans|1', 'row-uneven /2: Row 2 has one column behind the group; 2 are '
      + 'expected. Fill it up, with empty cells where there is no factor, or delete what is too much.'],
    ['a row that is long', '|0–12|12–24\nFans|1|1|1', 'row-uneven /2: Row 2 has 3 columns behind the group; 2 are '
      + 'expected. Fill it up, with empty cells where there is no factor, or delete what is too much.'],
    ['a row that is short among 24', `Fans${'|1'.repeat(24)}\nLights${'|1'.repeat(23)}`, 'row-uneven /2: Row 2 has 23 '
      + 'columns behind the group; 24 are expected. Fill it up, with empty cells where there is no factor, or delete '
      + 'what is too much.'],
    ['12 columns without headings', `Fans${'|1'.repeat(12)}`, 'hours-unreadable /1: Row 1: there are 12 figures for '
      + 'each group and no headings; without these it takes 24, one for each hour. Put a row above that says the hours, '
      + 'such as 0–8, 8–14, 14–24.'],
    ['headings that are no hours', 'Group|Day|12–24\nFans|1|1', 'hours-unreadable /1/2: Row 1, column 2: “Day” does not '
      + 'say hours. Write from when to when, such as 0–8 or 08:00–14:00.'],
    ['hours that last no time', '|0–0|12–24\nFans|1|1', 'hours-unreadable /1/2: Row 1, column 2: “0–0” does not say '
      + 'hours. Write from when to when, such as 0–8 or 08:00–14:00.'],
    ['hours that no day has', '|0–12|12–25\nFans|1|1', 'hours-unreadable /1/3: Row 1, column 3: “12–25” does not say '
      + 'hours. Write from when to when, such as 0–8 or 08:00–14:00.'],
    ['a moment among stretches', '|0–12|12\nFans|1|1', 'hours-unreadable /1/3: Row 1, column 3: “12” says one moment, '
      + 'where others say from when to when. Write from when to when in all of them, such as 8–14.'],
    ['moments without a midnight', '|6|12|18\nFans|1|1|1', 'hours-unreadable /1/2: Row 1: neither 0 nor 24 h is among '
      + 'the headings, from “6” on, so that it is not clear whether hours begin or end there. Write from when to when, '
      + 'such as 7–8.'],
    ['both midnights, 25 columns', `|${Array.from({ length: 25 }, (_none, hour) => hour).join('|')}\nFans${'|1'.repeat(25)}`,
      'hours-incomplete /1/26: Row 1: columns 2 and 26, “0” and “24”, are the same moment of a day. Delete the one '
      + 'that does not count in it.'],
    ['a moment twice', '|0|12|12\nFans|1|1|1', 'hours-incomplete /1/4: Row 1: columns 3 and 4, “12” and “12”, both hold '
      + '12; each hour may stand once. Correct one of the headings.'],
    ['hours that lack some', '|0–8|8–20\nFans|1|1', 'hours-incomplete /1: Row 1: no column holds 20–24; the headings '
      + 'come to 20 h, a day has 24 h. Add a column for these hours, or correct the headings.'],
    ['hours twice', '|0–8|6–24\nFans|1|1', 'hours-incomplete /1/3: Row 1: columns 2 and 3, “0–8” and “6–24”, both hold '
      + '06–08; each hour may stand once. Correct one of the headings.'],
    ['hours within others', '|0–24|8–14\nFans|1|1', 'hours-incomplete /1/3: Row 1: columns 2 and 3, “0–24” and “8–14”, '
      + 'both hold 08–14; each hour may stand once. Correct one of the headings.'],
    ['hours twice beyond midnight', '|0–8|8–22|22–6\nFans|1|1|1', 'hours-incomplete /1/4: Row 1: columns 2 and 4, “0–8” '
      + 'and “22–6”, both hold 00–06; each hour may stand once. Correct one of the headings.'],
  ])('%s', (_name, text, problem) => {
    expect(problemsOf(text)).toEqual([problem]);
  });

  test('24 h in all are not enough: a gap and an overlap of one length', () => {
    expect(problemsOf('|0–8|6–22\nFans|1|1')).toEqual([
      expect.stringContaining('both hold 06–08'), expect.stringContaining('no column holds 22–24; the headings come to 24 h'),
    ]);
  });

  test('all that is wrong is told at once', () => {
    expect(problemsOf('|0–12|12–24\nFans|2|-1\n|1|1\nFans|1|1').map((problem) => problem.split(':')[0])).toEqual([
      'value-refused /2/2', 'value-refused /2/3', 'group-missing /3/1', 'group-twice /4/1',
    ]);
  });
});

describe('powers', () => {
  test('become shares of the greatest of their row; one may bear its own unit', () => {
    const profile = read('|0–8|8–16|16–24\nLights|1.2|300 W|\nFans|0|0|0', { unit: 'kW' });
    expect(profile.factors).toEqual([
      { case: '00–08', group: 'Lights', factor: 1 }, { case: '08–16', group: 'Lights', factor: 0.25 },
      { case: '00–08', group: 'Fans', factor: 0 }, { case: '08–16', group: 'Fans', factor: 0 },
      { case: '16–24', group: 'Fans', factor: 0 },
    ]);
  });

  test('below 0 are refused', () => {
    expect(problemsOf('|0–24\nFans|-3', { unit: 'W' })).toEqual([expect.stringContaining(
      'value-refused /2/2: Row 2, column 2 (00–24): “-3” is out of range; 0 W or more is allowed')]);
  });

  test('MEH3 3.12 p. 54, pasted: coincidence 0.8, the reciprocal of the diversity factor 1.25 printed', () => {
    // V.K. Mehta, R. Mehta, Principles of Power System, ch. 3; maxima 800, 1000 and 1200 W.
    const maxima = [800, 1000, 1200];
    const profile = read('h|0–8|8–14|14–16|16–22|22–24\n1|0|600|200|800|0\n2|200|0|1000|0|200\n3|0|200|1200|0|200',
      { unit: 'W' });
    const together = coincidentPowers(maxima.map((maximum, index) => profile.factors
      .filter(({ group }) => group === String(index + 1)).map(({ factor }) => factor * maximum)));
    expect(profile.cases[peakPeriod(together)!]!.case).toBe('14–16');
    expect(coincidenceFactor(maxima, together[peakPeriod(together)!]!)).toEqual(closeTo(1 / 1.25, EXACT));
  });
});

describe('what is written is read back', () => {
  const WRITERS: ((factor: number) => string)[] = [
    String, (factor) => String(factor).replace('.', ','), (factor) => `${Math.round(factor * 1000) / 10} %`,
  ];
  const factor = fc.option(fc.integer({ min: 0, max: 1000 }).map((thousandths) => thousandths / 1000));
  const day = fc.uniqueArray(fc.integer({ min: 0, max: 23 }), { minLength: 1, maxLength: 24 })
    .map((hours) => hours.sort((one, other) => one - other));
  const groups = fc.uniqueArray(fc.stringMatching(/^[A-Za-z][A-Za-z0-9 ]{0,8}[a-z]$/), { minLength: 1, maxLength: 5 });

  test('with any hours, by stretches', () => {
    fc.assert(fc.property(
      day.chain((starts) => groups.chain((names) => fc.record({
        starts: fc.constant(starts), names: fc.constant(names), writer: fc.constantFrom(...WRITERS),
        figures: fc.array(fc.array(factor, { minLength: starts.length, maxLength: starts.length }),
          { minLength: names.length, maxLength: names.length }),
      }))),
      ({ starts, names, writer, figures }) => {
        fc.pre(figures.flat().some((each) => each !== null));
        const pairs = starts.map((from, index) => [from, starts[index + 1] ?? starts[0]!] as const);
        // One stretch of a whole day has to say so.
        const headings = pairs.map(([from, to]) => from === to ? '0–24' : `${from}–${to}`);
        const profile = readProfile([
          ['Group', ...headings],
          ...names.map((name, row) =>
            [name, ...figures[row]!.map((each) => each === null ? '' : writer(each))]),
        ]);
        if (!profile.ok) throw new Error(profile.problems[0]!.message);
        expect(profile.cases.reduce((sum, { hours }) => sum + hours, 0)).toBe(24);
        const expected = names.flatMap((group, row) => figures[row]!.flatMap((each, index) =>
          each === null ? [] : [{ case: profile.cases[index]!.case, group, factor: each }]));
        expect(profile.factors).toEqual(expected);
        expect(new Set(profile.cases.map((each) => each.case)).size).toBe(starts.length);
      },
    ));
  });

  test('no table makes it throw, and what it reads is 24 h of factors from 0 to 1', () => {
    const cell = fc.oneof(
      fc.constantFrom('', '0', '1', '0.5', '50 %', '24', '12', '0–12', '12–24', '0–24', 'Fans', 'Lights', '=A1', '\0'),
      fc.string());
    const headings = fc.constantFrom(['', '0–12', '12–24'], ['', '12', '24'], ['', '0–24', '']);
    const rows = fc.array(fc.array(cell, { maxLength: 4 }), { maxLength: 4 });
    let understood = 0;
    fc.assert(fc.property(fc.option(headings), rows, (heading, others) => {
      const profile = readProfile(heading === null ? others : [heading, ...others]);
      if (!profile.ok) {
        expect(profile.problems.every(({ message }) => message !== '')).toBe(true);
        expect(profile.total).toBeGreaterThan(0);
        return;
      }
      understood += 1;
      expect(profile.cases.reduce((sum, { hours }) => sum + hours, 0)).toEqual(closeTo(24, EXACT));
      expect(profile.factors.every((each) => each.factor >= 0 && each.factor <= 1 && each.group !== '')).toBe(true);
    }), { numRuns: 2000 });
    expect(understood).toBeGreaterThan(10);
  });
});
