import {
  computedColumns, findColumn, inputColumns, isNumeric, SCHEMA, SHEET_NAMES,
  type CaseTotal, type InCases, type InMarkedCase, type Rule, type SheetName, type Solution, type Total, type TotalPart,
} from '../schedule/index.ts';

/** Where a rule finds a value: in its own row, or in the row that the reference column `by` names. */
export interface Argument {
  readonly path: string;
  readonly by?: string;
  readonly sheet: SheetName;
  readonly key: string;
}

/** A rule of the schema, ready for the engine. */
export interface PreparedRule {
  readonly sheet: SheetName;
  readonly key: string;
  readonly rule: Rule;
  readonly args: readonly Argument[];
}

/** A total of the schema, ready for the engine. */
export interface PreparedTotal extends Total {
  readonly sheet: SheetName;
  readonly key: string;
}

/** A figure of the schema that is gathered by case, ready for the engine. */
export interface PreparedCaseTotal extends CaseTotal {
  readonly sheet: SheetName;
  readonly key: string;
}

/** A figure of the schema in cases that bear a mark, ready for the engine. */
export interface PreparedMarked extends InMarkedCase {
  readonly sheet: SheetName;
  readonly key: string;
}

/** A solution of the schema, ready for the engine. */
export interface PreparedSolution extends Omit<Solution, 'of' | 'each'> {
  readonly sheet: SheetName;
  readonly of: readonly Argument[];
  readonly each: readonly Argument[];
}

class SchemaFault extends Error {}

/**
 * Where a rule of a sheet finds the value of a path.
 * @throws SchemaFault when the path leads to no column.
 */
export function argument(sheet: SheetName, path: string): Argument {
  const [first, second] = path.split('.') as [string, string?];
  if (second === undefined) {
    if (findColumn(sheet, first) === undefined) {
      throw new SchemaFault(`A rule of ${sheet} reads ${path}, which is no column.`);
    }
    return { path, sheet, key: first };
  }
  const reference = findColumn(sheet, first);
  const target = reference?.role === 'input' ? reference.to : undefined;
  if (target === undefined || findColumn(target, second) === undefined) {
    throw new SchemaFault(`A rule of ${sheet} reads ${path}, which leads to no column.`);
  }
  return { path, by: first, sheet: target, key: second };
}

function prepare(sheet: SheetName, key: string, rule: Rule): PreparedRule {
  return { sheet, key, rule, args: rule.of.map((path) => argument(sheet, path)) };
}

const rulesBySheet = {} as Record<SheetName, PreparedRule[]>;
const totals: PreparedTotal[] = [];
const solutions: PreparedSolution[] = [];
const caseTotals: PreparedCaseTotal[] = [];
const marked: PreparedMarked[] = [];
for (const sheet of SHEET_NAMES) {
  rulesBySheet[sheet] = [
    ...inputColumns(sheet).flatMap(({ key, derived }) => derived === undefined ? [] : [prepare(sheet, key, derived)]),
    ...computedColumns(sheet).flatMap(({ key, rule }) => rule === undefined ? [] : [prepare(sheet, key, rule)]),
  ];
  for (const { key, total, caseTotal, inMarkedCase } of computedColumns(sheet)) {
    if (total !== undefined) totals.push({ sheet, key, ...total });
    if (caseTotal !== undefined) caseTotals.push({ sheet, key, ...caseTotal });
    if (inMarkedCase !== undefined) marked.push({ sheet, key, ...inMarkedCase });
  }
  for (const solution of SCHEMA[sheet].solutions ?? []) {
    solutions.push({
      ...solution, sheet, of: solution.of.map((path) => argument(sheet, path)),
      each: solution.each.map((path) => argument(solution.from, path)),
    });
  }
}

/** The rules of each sheet: derived inputs first, then computed columns. */
export const RULES: Readonly<Record<SheetName, readonly PreparedRule[]>> = rulesBySheet;

/** Every total of the schema. */
export const TOTALS: readonly PreparedTotal[] = totals;

/** Every solution of the schema. */
export const SOLUTIONS: readonly PreparedSolution[] = solutions;

/** The columns of its sheet that a part of a total reads. */
export const columnsOf = ({ by, sum = by, times = by, only }: TotalPart): string[] =>
  [...new Set([by, sum, times, only?.key ?? by])];

/** The columns that a solution reads. */
export function columnsReadBy(
  { sheet, of, each, from, by, whole }: PreparedSolution
): { sheet: SheetName; key: string }[] {
  return [
    ...of, ...each, ...(whole?.of.map((key) => ({ sheet: whole.sheet, key })) ?? []), { sheet: from, key: by },
    ...[...of].flatMap((arg) => arg.by === undefined ? [] : [{ sheet, key: arg.by }]),
    ...[...each].flatMap((arg) => arg.by === undefined ? [] : [{ sheet: from, key: arg.by }]),
  ];
}

/** The columns that a solution gives. */
export function columnsGivenBy(
  { sheet, from, gives, givesEach }: PreparedSolution
): { sheet: SheetName; key: string }[] {
  return [...gives.map((key) => ({ sheet, key })), ...givesEach.map((key) => ({ sheet: from, key }))];
}

const ruleByColumn =
  new Map(SHEET_NAMES.flatMap((sheet) => RULES[sheet].map((rule) => [`${sheet}.${rule.key}`, rule] as const)));

