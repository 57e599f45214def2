import {
  columnPlace, findColumn, mapLettered, SHEET_NAMES, type LetteredCell, type SheetName,
} from '../../schedule/index.ts';
import { moduleNames } from './version-1-modules.ts';
import { typesWithVoltage } from '../types-with-voltage.ts';
import { OF_WAYS, runAndWay } from './version-1-ways.ts';

/** An object of a file, before anything about it is known. */
export type RawObject = Readonly<Record<string, unknown>>;

/** The columns of version 1 in their order, by which its formulas name cells; `=` stands behind what takes formulas. */
const COLUMNS = {
  devices: 'ref area type qty= rail branch run distance= unitDraw= diversity= note '
    + 'connected demand share points terminalVoltage',
  types: 'type description purpose draw= power= load points= diversity= minVoltage= note aliases',
  supplies: 'rail purpose voltage= rated= units= redundant derating= target= fuse= peak= efficiency= enclosure '
    + 'fullUpTo= lessPerKelvin= note measuredCurrent= measuredVoltage= currentTolerance= voltageTolerance= '
    + 'usable connected demand loading spare limitDiversity fuseLoading loss status',
  branches: 'branch limit= reserve= terminated note points free used cables status',
  runs: 'run rail branch conductor pairs= length= temperature= basis protection= trip= maxDrop= note '
    + 'measuredCurrent= measuredVoltage= currentTolerance= voltageTolerance= '
    + 'current drop dropRatio endVoltage minVoltage faultCurrent maxLength smallestConductor status',
  conductors: 'conductor size= resistance= maxCurrent= source',
  outputs: 'output module contact load area kind qty= power= voltage= powerFactor= inrush= feed target= note '
    + 'current rating loading headroom inrushTotal inrushHeadroom status',
  contacts: 'contact resistive= lamp= motor= coil= inrush= source',
  feeds: 'feed voltage= rated= diversity= target= note connected demand loading spare status',
  enclosures: 'enclosure height= width= depth= mounting transfer= otherLoss= ambient= maxInside= note '
    + 'supplyLoss loss area rise inside status',
} as const satisfies Partial<Record<SheetName, string>>;

type Sheet1 = keyof typeof COLUMNS;
const columnsOf = Object.fromEntries(Object.entries(COLUMNS)
  .map(([sheet, keys]) => [sheet, keys.split(' ')])) as Record<Sheet1, string[]>;

/** What an empty cell meant that has no default of its own any more, or will have another. */
const MEANT: Partial<Record<string, Readonly<Record<string, number>>>> = {
  types: { nodes: 1 }, supplies: { seriesDrop: 0, peak: 1.2 }, branches: { limit: 50 },
  runs: { temperature: 20, maxDrop: 0.05 },
  outputs: { voltage: 230, powerFactor: 1, efficiency: 1 }, enclosures: { topFactor: 1 },
};

/** The purpose `field` as version 1 called it, in the languages in which it was read. */
const FIELD = /^\s*(?:peripherals|Peripherie|périphériques)\s*$/i;

/** Key that a column of version 1 has now; protections of runs are moved to ways afterwards. */
export const keyNow = (key: string): string => (key === 'points' ? 'nodes' : key);

/** Names that rules of version 1 have now. */
const RULES: Readonly<Record<string, string>> = {
  'run-over-conductor': 'run-over-carries', 'run-protection-over-conductor': 'run-protection-over-carries',
  'output-inrush-not-checked': 'output-inrush-missing',
};

/** Key that a column of now had in version 1; `undefined` where it had no such column. */
export const keyThen = (sheet: string, key: string): string | undefined =>
  (isSheet1(sheet) ? columnsOf[sheet].map((each) => each.replace('=', '')).find((each) => keyNow(each) === key)
    : undefined);

/** A text of blanks is read as an empty cell. */
export const isFilled = (value: unknown) =>
  value !== undefined && value !== null && (typeof value !== 'string' || value.trim() !== '');

/** What version 1 meant by the empty cells of a row, where that has to be said now; nothing for a row that is blank. */
export function meantBy(sheet: string, cells: RawObject): Readonly<Record<string, number>> {
  if (!Object.values(cells).some(isFilled)) return {};
  return Object.fromEntries(Object.entries(MEANT[sheet] ?? {}).filter(([key]) => !isFilled(cells[key])));
}

