import { exceeds } from '../../electrical/index.ts';
import { HOURS_OF_DAY, MOST_CASES, type Workbook } from '../../engine/index.ts';
import type { ScheduleDocument } from '../../schedule/index.ts';
import { message } from '../../words/index.ts';
import type { Check } from '../check.ts';
import type { Gathering } from '../facts.ts';
import { missingInput, unknown } from './limit-checks.ts';

/** Cases beyond those that are worked out. */
const BEYOND: Gathering<true> = {
  sheet: 'cases', reads: [['cases', 'case'], ['cases', 'hours'], ['cases', 'standby'], ['cases', 'together'], ['cases', 'note']],
  gather: (document, book) => {
    if (!book.cases.isCut) return new Map();
    const known = new Set(book.cases.cases.map(({ id }) => id));
    return new Map(document.rows('cases').flatMap(({ id }) => known.has(id) ? [] : [[id, true]]));
  },
};

/** Cases that give no group a factor. */
const WITHOUT_FACTORS: Gathering<true> = {
  sheet: 'cases', reads: [['cases', 'case'], ['factors', 'case']],
  gather: (document, book) => {
    const named = new Set(book.targets('factors', 'case'));
    return new Map(document.rows('cases').flatMap(({ id }) => named.has(id) ? [] : [[id, true]]));
  },
};

/** The first case that has hours, where those of all go beyond a day: what they come to [h]. */
const BEYOND_DAY: Gathering<number> = {
  sheet: 'cases', reads: [['cases', 'case'], ['cases', 'hours']],
  gather: (document, book) => {
    const lasting = document.rows('cases').filter(({ id }) => book.number('cases', id, 'hours') > 0);
    const all = lasting.reduce((sum, { id }) => sum + book.number('cases', id, 'hours'), 0);
    return exceeds(all, HOURS_OF_DAY) ? new Map([[lasting[0]!.id, all]]) : new Map();
  },
};

/** What is wrong with a factor beside others: its case gives the group another one, or nothing belongs to the group. */
const BESIDE_OTHERS: Gathering<'twice' | 'nobody'> = {
  sheet: 'factors', reads: [
    ['factors', 'case'], ['factors', 'group'], ['factors', 'factor'], ['factors', 'of'], ['devices', 'group'],
    ['types', 'group'], ['outputs', 'group'],
  ],
  gather: besideOthers,
};

function besideOthers(document: ScheduleDocument, book: Workbook): Map<number, 'twice' | 'nobody'> {
  const groups = new Set((['types', 'devices', 'outputs'] as const).flatMap((sheet) =>
    document.rows(sheet).map(({ cells }) => cells.group ?? null)));
  const first = new Map<string, string>();
  const found = new Map<number, 'twice' | 'nobody'>();
  for (const { id, cells: { group = null, of = null } } of document.rows('factors')) {
    if (group === null) continue;
    const place = `${book.target('factors', id, 'case')} ${String(group)}`;
    const meant = `${book.number('factors', id, 'factor')} ${of === 'demand' ? 'demand' : ''}`;
    if (first.has(place) && first.get(place) !== meant) found.set(id, 'twice');
    else if (!groups.has(group)) found.set(id, 'nobody');
    first.set(place, first.get(place) ?? meant);
  }
  return found;
}

/** What cases and their factors are held against. */
export const caseChecks: readonly Check[] = [
  {
    rule: 'case-beyond-count', sheet: 'cases', key: 'case', severity: 'incomplete',
    find: (row) => row.fact(BEYOND) === undefined ? undefined : unknown(row, message(
      '{name} comes after the first {most} cases, and no more than these are calculated: nothing is judged in it, and no demand is known as a whole. Delete cases, or put several into one.'
    ), { most: MOST_CASES }),
  },
  {
    rule: 'case-without-factors', sheet: 'cases', key: 'case', severity: 'note',
    find: (row) => row.fact(WITHOUT_FACTORS) === undefined ? undefined : unknown(row, message(
      '{name} gives no group a factor, so in it everything is as the diversity of its rows says. Enter its factors.'
    )),
  },
  {
    rule: 'case-hours-beyond-day', sheet: 'cases', key: 'hours', severity: 'note',
    find: (row) => {
      const all = row.fact(BEYOND_DAY);
      const hours = (value: number) => ({ value, decimals: 1, unit: 'h' });
      return all === undefined ? undefined : {
        value: all, limit: HOURS_OF_DAY,
        message: row.say(message(
          '{name}: with its hours those of all cases come to {all}, and a day has {day}, so that no energy, average or load factor of a day follows from them. Correct the hours, and leave those of a rare case empty.'
        ), { all: hours(all), day: hours(HOURS_OF_DAY) }),
      };
    },
  },
  missingInput('factor-case-missing', 'factors', 'case', message(
    '{name} belongs to no case, so it counts nowhere. Choose its case.'
  )),
  missingInput('factor-group-missing', 'factors', 'group', message(
    '{name} counts for nothing. Enter the group, as types, device rows or outputs give it.'
  )),
  missingInput('factor-missing', 'factors', 'factor', message(
    '{name} is not known, so what is on in its case is not known either. Enter the share that is on, 0 to 1.'
  )),
  {
    rule: 'factor-twice', sheet: 'factors', key: 'factor', severity: 'incomplete',
    find: (row) => row.fact(BESIDE_OTHERS) !== 'twice' ? undefined : unknown(row, message(
      '{name} is given another value for the same case in a row above, and which one is meant is not known. Delete one of them.'
    )),
  },
  {
    rule: 'factor-of-nothing', sheet: 'factors', key: 'group', severity: 'note',
    find: (row) => row.fact(BESIDE_OTHERS) !== 'nobody' ? undefined : unknown(row, message(
      '{name}: no type, device row or output belongs to this group, so the factor changes nothing. Correct its spelling, or give the group to what belongs to it.'
    )),
  },
];