/** The rule that gives a column its value, if it has one. */
export function ruleOf(sheet: SheetName, key: string): PreparedRule | undefined {
  return ruleByColumn.get(`${sheet}.${key}`);
}

/** The total that gives a column its value, if it is one. */
export function totalOf(sheet: SheetName, key: string): PreparedTotal | undefined {
  return TOTALS.find((total) => total.sheet === sheet && total.key === key);
}

/** Whether a column is worked out only when it is read. */
function isOnDemand(sheet: SheetName, key: string): boolean {
  const column = findColumn(sheet, key);
  return column?.role === 'computed' && column.onDemand === true;
}

/** A column of a sheet. */
export interface ColumnName {
  readonly sheet: SheetName;
  readonly key: string;
}

const dependents = new Map<string, ColumnName[]>();
function addDependent(from: ColumnName, dependent: ColumnName): void {
  const name = `${from.sheet}.${from.key}`;
  dependents.set(name, [...(dependents.get(name) ?? []), dependent]);
}
for (const sheet of SHEET_NAMES) {
  for (const { key, args } of RULES[sheet]) for (const arg of args) addDependent(arg, { sheet, key });
}
for (const { sheet, key, of } of TOTALS) {
  for (const part of of) {
    for (const source of columnsOf(part)) addDependent({ sheet: part.from, key: source }, { sheet, key });
  }
}
for (const solution of SOLUTIONS) {
  for (const read of columnsReadBy(solution)) for (const given of columnsGivenBy(solution)) addDependent(read, given);
}
for (const { sheet, key, from, sum } of caseTotals) addDependent({ sheet: from, key: sum }, { sheet, key });
for (const { sheet, key, of } of marked) addDependent({ sheet, key: of }, { sheet, key });

/** Where factors of cases come in: in totals of what groups share, and in solutions that hang on a diversity. */
const WITH_FACTORS: readonly ColumnName[] = [
  ...TOTALS.filter(({ of }) => of.some(isShare)),
  ...SOLUTIONS.filter(({ diversity }) => diversity).flatMap(columnsGivenBy),
];
for (const column of WITH_FACTORS) addDependent({ sheet: 'factors', key: 'factor' }, column);

/** How the figure of a column stands in cases. */
export function inCasesOf(sheet: SheetName, key: string): InCases | undefined {
  const column = findColumn(sheet, key);
  return column?.role === 'computed' ? column.inCases : undefined;
}

/** The column of a sheet that names the case in which a figure is worst, if there is one. */
export function worstOf(sheet: SheetName, key: string): string | undefined {
  return computedColumns(sheet).find((column) => column.worstOf === key)?.key;
}

/** Whether a part of a total adds up what groups share. */
export function isShare({ from, sum }: TotalPart): boolean {
  return sum !== undefined && typeof inCasesOf(from, sum) === 'object';
}

/** The columns that directly depend on a column, by the schema alone. */
export function dependentsOf(sheet: SheetName, key: string): readonly ColumnName[] {
  return dependents.get(`${sheet}.${key}`) ?? [];
}

for (const { sheet, key } of SHEET_NAMES.flatMap((name) => RULES[name])) {
  if (isOnDemand(sheet, key) && dependentsOf(sheet, key).length > 0) {
    throw new SchemaFault(`${sheet}.${key} is worked out on demand only, so no rule, total or solution may read it.`);
  }
}

/** Something that gives columns their values. */
export type Source = PreparedRule | PreparedTotal | PreparedSolution | PreparedCaseTotal | PreparedMarked;

/** The columns that a source gives. */
function given(source: Source): ColumnName[] {
  return 'solve' in source ? columnsGivenBy(source) : [source];
}

/**
 * Every rule of numbers, total and solution, each after all that it reads.
 * @throws SchemaFault when one depends on itself, which would leave it without a value.
 */
export const IN_ORDER: readonly Source[] = (() => {
  const rules = SHEET_NAMES.flatMap((sheet) => RULES[sheet])
    .filter(({ sheet, key }) => isNumeric(findColumn(sheet, key)!));
  const all: Source[] = [...rules, ...TOTALS, ...SOLUTIONS, ...caseTotals, ...marked];
  const byName =
    new Map(all.flatMap((each) => given(each).map(({ sheet, key }) => [`${sheet}.${key}`, each] as const)));
  const reads = new Map(all.map((each) => [each, new Set<Source>()]));
  for (const each of all) {
    for (const { sheet, key } of given(each).flatMap((column) => dependentsOf(column.sheet, column.key))) {
      const reader = byName.get(`${sheet}.${key}`);
      if (reader !== undefined) reads.get(reader)!.add(each);
    }
  }
  const ordered = new Set<Source>();
  while (ordered.size < all.length) {
    const next = all.filter((each) => !ordered.has(each) && [...reads.get(each)!].every((other) => ordered.has(other)));
    if (next.length === 0) {
      const left = all.filter((each) => !ordered.has(each)).flatMap(given).map(({ sheet, key }) => `${sheet}.${key}`);
      throw new SchemaFault(`These columns depend on themselves: ${left.join(', ')}.`);
    }
    for (const each of next) ordered.add(each);
  }
  return [...ordered];
})();