/** Whether a row holds nothing but what version 1 meant by empty cells. */
export function isOnlyMeant(sheet: string, cells: RawObject): boolean {
  return Object.entries(cells).every(([key, value]) => MEANT[sheet]?.[key] === value);
}

/**
 * One cell under the key that it has now. A key that version 1 did not know and that names a column by now is kept
 * under another name, since nobody meant that column: `nodes` of a type is `nodesOfVersion1`.
 * @param formulaOf what becomes of the text of a formula.
 */
export function cellNow<Value>(
  sheet: string, key: string, value: Value, formulaOf: (text: string) => string,
): [key: string, value: Value | string] {
  const columns = isSheet1(sheet) ? columnsOf[sheet] : [];
  const takesFormulas = columns.includes(`${key}=`);
  const isKnown = takesFormulas || columns.includes(key);
  if (!isKnown) return [isSheet1(sheet) && findColumn(sheet, key) !== undefined ? `${key}OfVersion1` : key, value];
  const now = keyNow(key);
  if (typeof value !== 'string') return [now, value];
  if (key === 'purpose' && FIELD.test(value)) return [now, 'field'];
  return [now, takesFormulas && /^\s*=/.test(value) ? formulaOf(value) : value];
}

/** An acceptance of version 1, with the names that rules, columns and purposes have now. */
export function acceptanceNow<Entry extends object>(accepted: Entry): Entry {
  const isMixed = 'rule' in accepted && accepted.rule === 'supply-purposes-mixed';
  // With the top factor that version 1 meant, the top is as warm as the inside is in the mean.
  const isTemperature = 'rule' in accepted && /^enclosure-.*-temperature$/.test(String(accepted.rule));
  const now = (key: string, value: string) => {
    if (key === 'rule') return RULES[value] ?? value.replace('-points-', '-nodes-');
    if (key === 'key' && value === 'protection') return 'way';
    if (key === 'key') return isTemperature && value === 'inside' ? 'top' : keyNow(value);
    return key === 'value' && isMixed ? value.replace('peripherals', 'field') : value;
  };
  const entries: [string, unknown][] = Object.entries(accepted);
  return Object.fromEntries(entries.map(([key, value]) =>
    [key, typeof value === 'string' ? now(key, value) : value])) as Entry;
}

function isSheet1(name: string): name is Sheet1 {
  return Object.hasOwn(COLUMNS, name);
}

/**
 * A formula by letters, as `=types!D3`, by key and place. What names no column stays, and is refused by the reader.
 * @param protectedRuns numbers of the runs that have a protection, in order: the ways that are made of these.
 */
function byKey(formula: string, own: Sheet1, protectedRuns: readonly number[]): string {
  return mapLettered(formula, (part, from, to) => {
    const sheet = from.sheet?.toLowerCase() ?? own;
    if (!isSheet1(sheet) || (to?.sheet !== undefined && to.sheet.toLowerCase() !== sheet)) return part;
    const cells = to === undefined ? [from] : [from, to];
    const keys = cells.map(({ letters }) => columnsOf[sheet][columnPlace(letters)]?.replace('=', ''));
    if (keys.includes(undefined)) return part;
    const written = (name: string, keyOf: (key: string) => string, rows: readonly number[]) =>
      `[${name}.${cells.map((cell, at) => corner(cell, keyOf(keys[at]!), rows[at]!)).join(':')}]`;
    const rows = cells.map(({ row }) => row);
    if (sheet !== 'runs' || !keys.some((key) => Object.hasOwn(OF_WAYS, key!))) return written(sheet, keyNow, rows);
    const places = placesOfWays(rows, protectedRuns);
    const isOfWays = places !== undefined && keys.every((key) => Object.hasOwn(OF_WAYS, key!));
    return isOfWays ? written('ways', (key) => OF_WAYS[key]!, places) : '#REF!';
  });
}

const corner = ({ fixedColumn, fixedRow }: LetteredCell, key: string, row: number) =>
  `${fixedColumn ? '$' : ''}${key}${fixedRow ? '$' : ''}#${row}`;

