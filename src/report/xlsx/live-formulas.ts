import { exceeds, leastTripMultiple, type WayKind } from '../../electrical/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import {
  columnOf, decimalsOf, findColumn, letterOf, SCHEMA, tagOf,
  type CellValue, type Column, type InputColumn, type Row, type SheetName, type TotalPart,
} from '../../schedule/index.ts';
import { CaseFormulas } from './case-formulas.ts';
import { FIXED_BY, formulaTemplates, NOT_FOLLOWED, roundedFormula, WHOLE_LIMITS } from './formula-templates.ts';
import { worksheetName } from './package-parts.ts';

/** A rule in words that is arithmetic: paths in braces, numbers, the four operations. */
const ARITHMETIC = /^(?:\{[\w.]+\}|[\d.\s×÷−+()])+$/;
/** What a spreadsheet takes for a pattern rather than for a tag. */
const PATTERN = /[*?~]|^[<>=]/;
/** What stands for cells in a template. */
const PLACES = /\{([\w.]+)\}|\[(\w+)\]|\?(\w+)\?|<(\w+)\.(\w+)>/g;
const SIGNS: Readonly<Record<string, string>> = { '×': '*', '÷': '/', '−': '-' };

/**
 * The figures of a schedule as formulas of a spreadsheet, in which every sheet has its headings in line 1 and its rows
 * below, with the columns of the schema in their order.
 */
export class LiveFormulas {
  readonly #schedule: LoadSchedule;
  readonly #templates: Readonly<Record<string, string>>;
  /** A number beyond its range is not known, and a spreadsheet would take it as it stands. */
  readonly #holdsFaults: boolean;
  readonly #safe = new Map<SheetName, boolean>();
  readonly #adding = new Map<SheetName, ReadonlySet<CellValue>>();
  #shared: ReadonlySet<number> | undefined;
  /** Figures that cases change, and the worksheets that work them out. */
  readonly cases: CaseFormulas;

