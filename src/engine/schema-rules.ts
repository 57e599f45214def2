import {
  computedColumns, findColumn, inputColumns, isNumeric, SCHEMA, SHEET_NAMES,
  type ComputedColumn, type Rule, type SheetName, type Total,
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
  /** Name of the function in the formula engine that calls `rule.by`. */
  readonly functionName: string;
}

/** A total of the schema, ready for the engine. */
export interface PreparedTotal extends Total {
  readonly sheet: SheetName;
  readonly key: string;
}

class SchemaFault extends Error {}

function argument(sheet: SheetName, path: string): Argument {
  const [first, second] = path.split('.') as [string, string?];
  if (second === undefined) {
    if (findColumn(sheet, first) === undefined) throw new SchemaFault(`A rule of ${sheet} reads ${path}, which is no column.`);
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
  return {
    sheet, key, rule, args: rule.of.map((path) => argument(sheet, path)),
    functionName: `RULE.${sheet}.${key}`.toUpperCase(),
  };
}

const rulesBySheet = {} as Record<SheetName, PreparedRule[]>;
const totals: PreparedTotal[] = [];
for (const sheet of SHEET_NAMES) {
  rulesBySheet[sheet] = [
    ...inputColumns(sheet).flatMap(({ key, derived }) => derived === undefined ? [] : [prepare(sheet, key, derived)]),
    ...computedColumns(sheet).flatMap(({ key, rule }) => rule === undefined ? [] : [prepare(sheet, key, rule)]),
  ];
  for (const { key, total } of computedColumns(sheet)) if (total !== undefined) totals.push({ sheet, key, ...total });
}

/** The rules of each sheet: derived inputs first, then computed columns. */
export const RULES: Readonly<Record<SheetName, readonly PreparedRule[]>> = rulesBySheet;

/** Every total of the schema. */
export const TOTALS: readonly PreparedTotal[] = totals;

const ruleByColumn = new Map(SHEET_NAMES.flatMap((sheet) => RULES[sheet].map((rule) => [`${sheet}.${rule.key}`, rule] as const)));

/** The rule that gives a column its value, if it has one. */
export function ruleOf(sheet: SheetName, key: string): PreparedRule | undefined {
  return ruleByColumn.get(`${sheet}.${key}`);
}

/** The total that gives a column its value, if it is one. */
export function totalOf(sheet: SheetName, key: string): PreparedTotal | undefined {
  return TOTALS.find((total) => total.sheet === sheet && total.key === key);
}

/** Columns that the formula engine always holds: numbers, and what the rules read. */
export const HELD_KEYS: Readonly<Record<SheetName, readonly string[]>> = (() => {
  const read = new Set(SHEET_NAMES.flatMap((sheet) => RULES[sheet].flatMap(({ args }) => args.map((arg) => `${arg.sheet}.${arg.key}`))));
  return Object.fromEntries(SHEET_NAMES.map((sheet) => [sheet, SCHEMA[sheet].columns
    .filter((column) => (isNumeric(column) && (column.role === 'input' || isWorkedOut(column))) || read.has(`${sheet}.${column.key}`))
    .map(({ key }) => key)])) as Record<SheetName, string[]>;
})();

function isWorkedOut(column: ComputedColumn): boolean {
  return column.rule !== undefined || column.total !== undefined;
}

/** What directly depends on a column, by the schema alone; `summed` marks the step into a total. */
export interface Dependent {
  readonly sheet: SheetName;
  readonly key: string;
  readonly summed: boolean;
}

const dependents = new Map<string, Dependent[]>();
function addDependent(from: string, dependent: Dependent): void {
  dependents.set(from, [...(dependents.get(from) ?? []), dependent]);
}
for (const sheet of SHEET_NAMES) {
  for (const { key, args } of RULES[sheet]) {
    for (const arg of args) addDependent(`${arg.sheet}.${arg.key}`, { sheet, key, summed: false });
  }
}
for (const { sheet, key, from, by, sum } of TOTALS) {
  for (const source of [by, ...(sum === undefined ? [] : [sum])]) addDependent(`${from}.${source}`, { sheet, key, summed: true });
}

/** The columns that directly depend on a column. */
export function dependentsOf(sheet: SheetName, key: string): readonly Dependent[] {
  return dependents.get(`${sheet}.${key}`) ?? [];
}

/**
 * Every rule and total, each after all that it reads.
 * @throws SchemaFault when one depends on itself, which would leave it without a value.
 */
export const IN_ORDER: readonly (PreparedRule | PreparedTotal)[] = (() => {
  const all = [...SHEET_NAMES.flatMap((sheet) => RULES[sheet]), ...TOTALS];
  const byName = new Map(all.map((each) => [`${each.sheet}.${each.key}`, each] as const));
  const reads = new Map(all.map((each) => [each, new Set<PreparedRule | PreparedTotal>()]));
  for (const each of all) {
    for (const { sheet, key } of dependentsOf(each.sheet, each.key)) reads.get(byName.get(`${sheet}.${key}`)!)!.add(each);
  }
  const ordered = new Set<PreparedRule | PreparedTotal>();
  while (ordered.size < all.length) {
    const next = all.filter((each) => !ordered.has(each) && [...reads.get(each)!].every((other) => ordered.has(other)));
    if (next.length === 0) {
      const left = all.filter((each) => !ordered.has(each)).map(({ sheet, key }) => `${sheet}.${key}`);
      throw new SchemaFault(`These columns depend on themselves: ${left.join(', ')}.`);
    }
    for (const each of next) ordered.add(each);
  }
  return [...ordered];
})();