/** Numbers of the ways that are made of a run, or of the first and last protected one of several; none, none. */
function placesOfWays(rows: readonly number[], protectedRuns: readonly number[]): number[] | undefined {
  const [first, last] = [Math.min(...rows), Math.max(...rows)];
  const places = protectedRuns.flatMap((run, place) => (run >= first && run <= last ? [place + 1] : []));
  return places.length === 0 ? undefined : rows.map((row) => (row === first ? places[0]! : places.at(-1)!));
}

/**
 * Makes a file of version 2 of one of version 1: formulas name cells by key, `points` are `nodes`, the purpose
 * `peripherals` is `field`, a module that outputs name has a row, a run that has a protection has a way,
 * and what an empty cell meant by itself is written
 * down. Sheets that version 1 did not know are kept under another name, as its unknown keys are.
 */
export function fromVersion1(file: RawObject): RawObject {
  const runs = isObject(file.sheets) && Array.isArray(file.sheets.runs) ? file.sheets.runs as unknown[] : [];
  const protectedRuns = runs.flatMap((run, at) => (isObject(run) && isFilled(run.protection) ? [at + 1] : []));
  const sheets = withModules(withVoltages(withWays(mapObject(file.sheets, (rows, sheet) =>
    (isSheet1(sheet) ? mapList(rows, (row) => rowNow(sheet, row, protectedRuns)) : rows), (sheet) =>
    (!isSheet1(sheet) && (SHEET_NAMES as readonly string[]).includes(sheet) ? `${sheet}OfVersion1` : sheet)))));
  const accepted = mapList(file.accepted, (each) => (isObject(each) ? acceptanceNow(each) : each));
  return { ...file, version: 2, ...('sheets' in file ? { sheets } : {}), ...('accepted' in file ? { accepted } : {}) };
}

/** Sheets with a module for each name of one. */
function withModules(sheets: unknown): unknown {
  if (!isObject(sheets) || !Array.isArray(sheets.outputs)) return sheets;
  const names = moduleNames(sheets.outputs.filter(isObject));
  return names.length === 0 ? sheets : { ...sheets, modules: names.map((module) => ({ module })) };
}

/** Sheets with the voltage of each type that the rails of its devices tell. */
function withVoltages(sheets: unknown): unknown {
  if (!isObject(sheets)) return sheets;
  const rows = (name: string) => Array.isArray(sheets[name]) ? sheets[name] as unknown[] : [];
  const named = { types: rows('types'), devices: rows('devices'), runs: rows('runs'), supplies: rows('supplies') };
  const types = typesWithVoltage(
    named, (row) => (isObject(row) ? row : {}), (row, voltage) => ({ ...row as RawObject, voltage }));
  return types.length === 0 ? sheets : { ...sheets, types };
}

/** Sheets with a way for each run that has a protection. */
function withWays(sheets: unknown): unknown {
  if (!isObject(sheets) || !Array.isArray(sheets.runs)) return sheets;
  const ways: RawObject[] = [];
  const taken = new Set<unknown>();
  const runs = (sheets.runs as unknown[]).map((row) => {
    if (!isObject(row)) return row;
    const { run, way } = runAndWay(row, taken, isFilled);
    if (way !== undefined) {
      ways.push(way);
      taken.add(way.way);
    }
    return run;
  });
  return { ...sheets, ...(ways.length === 0 ? {} : { ways }), runs };
}

function rowNow(sheet: Sheet1, row: unknown, protectedRuns: readonly number[]): unknown {
  if (!isObject(row)) return row;
  const formulaNow = (text: string) => byKey(text, sheet, protectedRuns);
  const cells = Object.fromEntries(Object.entries(row).map(([key, value]) => cellNow(sheet, key, value, formulaNow)));
  return { ...cells, ...meantBy(sheet, cells) };
}

/** Whatever is of another kind than it should be is left to the reader of files, which says so. */
function isObject(value: unknown): value is RawObject {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function mapObject(
  object: unknown, write: (value: unknown, key: string) => unknown, nameOf: (key: string) => string,
): unknown {
  if (!isObject(object)) return object;
  return Object.fromEntries(Object.entries(object).map(([key, value]) => [nameOf(key), write(value, key)]));
}

function mapList(list: unknown, write: (item: unknown) => unknown): unknown {
  return Array.isArray(list) ? list.map(write) : list;
}