  constructor(schedule: LoadSchedule) {
    this.#schedule = schedule;
    this.#templates = formulaTemplates(schedule.words);
    this.#holdsFaults = schedule.findings.some(({ rule }) => rule === 'number-out-of-range');
    this.cases = new CaseFormulas(schedule, this, !this.#holdsFaults);
  }

  /** Whether a figure follows changes in the spreadsheet. */
  isLive(sheet: SheetName, column: Column): boolean {
    const free = this.#schedule.rows(sheet).findIndex((_row, at) => !this.#isFixed(sheet, column, at));
    return this.formula(sheet, column, Math.max(0, free)) !== undefined;
  }

  /**
   * The formula of a figure, without its equals sign; an empty text stands for what is unknown.
   * @param row place of the row on its sheet, from 0.
   * @returns `undefined` for what a spreadsheet cannot follow: figures of runs, references by tags that it would not
   * tell apart, and statuses where a figure lacks something that stands elsewhere.
   */
  formula(sheet: SheetName, column: Column, row: number): string | undefined {
    if (this.#holdsFaults) return undefined;
    if (this.#isFixed(sheet, column, row)) return undefined;
    const plain = () => this.#withoutCases(sheet, column, row);
    return this.cases.concerns(sheet, column.key) ? this.cases.formula(sheet, column.key, row, plain) : plain();
  }

  #withoutCases(sheet: SheetName, column: Column, row: number): string | undefined {
    const total = column.role === 'computed' ? column.total : undefined;
    if (total !== undefined) {
      // Of products no spreadsheet adds up those of one tag without a formula of arrays.
      if (!this.isSafe(sheet) || total.of.some(({ times }) => times !== undefined)) return undefined;
      const tag = this.#own(sheet, SCHEMA[sheet].tag, row);
      const parts = total.of.flatMap(({ from, by, sum = by, only }) => {
        if (isShared(by, only)) return [];
        const naming = this.range(from, by);
        if (naming === undefined) return [];
        if (sum === by) return [`COUNTIF(${naming},${tag})`];
        const figures = this.range(from, sum);
        return [total.greatest ? `_xlfn.MAXIFS(${figures},${naming},${tag})` : `SUMIF(${naming},${tag},${figures})`];
      });
      return parts.length === 0 ? '0' : `IF(${tag}="",0,${parts.join('+')})`;
    }
    const template = this.#templates[`${sheet}.${column.key}`] ?? arithmeticOf(sheet, column);
    if (template === undefined || this.#names(sheet, template).some((name) => !this.isSafe(name))) return undefined;
    // A text in a column of numbers makes a fault of all that is reckoned of it.
    if (this.#columnsOf(template).some(([name, key]) => !this.#isWhole(name, key))) return undefined;
    const filled = template.replace(PLACES, (
      _all, path?: string, key?: string, own?: string, name?: SheetName, of?: string,
    ) => {
      if (name !== undefined) return this.range(name, of!) ?? 'NA()';
      if (path !== undefined) return this.#value(sheet, path, row);
      return key === undefined ? `${String(this.#isEntered(sheet, own!, row)).toUpperCase()}()` : this.#missing(sheet, key, row);
    });
    return `IFERROR(${filled},"")`;
  }

  /** The columns that a template reads as a whole. */
  #columnsOf(template: string): [SheetName, string][] {
    return [...template.matchAll(/<(\w+)\.(\w+)>/g)].map(([, name, key]) => [name as SheetName, key!]);
  }

  /** Whether no cell of a column of numbers is unknown. */
  #isWhole(sheet: SheetName, key: string): boolean {
    return columnOf(sheet, key).kind !== 'number'
      || this.#schedule.rows(sheet).every(({ id }) => this.#schedule.value(sheet, id, key) !== null);
  }

  #isEntered(sheet: SheetName, key: string, row: number): boolean {
    return (this.#schedule.rows(sheet)[row]?.cells[key] ?? null) !== null;
  }

  /** Whether a status, or what adds up at a way, hangs on what a spreadsheet cannot follow. */
  #isFixed(sheet: SheetName, column: Column, at: number): boolean {
    const row = this.#schedule.rows(sheet)[at];
    if (column.role !== 'computed' || row === undefined) return false;
    const isOfRuns = column.status === true || column.total !== undefined;
    if (sheet === 'ways' && isOfRuns && this.sharing().has(row.id)) return true;
    if (column.status !== true) return false;
    return this.#schedule.standing(sheet, row.id) === 'accepted' || this.#addingPartial(sheet).has(tagOf(sheet, row))
      || (FIXED_BY[`${sheet}.${column.key}`] ?? []).some((key) => this.#isEntered(sheet, key, at))
      || this.#schedule.rulesAgainst(sheet, row.id).some((rule) => NOT_FOLLOWED.has(rule))
      || (sheet === 'supplies' && this.#standsInPartialWarmth(sheet, at))
      || (sheet === 'ways'
        && (this.#startsWithMore(row) || this.#mayActWithSupply(row) || this.#schedule.isPartial(sheet, row.id, 'available')));
  }

  /** Ways that share a run with another: what comes through them follows from the run alone. */
  sharing(): ReadonlySet<number> {
    return this.#shared ??= new Set(this.#schedule.rows('runs')
      .filter(({ cells }) => (cells.secondWay ?? null) !== null)
      .flatMap(({ id }) => ['way', 'secondWay'].map((by) => this.#schedule.target('runs', id, by))));
  }

  /** Whether an electronic channel is held against a start above what is connected, which follows from runs alone. */
  #startsWithMore({ id, cells }: Row): boolean {
    const [start, connected] = ['start', 'connected'].map((key) => this.#schedule.value('ways', id, key));
    return cells.kind === 'electronic' && typeof start === 'number' && exceeds(start, Number(connected));
  }

  /**
   * Whether the breaker of its supply may act with that of a way: where there are cases, that hangs on the one in which
   * the supply has most left, and the worksheet tells the least.
   */
  #mayActWithSupply({ id, cells }: Row): boolean {
    if (this.#schedule.cases.cases.length === 0) return false;
    const supply = this.#schedule.document.row('supplies', this.#schedule.target('ways', id, 'rail'));
    const isBreaker = (kind: CellValue | undefined) => leastTripMultiple(kind as WayKind) !== null;
    return isBreaker(cells.kind) && isBreaker(supply?.cells.fuseKind);
  }

  /** Whether a row stands in an enclosure of which it is not wholly known how warm it gets. */
  #standsInPartialWarmth(sheet: SheetName, row: number): boolean {
    const tag = this.#schedule.rows(sheet)[row]?.cells.enclosure ?? null;
    return tag !== null && this.#schedule.rows('enclosures').some(({ id, cells }) =>
      cells.enclosure === tag && this.#schedule.isPartial('enclosures', id, 'top'));
  }

  /** Tags of the rows that add up figures that are partial though they have a value, as input currents are. */
  #addingPartial(sheet: SheetName): ReadonlySet<CellValue> {
    let adding = this.#adding.get(sheet);
    if (adding === undefined) {
      const parts = SCHEMA[sheet].columns.flatMap((column) => column.role === 'computed' ? column.total?.of ?? [] : []);
      adding = new Set(parts.flatMap(({ from, by, sum }) => sum === undefined ? [] : this.#schedule.rows(from)
        .filter(({ id }) => this.#schedule.value(from, id, sum) !== null && this.#schedule.isPartial(from, id, sum))
        .map(({ id }) => this.#schedule.value(from, id, by))));
      this.#adding.set(sheet, adding);
    }
    return adding;
  }

  /** The cells of a column: `Devices!$P$2:$P$90`; `undefined` when the sheet has no rows. */
  range(sheet: SheetName, key: string): string | undefined {
    const count = this.#schedule.rows(sheet).length;
    const letter = letterOf(sheet, key);
    return count === 0 ? undefined : `${this.#worksheet(sheet)}!$${letter}$2:$${letter}$${count + 1}`;
  }

  /** A worksheet as formulas name it: in quotes where its name is more than plain letters. */
  #worksheet(sheet: SheetName): string {
    const name = worksheetName(this.#schedule.words.text(SCHEMA[sheet].title));
    return /^[A-Za-z]+$/.test(name) ? name : `'${name.replaceAll("'", "''")}'`;
  }

  #own(sheet: SheetName, key: string, row: number): string {
    return `$${letterOf(sheet, key)}${row + 2}`;
  }

  #value(sheet: SheetName, path: string, row: number): string {
    const [first, key] = path.split('.');
    if (key === undefined) return this.#own(sheet, path, row);
    const target = targetOf(sheet, first!);
    const [values, tags] = [this.range(target, key), this.range(target, SCHEMA[target].tag)];
    return values === undefined ? 'NA()' : `INDEX(${values},MATCH(${this.#own(sheet, first!, row)},${tags},0))`;
  }

  /** How many rows a total lacks. */
  #missing(sheet: SheetName, key: string, row: number): string {
    const tag = this.#own(sheet, SCHEMA[sheet].tag, row);
    const parts = this.#columnOfTotal(sheet, key).of.flatMap(({ from, by, sum, only }) => {
      if (isShared(by, only)) return [];
      const naming = this.range(from, by);
      // No figure that is added up is negative, so those that are known are those from 0 on.
      return naming === undefined ? []
        : [`COUNTIF(${naming},${tag})-COUNTIFS(${naming},${tag},${this.range(from, sum!)},">=0")`];
    });
    return `${parts.length === 0 ? '0' : `IF(${tag}="",0,${parts.join('+')})`}${this.cases.missing(sheet, key, row)}`;
  }

  #columnOfTotal(sheet: SheetName, key: string) {
    const column = columnOf(sheet, key);
    if (column.role !== 'computed' || column.total === undefined) throw new RangeError(`${sheet}.${key} is no total.`);
    return column.total;
  }

  /** The sheets whose rows a formula finds by their tags. */
  #names(sheet: SheetName, template: string): SheetName[] {
    const references = [...template.matchAll(/\{(\w+)\.\w+\}/g)].map((found) => targetOf(sheet, found[1]!));
    return template.includes('[') || this.#columnsOf(template).length > 0 ? [...references, sheet] : references;
  }

  /**
   * Whether a spreadsheet, which ignores case and knows patterns, tells the tags of a sheet apart as the schedule does.
   */
  isSafe(sheet: SheetName): boolean {
    let safe = this.#safe.get(sheet);
    if (safe === undefined) {
      const tags = this.#schedule.rows(sheet).map((row) => tagOf(sheet, row)).filter((tag) => tag !== '');
      const folded = new Set(tags.map((tag) => tag.toLowerCase()));
      const named = this.#references(sheet);
      safe = folded.size === tags.length && !tags.some((tag) => PATTERN.test(tag))
        && named.every((tag) => tags.includes(tag) || !folded.has(tag.toLowerCase()));
      this.#safe.set(sheet, safe);
    }
    return safe;
  }

  /** The tags by which rows anywhere name rows of a sheet. */
  #references(sheet: SheetName): string[] {
    return Object.values(SCHEMA).flatMap(({ name, columns }) => {
      const keys = columns.filter((column): column is InputColumn => column.role === 'input' && column.to === sheet)
        .map(({ key }) => key);
      return this.#schedule.rows(name)
        .flatMap(({ cells }) => keys.map((key) => cells[key]).filter((tag) => typeof tag === 'string'));
    });
  }
}

/** Whether a part of a total is of runs with two ways, of which no formula follows what comes through either. */
const isShared = (by: string, only: TotalPart['only']) => by === 'secondWay' || only?.filled === true;

function targetOf(sheet: SheetName, reference: string): SheetName {
  return (findColumn(sheet, reference) as InputColumn).to!;
}

/** The rule of a column as a formula, when it is arithmetic on known values. */
function arithmeticOf(sheet: SheetName, column: Column): string | undefined {
  const words = column.role === 'computed' ? column.rule?.words : undefined;
  if (typeof words !== 'string' || !ARITHMETIC.test(words)) return undefined;
  const paths = [...new Set([...words.matchAll(/\{([\w.]+)\}/g)].map((found) => found[0]))];
  const exact = words.replace(/[×÷−]/g, (sign) => SIGNS[sign]!);
  const side = WHOLE_LIMITS.has(`${sheet}.${column.key}`) ? undefined : column.safeSide;
  const figure = side === undefined ? exact : roundedFormula(exact, decimalsOf(column), side);
  return `IF(OR(${paths.map((path) => `${path}=""`).join(',')}),"",${figure})`;
}
