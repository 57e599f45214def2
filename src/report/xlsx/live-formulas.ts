import { exceeds, leastTripMultiple, type WayKind } from '../../electrical/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { STATE_WORDS } from '../model/state-words.ts';
import {
  columnLetters, columnOf, decimalsOf, findColumn, letterOf, SCHEMA, tagOf,
  type CellValue, type Column, type ComputedColumn, type InputColumn, type Row, type SheetName, type TotalPart,
} from '../../schedule/index.ts';
import { CaseFormulas } from './case-formulas.ts';
import { ChangedRows, SPARE_ROWS } from './changed-rows.ts';
import { FIXED_BY, formulaTemplates, NOT_FOLLOWED, roundedFormula, WHOLE_LIMITS } from './formula-templates.ts';
import { worksheetName } from './package-parts.ts';
import { quoted } from './quoted.ts';

/** A rule in words that is arithmetic: paths in braces, numbers, the four operations. */
const ARITHMETIC = /^(?:\{[\w.]+\}|[\d.\s×÷−+()])+$/;
/** What a spreadsheet takes for a pattern rather than for a tag. */
const PATTERN = /[*?~]|^[<>=]/;
/** What stands for cells in a template. */
const PLACES = /\{([\w.]+)\}|\[(\w+)\]|\?(\w+)\?|<(\w+)\.(\w+)>/g;
/** What follows from more than a spreadsheet knows where nothing is entered, and no formula reads. */
const STANDING: ReadonlySet<string> = new Set(['runs.temperature', 'runs.grouped', 'ways.k2']);
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
  readonly #followed = new Map<string, boolean>();
  readonly #marked = new Map<SheetName, readonly ComputedColumn[]>();
  /** Figures that cases change, and the worksheets that work them out. */
  readonly cases: CaseFormulas;
  /** What differs on the worksheets from what was issued. */
  readonly changed: ChangedRows;
  /** What a figure says that no formula follows once anything was changed. */
  readonly recalculate: string;

  constructor(schedule: LoadSchedule) {
    this.#schedule = schedule;
    const { words } = schedule;
    this.recalculate = words.say('recalculate');
    this.changed = new ChangedRows(schedule, {
      extra: this.range('runs', 'extra'),
      recalculate: this.recalculate,
      flags: (sheet) => this.#column(sheet, SCHEMA[sheet].columns.length),
      worksheet: (sheet) => this.#worksheet(sheet),
      follows: (sheet, column, row) => column.derived !== undefined
        && !schedule.isOwn(sheet, schedule.rows(sheet)[row]!.id, column.key)
        && this.shown(sheet, column, row) !== undefined,
      front: `${inQuotes(worksheetName(words.say('Load table')))}!`,
    });
    this.#templates = formulaTemplates(words, {
      isAny: this.changed.isAny, isUnfollowed: this.changed.isUnfollowed, extra: this.range('runs', 'extra') ?? '$A$1', recalculate: this.recalculate,
      anyWaits: this.changed.anyWaits, hasRuns: schedule.rows('runs').length > 0, hasDevices: schedule.rows('devices').length > 0,
    });
    this.#holdsFaults = schedule.findings.some(({ rule }) => rule === 'number-out-of-range');
    this.cases = new CaseFormulas(schedule, this, !this.#holdsFaults);
  }

  /** Whether a figure follows changes in the spreadsheet. */
  isLive(sheet: SheetName, column: Column): boolean {
    const free = this.#schedule.rows(sheet).findIndex((_row, at) => !this.#isFixed(sheet, column, at));
    return this.formula(sheet, column, Math.max(0, free)) !== undefined;
  }

  /**
   * What stands in the cell of a figure or of what follows where nothing is entered: its formula, else the figure as it
   * was issued, which asks for recalculation as soon as anything was changed on the worksheets.
   * @param value the figure as the cell shows it.
   * @returns `undefined` for what other formulas read and none follows, such as a rail by a tag that stands twice.
   */
  shown(sheet: SheetName, column: Column, row: number, value: CellValue = null): string | undefined {
    const formula = this.formula(sheet, column, row);
    if (formula !== undefined || this.#schedule.rows(sheet)[row] === undefined) return formula;
    if (column.role === 'input' && !STANDING.has(`${sheet}.${column.key}`)) return undefined;
    const { id } = this.#schedule.rows(sheet)[row]!;
    const issued = literal(value);
    if (`${sheet}.${column.key}` === 'runs.extra' && this.isSafe('runs')) return this.#extra(row, id, issued);
    const over = column.role === 'computed' && column.status === true && this.#schedule.standing(sheet, id) !== 'accepted'
      ? this.#filled(this.#templates[`${sheet}.over`], sheet, row) : undefined;
    const since = over === undefined ? quoted(this.recalculate)
      : `IF(IFERROR(${over},FALSE()),${quoted(this.#schedule.words.say(STATE_WORDS.over))},${quoted(this.recalculate)})`;
    return `IF(${this.changed.isAny},${since},${issued})`;
  }

  /** The formula of a spare row, which gives nothing as long as nothing is entered into the row. */
  spare(sheet: SheetName, column: Column, row: number): string | undefined {
    const formula = this.formula(sheet, column, row) ?? (column.role === 'computed' ? quoted(this.recalculate) : undefined);
    return formula === undefined ? undefined : `IF(${this.#flag(sheet, row)}=0,"",${formula})`;
  }

  /** The cell that says how a row differs from what was issued. */
  #flag(sheet: SheetName, row: number): string {
    return `$${columnLetters(SCHEMA[sheet].columns.length)}${row + 2}`;
  }

  /** What a run draws beyond its demand: nothing where all on it is steady, whatever the counts are. */
  #extra(row: number, id: number, issued: string): string {
    const devices = this.#schedule.rows('devices');
    const naming = this.range('devices', 'run');
    const on = devices.filter((device) => this.#schedule.target('devices', device.id, 'run') === id);
    const isSteady = on.every((device) => {
      const type = this.#schedule.target('devices', device.id, 'type');
      return type < 0 || this.#schedule.value('types', type, 'load') !== 'power';
    });
    const tag = this.#own('runs', 'run', row);
    const own = this.#flag('runs', row);
    const flags = naming === undefined ? undefined
      : { run: naming, flags: this.#column('devices', SCHEMA.devices.columns.length)! };
    const { isSame, isSteady: isStillSteady } = this.changed.circuit(tag, own, flags, on.length);
    const since = quoted(this.recalculate);
    return `IF(${tag}="",${issued},IF(${isSame},${issued},${isSteady ? `IF(${isStillSteady},0,${since})` : since}))`;
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
      const own = this.#templates[`${sheet}.${column.key}`];
      if (own === undefined && !this.#isFollowed(sheet, column.key)) return undefined;
      if (!this.isSafe(sheet)) return undefined;
      const tag = this.#own(sheet, SCHEMA[sheet].tag, row);
      const parts = total.of.flatMap(({ from, by, sum = by, times, only }) => {
        if (isShared(by, only)) return [];
        const naming = this.range(from, by);
        if (naming === undefined) return [];
        // A text counts as 0 where ranges are multiplied as arguments.
        if (times !== undefined) {
          return [`SUMPRODUCT((${naming}=${tag})*1,${this.range(from, sum)},${this.range(from, times)})`];
        }
        if (sum === by) return [`COUNTIF(${naming},${tag})`];
        const figures = this.range(from, sum);
        return [total.greatest ? `_xlfn.MAXIFS(${figures},${naming},${tag})` : `SUMIF(${naming},${tag},${figures})`];
      });
      const sum = parts.length === 0 ? '0' : `IF(${tag}="",0,${parts.join('+')})`;
      // What is neither least nor most where a part waits for recalculation is none of both.
      const figures = column.role === 'computed' && column.whenPartial === undefined
        ? total.of.flatMap(({ from, sum: key }) => key === undefined ? [] : this.range(from, key) ?? []) : [];
      const waits = figures.map((cells) => `COUNTIF(${cells},${quoted(this.recalculate)})>0`);
      return waits.length === 0 ? sum : `IF(OR(${waits.join(',')}),${quoted(this.recalculate)},${sum})`;
    }
    const filled = this.#filled(this.#templates[`${sheet}.${column.key}`] ?? arithmeticOf(sheet, column), sheet, row);
    return filled === undefined ? undefined : `IFERROR(${filled},"")`;
  }

  /** A template with the cells of a row; `undefined` where a spreadsheet would come to something else. */
  #filled(template: string | undefined, sheet: SheetName, row: number): string | undefined {
    if (template === undefined || this.#holdsFaults) return undefined;
    if (this.#names(sheet, template).some((name) => !this.isSafe(name))) return undefined;
    // A text in a column of numbers makes a fault of all that is reckoned of it.
    if (template.includes('SUMPRODUCT') && this.#columnsOf(template).some(([name, key]) => !this.#isWhole(name, key))) {
      return undefined;
    }
    if (this.#paths(sheet, template).some(([name, key]) => !this.#isFollowed(name, key))) return undefined;
    return template.replace(PLACES, (
      _all, path?: string, key?: string, own?: string, name?: SheetName, of?: string,
    ) => {
      if (name !== undefined) return this.range(name, of!) ?? 'NA()';
      if (path !== undefined) return this.#value(sheet, path, row);
      return key === undefined ? `${String(this.#isEntered(sheet, own!, row)).toUpperCase()}()` : this.#missing(sheet, key, row);
    });
  }

  /**
   * The figures of a sheet of which a formula tells whether they are less than the whole: those that follow totals.
   * Figures of devices and runs have a mark as they were issued.
   */
  marked(sheet: SheetName): readonly ComputedColumn[] {
    let marked = this.#marked.get(sheet);
    if (marked === undefined) {
      marked = sheet === 'devices' || sheet === 'runs' || this.#schedule.rows(sheet).length === 0 ? []
        : SCHEMA[sheet].columns.filter((column): column is ComputedColumn => column.role === 'computed'
          && column.whenPartial !== undefined && this.isLive(sheet, column));
      this.#marked.set(sheet, marked);
    }
    return marked;
  }

  /** Place of the hidden column that says whether a figure is less than the whole. */
  markPlace(sheet: SheetName, key: string): number | undefined {
    const place = this.marked(sheet).findIndex((column) => column.key === key);
    return place < 0 ? undefined : SCHEMA[sheet].columns.length + 1 + place;
  }

  /**
   * Whether a figure lacks something that it adds up, or follows from one that does: 1 or 0. Until anything is changed
   * it is as it was issued; what lacked something then does until it is calculated anew.
   */
  mark(sheet: SheetName, column: ComputedColumn, row: number): string {
    if (this.#schedule.isPartial(sheet, this.#schedule.rows(sheet)[row]!.id, column.key)) return '1';
    const conditions = this.#lacking(sheet, column, row);
    return conditions.length === 0 ? '0' : `IF(${this.changed.isAny},IF(OR(${conditions.join(',')}),1,0),0)`;
  }

  #lacking(sheet: SheetName, column: ComputedColumn, row: number): string[] {
    const { key, total, caseTotal, inMarkedCase } = column;
    const marks = (of: SheetName, figure: string) => {
      const place = this.markPlace(of, figure);
      return place === undefined ? undefined : this.#column(of, place);
    };
    if (total !== undefined) {
      const tag = this.#own(sheet, SCHEMA[sheet].tag, row);
      const added = total.of.flatMap(({ from, by, sum, only }) => {
        const [naming, partial] = [this.range(from, by), sum === undefined ? undefined : marks(from, sum)];
        return naming === undefined || partial === undefined || isShared(by, only) ? [] : [`COUNTIFS(${naming},${tag},${partial},1)>0`];
      });
      const hasSums = total.of.some(({ sum }) => sum !== undefined);
      return [
        this.changed.isUncounted, ...hasSums ? [`${this.#missing(sheet, key, row)}>0`] : [],
        ...added.map((condition) => `IF(${tag}="",FALSE(),${condition})`),
      ];
    }
    const one = (of: SheetName, figure: string, reference?: string) => {
      const place = this.markPlace(of, figure);
      if (place === undefined) return [];
      if (reference === undefined) return [`$${columnLetters(place)}${row + 2}=1`];
      const tag = this.#own(sheet, reference, row);
      return [`IFERROR(INDEX(${this.#column(of, place)!},MATCH(${tag},${this.range(of, SCHEMA[of].tag)!},0))=1,FALSE())`];
    };
    if (caseTotal !== undefined) {
      const partial = marks(caseTotal.from, caseTotal.sum);
      return partial === undefined ? [] : [`COUNTIF(${partial},1)>0`];
    }
    if (inMarkedCase !== undefined) return one(sheet, inMarkedCase.of);
    const template = this.#templates[`${sheet}.${key}`] ?? arithmeticOf(sheet, column) ?? '';
    return [...new Set([...template.matchAll(/\{(?:(\w+)\.)?(\w+)\}/g)].flatMap(([, reference, figure]) =>
      one(reference === undefined ? sheet : targetOf(sheet, reference), figure!, reference)))];
  }

  /** The columns that a template reads of a row and of those that it names. */
  #paths(sheet: SheetName, template: string): [SheetName, string][] {
    return [...template.matchAll(/\{(?:(\w+)\.)?(\w+)\}/g)].map(([, reference, key]) =>
      [reference === undefined ? sheet : targetOf(sheet, reference), key!]);
  }

  /** Whether formulas may read a column: figures that are solved ask for recalculation in words. */
  #isFollowed(sheet: SheetName, key: string): boolean {
    const path = `${sheet}.${key}`;
    let followed = this.#followed.get(path);
    if (followed === undefined) {
      const column = columnOf(sheet, key);
      followed = column.role === 'input' ? !STANDING.has(path) : path === 'runs.extra' || this.#isLiveAnywhere(sheet, column);
      this.#followed.set(path, followed);
    }
    return followed;
  }

  #isLiveAnywhere(sheet: SheetName, column: ComputedColumn): boolean {
    const { total, key } = column;
    if (this.#holdsFaults) return false;
    if (this.cases.concerns(sheet, key) && this.cases.formula(sheet, key, 0, () => '0') === undefined) return false;
    if (total !== undefined) {
      return this.isSafe(sheet) && total.of.every(({ from, by, sum, only }) =>
        sum === undefined || isShared(by, only) || this.#isFollowed(from, sum));
    }
    if ((column.inMarkedCase ?? column.worstOf ?? column.caseTotal) !== undefined) return true;
    return this.#filled(this.#templates[`${sheet}.${key}`] ?? arithmeticOf(sheet, column), sheet, 0) !== undefined;
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
    if (sheet === 'ways' && this.sharing().has(row.id)) return true;
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

  anyWaits(): string {
    return this.changed.anyWaits;
  }

  /**
   * The cells of a column, those of the spare rows among them: `Devices!$P$2:$P$110`; `undefined` when the sheet has no
   * rows.
   * @param isIssued only the rows that were issued.
   */
  range(sheet: SheetName, key: string, isIssued = false): string | undefined {
    return this.#column(sheet, SCHEMA[sheet].columns.indexOf(columnOf(sheet, key)), isIssued);
  }

  #column(sheet: SheetName, place: number, isIssued = false): string | undefined {
    const count = this.#schedule.rows(sheet).length;
    const letter = columnLetters(place);
    const last = count + 1 + (isIssued ? 0 : SPARE_ROWS);
    return count === 0 ? undefined : `${this.#worksheet(sheet)}!$${letter}$2:$${letter}$${last}`;
  }

  #worksheet(sheet: SheetName): string {
    return inQuotes(worksheetName(this.#schedule.words.text(SCHEMA[sheet].title)));
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

/** A worksheet as formulas name it: in quotes where its name is more than plain letters. */
function inQuotes(name: string): string {
  return /^[A-Za-z]+$/.test(name) ? name : `'${name.replaceAll("'", "''")}'`;
}

/** A value in a formula. */
function literal(value: CellValue): string {
  if (value === null || value === '') return '""';
  if (typeof value === 'string') return quoted(value);
  return typeof value === 'boolean' ? `${String(value).toUpperCase()}()` : String(value);
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
