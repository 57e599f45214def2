import type { LoadSchedule } from '../load-schedule.ts';
import { explainedFigure, type ExplainedFigure } from '../report/index.ts';
import { findColumn, SCHEMA, SHEET_NAMES, tagOf, type SheetName } from '../schedule/index.ts';
import { Refusal } from './refusal.ts';

/** Rows that a refusal names at most. */
const MOST_NAMED = 12;

/**
 * Explains the figures that `--explain SHEET:ROW:KEY` names; a row is named by its tag or its number.
 * @throws Refusal with a line for each that is not there, saying what is.
 */
export function explainFigures(schedule: LoadSchedule, places: readonly string[]): ExplainedFigure[] {
  const refused: string[] = [];
  const explained = places.flatMap((place) => {
    const figure = explainPlace(schedule, place);
    if (typeof figure !== 'string') return [figure];
    refused.push(`--explain ${place}: ${figure}`);
    return [];
  });
  if (refused.length > 0) throw new Refusal(refused);
  return explained;
}

/** @returns the explanation, or what is wrong with the place. */
function explainPlace(schedule: LoadSchedule, place: string): ExplainedFigure | string {
  // A tag may hold colons itself.
  const [, name = '', rowName = '', key = ''] = /^([^:]*):(.*):([^:]*)$/s.exec(place) ?? [];
  if (name === '') return 'is not a place. Give SHEET:ROW:KEY, as in supplies:1:loading.';
  const sheet = SHEET_NAMES.find((each) => each === name);
  if (sheet === undefined) return `there is no sheet ${name}. Give one of ${SHEET_NAMES.join(', ')}.`;
  if (findColumn(sheet, key) === undefined) {
    return `the sheet ${sheet} has no key ${key}. Give one of ${keysOf(sheet)}.`;
  }
  const id = rowOf(schedule, sheet, rowName);
  if (id === undefined) return `the sheet ${sheet} has no row ${rowName}. ${rowsOf(schedule, sheet)}`;
  return explainedFigure(schedule, sheet, id, key)
    ?? `there is no figure to explain. Figures of the sheet ${sheet} stand in ${keysOf(sheet, true)}, in rows that are not blank.`;
}

function keysOf(sheet: SheetName, onlyComputed = false): string {
  return SCHEMA[sheet].columns.filter(({ role }) => !onlyComputed || role === 'computed')
    .map(({ key }) => key).join(', ')
    || 'no column';
}

/** The row with a tag, else the one with a number. */
function rowOf(schedule: LoadSchedule, sheet: SheetName, name: string): number | undefined {
  const rows = schedule.rows(sheet);
  const tagged = name === '' ? undefined : rows.find((row) => tagOf(sheet, row) === name);
  return (tagged ?? (/^\d+$/.test(name) ? rows[Number(name) - 1] : undefined))?.id;
}

function rowsOf(schedule: LoadSchedule, sheet: SheetName): string {
  const rows = schedule.rows(sheet);
  if (rows.length === 0) return 'It has no rows.';
  const tags = rows.map((row) => tagOf(sheet, row)).filter((tag) => tag !== '');
  const named = tags.length > MOST_NAMED ? `${tags.slice(0, MOST_NAMED).join(', ')} …` : tags.join(', ');
  return `Give a number from 1 to ${rows.length}${named === '' ? '' : `, or a tag: ${named}`}.`;
}
