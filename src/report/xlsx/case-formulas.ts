import type { LoadSchedule } from '../../load-schedule.ts';
import {
  columnLetters, columnOf, isBlank, SCHEMA, tagOf, type CellValue, type SheetName,
} from '../../schedule/index.ts';
import { filledRows } from '../model/sheet-section.ts';
import type { CellStyles } from './cell-styles.ts';
import { worksheetName, type CellToWrite, type Worksheet } from './package-parts.ts';
import { quoted } from './quoted.ts';
import { shownValue } from './shown-value.ts';

/** Figures that cases change, each worked out in a block of the worksheet «Demand by case». */
type BlockName =
  | 'runs.demand' | 'supplies.demand' | 'supplies.power' | 'supplies.loss' | 'supplies.inputCurrent' | 'ways.demand'
  | 'ways.available' | 'feeds.drawn' | 'feeds.demand' | 'enclosures.supplyLoss';
/** A block stands below those that it reads, for persons; formulas do not mind. */
const BLOCKS: readonly BlockName[] = [
  'runs.demand', 'supplies.demand', 'supplies.power', 'supplies.loss', 'supplies.inputCurrent', 'ways.demand',
  'ways.available', 'feeds.drawn', 'feeds.demand', 'enclosures.supplyLoss',
];
/** Figures of the sheets that the blocks give; power, loss and input current of supplies follow from their demand. */
const GIVEN: ReadonlySet<string> = new Set<BlockName>([
  'runs.demand', 'supplies.demand', 'ways.demand', 'ways.available', 'feeds.drawn', 'feeds.demand', 'enclosures.supplyLoss',
]);
/** Loads by the reference that names a row of the block. */
const LOADS: Partial<Record<BlockName, readonly (readonly [sheet: 'devices' | 'outputs', by: string])[]>> = {
  'runs.demand': [['devices', 'run']], 'supplies.demand': [['devices', 'rail'], ['outputs', 'rail']],
  'feeds.drawn': [['outputs', 'feed']],
};
const ALL_OF = { devices: 'connected', outputs: 'current' } as const;
/** What a spreadsheet reads as a number, or as a pattern: groups of such names it would not tell apart. */
const AMBIGUOUS = /[*?~]|^\s*[<>=+\-.,\d]/;
/** The first group of columns of a block: tag, whether own diversity counts, the figure by it. */
const [TAG, COUNTS, OWN] = [0, 1, 2] as const;
/** What the formulas of the sheets are asked for. */
interface Ranges {
  range(sheet: SheetName, key: string, isIssued?: boolean): string | undefined;
  isSafe(sheet: SheetName): boolean;
  /** Whether what a run draws beyond its demand waits for recalculation, in any case. */
  anyWaits(): string;
  /** Ways that share a run with another, of which no formula follows what comes through. */
  sharing(): ReadonlySet<number>;
}

/**
 * Figures that cases change as formulas of a spreadsheet, by two worksheets beside those of the schedule: what each
 * case gives each group, and what is asked of each row in each case. Where tags, groups or factors are such that a
 * spreadsheet would come to something else, the figures stay values.
 */
export class CaseFormulas {
  readonly #schedule: LoadSchedule;
  readonly #ranges: Ranges;
  readonly #groups: readonly string[];
  readonly #isLive: boolean;

  /** @param mayFollow whether any figure of the schedule follows in a spreadsheet. */
  constructor(schedule: LoadSchedule, ranges: Ranges, mayFollow: boolean) {
    this.#schedule = schedule;
    this.#ranges = ranges;
    this.#groups = [...new Set((['types', 'devices', 'outputs', 'factors'] as const)
      .flatMap((sheet) => schedule.rows(sheet).map(({ cells }) => cells.group ?? null)))]
      .filter((group): group is string => typeof group === 'string' && group !== '');
    this.#isLive = mayFollow && this.#canFollow();
  }

  /** Whether a figure of a schedule with cases is another than without them. */
  concerns(sheet: SheetName, key: string): boolean {
    const column = columnOf(sheet, key);
    return GIVEN.has(`${sheet}.${key}`) || (column.role === 'computed'
      && (column.worstOf ?? column.inMarkedCase ?? column.caseTotal) !== undefined);
  }

  /**
   * The formula of a figure that `concerns` cases, without its equals sign; `undefined` where it stays a value.
   * @param plain what it is without cases.
   */
  formula(sheet: SheetName, key: string, row: number, plain: () => string | undefined): string | undefined {
    const column = columnOf(sheet, key);
    const given = GIVEN.has(`${sheet}.${key}`);
    if (filledRows(this.#schedule, 'cases').length === 0) {
      if (given) return plain();
      const marked = column.role === 'computed' ? column.inMarkedCase : undefined;
      return marked === undefined || marked.covering === true ? '""' : this.#cell(sheet, marked.of, row);
    }
    if (!this.#isLive) return undefined;
    if (given) return this.#worst(`${sheet}.${key}` as BlockName, row);
    if (column.role !== 'computed') return undefined;
    if (column.caseTotal !== undefined) {
      const block: BlockName = 'supplies.power';
      return this.#schedule.rows('supplies').length === 0 ? '0' : `SUM(${this.#column(block, OWN + 1 + row)})`;
    }
    if (column.worstOf !== undefined) return this.#worstName(`${sheet}.${column.worstOf}` as BlockName, row);
    const { of, marked, covering = false } = column.inMarkedCase!;
    return this.#inMarked(`${sheet}.${of}` as BlockName, row, marked, covering);
  }

  /** How many rows of a demand lack a factor, of ways those of all on the rail; empty where there are no cases. */
  missing(sheet: SheetName, key: string, row: number): string {
    const name = `${sheet}.${key}` as BlockName;
    const lacking = name === 'ways.demand' ? 'ways.available' : name;
    return GIVEN.has(name) && this.#isLive ? `+${this.#at(lacking, this.#places.unknown, row)}` : '';
  }

  /** The two worksheets; none for a schedule without cases, or where its figures stay values. */
  worksheets(styles: CellStyles): Worksheet[] {
    if (!this.#isLive) return [];
    return [this.#factorSheet(styles), this.#demandSheet(styles)];
  }

  get #cases() {
    return this.#schedule.cases.cases;
  }

  #canFollow(): boolean {
    const { cases } = this.#schedule;
    const rows = this.#schedule.rows('cases');
    if (cases.cases.length === 0 || cases.isCut || rows.some(isBlank) || this.#groups.length === 0) return false;
    if (rows.some((row) => tagOf('cases', row) === '') || !this.#ranges.isSafe('cases')) return false;
    if (this.#groups.some((group) => AMBIGUOUS.test(group))) return false;
    if (new Set(this.#groups.map((group) => group.toLowerCase())).size < this.#groups.length) return false;
    const places = new Set<string>();
    return this.#schedule.rows('factors').every(({ id, cells }) => {
      const target = this.#schedule.target('factors', id, 'case');
      if ((cells.case ?? null) === null || (cells.group ?? null) === null) return true;
      const place = `${target} ${String(cells.group)}`;
      const isNew = target >= 0 && !places.has(place);
      places.add(place);
      return isNew;
    }) && (['runs', 'supplies', 'ways', 'feeds', 'enclosures'] as const).every((sheet) => this.#ranges.isSafe(sheet));
  }

  /** Columns of a block, by what stands in them. */
  get #places() {
    const [cases, groups] = [this.#cases.length, this.#groups.length];
    const rounded = OWN + 1 + cases;
    const lacks = rounded + 1 + cases + 1;
    const connected = lacks + cases + 1;
    return {
      rounded, count: lacks - 1, lacks, unknown: lacks + cases, connected, own: connected + groups,
      counts: connected + 2 * groups, extra: connected + 3 * groups,
    };
  }

  /** Number of the headings of a block on its worksheet, from 1; its rows stand below. */
  #head(block: BlockName): number {
    let line = 1;
    for (const each of BLOCKS) {
      if (each === block) return line + 1;
      line += this.#schedule.rows(sheetOf(each)).length + 3;
    }
    return line;
  }

  get #demandName(): string {
    return `'${worksheetName(this.#schedule.words.say('Demand by case')).replaceAll("'", "''")}'!`;
  }

  get #factorName(): string {
    return `'${worksheetName(this.#schedule.words.say('Factors by case')).replaceAll("'", "''")}'!`;
  }

  #at(block: BlockName, column: number, row: number): string {
    // Without a sign before the line, so that it goes along where rows of a sheet are sorted.
    return `${this.#demandName}$${columnLetters(column)}${this.#head(block) + 1 + row}`;
  }

  #across(block: BlockName, from: number, to: number, row: number): string {
    const line = this.#head(block) + 1 + row;
    return `${this.#demandName}$${columnLetters(from)}${line}:$${columnLetters(to)}${line}`;
  }

  #column(block: BlockName, column: number): string {
    const [first, count] = [this.#head(block) + 1, this.#schedule.rows(sheetOf(block)).length];
    return `${this.#demandName}$${columnLetters(column)}$${first}:$${columnLetters(column)}$${first + count - 1}`;
  }

  #cell(sheet: SheetName, key: string, row: number): string {
    return this.#ranges.range(sheet, key)!.replace(/\$(\d+):.*$/, (_all, first: string) => String(Number(first) + row));
  }

  /** Factors of a case over the groups: `which` of the parts of the worksheet. */
  #factors(which: FactorPart, place: number): string {
    const from = 1 + FACTOR_PARTS.indexOf(which) * this.#groups.length;
    return `${this.#factorName}$${columnLetters(from)}$${place + 2}:$${columnLetters(from + this.#groups.length - 1)}$${place + 2}`;
  }

  get #valid(): string {
    return `${this.#factorName}$A$${this.#cases.length + 3}`;
  }

  /** Figures that count, unrounded: what is unknown in one of them is not known. */
  #worst(block: BlockName, row: number): string {
    const last = OWN + this.#cases.length;
    const all = this.#across(block, OWN, last, row);
    const named = this.#across(block, OWN + 1, last, row);
    const pick = block === 'ways.available' ? 'MIN' : 'MAX';
    const counts = this.#at(block, COUNTS, row);
    return `IF(NOT(${this.#valid}),"",IF(${counts},IF(COUNT(${all})<${this.#cases.length + 1},"",${pick}(${all})),`
      + `IF(COUNT(${named})<${this.#cases.length},"",${pick}(${named}))))`;
  }

  #worstName(block: BlockName, row: number): string {
    const { rounded } = this.#places;
    const figures = this.#across(block, rounded, rounded + this.#cases.length, row);
    const place = `MATCH(MAX(${figures}),${figures},0)`;
    const names = this.#ranges.range('cases', 'case')!;
    return `IF(OR(NOT(${this.#valid}),${this.#worst(block, row)}=""),"",IF(${this.#ranges.anyWaits()},${quoted(this.#schedule.words.say('recalculate'))},IFERROR(IF(${place}=1,"",INDEX(${names},${place}-1)),"")))`;
  }

  #inMarked(block: BlockName, row: number, marked: string, isCovering: boolean): string {
    const { lacks, count } = this.#places;
    const figures = this.#cases.map((_case, place) => {
      const conditions = [
        `${this.#cell('cases', marked, place)}=${quoted(this.#schedule.words.say('yes'))}`,
        ...isCovering ? [`${this.#at(block, lacks + place, row)}=0`, `${this.#at(block, count, row)}>0`] : [],
      ];
      return `IF(AND(${conditions.join(',')}),${this.#at(block, OWN + 1 + place, row)},-1)`;
    });
    const most = `MAX(${figures.join(',')})`;
    const without = isCovering ? '""' : this.#worst(block, row);
    return `IF(NOT(${this.#valid}),"",IF(${most}<0,${without},${most}))`;
  }

  #factorSheet(styles: CellStyles): Worksheet {
    const { words } = this.#schedule;
    const heading = styles.number({ font: 'heading', wraps: true });
    const computed = styles.number({ isComputed: true });
    const range = (key: string) => this.#ranges.range('factors', key) ?? '$A$1:$A$1';
    const groups = this.#groups.length;
    const letter = (which: FactorPart, group: number) =>
      columnLetters(1 + FACTOR_PARTS.indexOf(which) * groups + group);
    const demand = quoted(shownValue(columnOf('factors', 'of'), 'demand', words) as string);
    const hasFactors = this.#schedule.rows('factors').length > 0;
    const cellOf = (which: FactorPart, group: number, place: number): string => {
      const line = place + 2;
      const named = `${range('case')},$A${line},${range('group')},${letter('has', group)}$1`;
      const cell = (of: FactorPart) => `${letter(of, group)}${line}`;
      switch (which) {
        case 'has': return hasFactors ? `COUNTIFS(${named})` : '0';
        case 'demand': return hasFactors ? `COUNTIFS(${named},${range('of')},${demand})` : '0';
        case 'share': return hasFactors ? `SUMIFS(${range('factor')},${named})` : '0';
        case 'unknown': return hasFactors ? `${cell('has')}-COUNTIFS(${named},${range('factor')},">=0")` : '0';
        case 'ofConnected': return `IF(OR(${cell('has')}=0,${cell('demand')}>0),0,${cell('share')})`;
        case 'ofOwn': return `IF(${cell('has')}=0,0,IF(${cell('demand')}>0,${cell('share')},0)-1)`;
        case 'lacks': return `IF(${cell('has')}=0,1,0)`;
      }
    };
    const titles: Readonly<Record<FactorPart, string>> = {
      has: words.say('Number of factors'), demand: words.say('Of demand'), share: words.say('Factor'),
      unknown: words.say('Not known'), ofConnected: words.say('Times connected'), ofOwn: words.say('Times demand'),
      lacks: words.say('Without a factor'),
    };
    const rows: CellToWrite[][] = [
      [words.text(columnOf('cases', 'case').title), ...FACTOR_PARTS.flatMap(() => this.#groups)].map((value) => ({ value, style: heading })),
      ...this.#cases.map(({ name }, place): CellToWrite[] => [
        { value: name, formula: this.#cell('cases', 'case', place), style: computed },
        ...FACTOR_PARTS.flatMap((which) => this.#groups.map((_group, group): CellToWrite =>
          ({ value: this.#factorValue(which, group, place), formula: cellOf(which, group, place), style: computed }))),
      ]),
      ['', ...FACTOR_PARTS.flatMap((which) => this.#groups.map(() => titles[which]))].map((value) => ({ value, style: heading })),
      [{
        value: true, style: computed,
        // A factor of a case or group that was not there when this was written is none of these.
        formula: hasFactors
          ? `SUM($${letter('has', 0)}$2:$${letter('has', groups - 1)}$${this.#cases.length + 1})=SUMPRODUCT((${range('case')}<>"")*(${range('group')}<>""))`
          : 'TRUE()',
      }, { value: words.say('Each factor belongs to one of these cases and groups.'), style: styles.number({}) }],
    ];
    return { name: worksheetName(words.say('Factors by case')), rows, widths: [18], frozen: { rows: 1, columns: 1 } };
  }

  #factorValue(which: FactorPart, group: number, place: number): number {
    const { cases } = this.#schedule;
    const factor = cases.factor(place, cases.placeOf(this.#groups[group]!));
    const share = factor === undefined || Number.isNaN(factor.share) ? 0 : factor.share;
    const has = factor === undefined ? 0 : 1;
    const isOwn = factor?.ofDemand === true;
    switch (which) {
      case 'has': return has;
      case 'demand': return isOwn ? 1 : 0;
      case 'share': return share;
      case 'unknown': return factor !== undefined && Number.isNaN(factor.share) ? 1 : 0;
      case 'ofConnected': return isOwn ? 0 : share;
      case 'ofOwn': return has === 0 ? 0 : (isOwn ? share : 0) - 1;
      case 'lacks': return 1 - has;
    }
  }

  #demandSheet(styles: CellStyles): Worksheet {
    const { words } = this.#schedule;
    const title = styles.number({ font: 'title' });
    const rows = BLOCKS.flatMap((block): CellToWrite[][] => {
      const sheet = sheetOf(block);
      const { title: of } = columnOf(sheet, keyOf(block));
      return [
        [{ value: words.say('{title}: {text}', { title: words.text(SCHEMA[sheet].title), text: words.text(of) }), style: title }],
        this.#headings(block, styles),
        ...this.#schedule.rows(sheet).map((_row, row) => this.#line(block, row, styles)),
        [],
      ];
    });
    return { name: worksheetName(words.say('Demand by case')), rows, widths: [18], frozen: { rows: 0, columns: 1 } };
  }

  #headings(block: BlockName, styles: CellStyles): CellToWrite[] {
    const { words } = this.#schedule;
    const names = this.#cases.map(({ name }) => name);
    const own = words.say('own diversity');
    const of = (title: string, all: readonly string[]) => all.map((text) => words.say('{title}: {text}', { title, text }));
    const heads = [
      words.text(columnOf(sheetOf(block), SCHEMA[sheetOf(block)].tag).title), words.say('Own diversity counts'), own, ...names,
      ...of(words.say('Counts'), [own, ...names]), words.say('Number of loads'),
      ...of(words.say('Without a factor'), names), words.say('Not known'),
      ...LOADS[block] === undefined ? [] : [
        ...of(words.say('Connected'), this.#groups), ...of(words.say('Demand'), this.#groups),
        ...of(words.say('Number of loads'), this.#groups),
      ],
      ...block === 'runs.demand' ? of(words.text(columnOf('runs', 'extra').title), [own, ...names]) : [],
    ];
    return heads.map((value) => ({ value, style: styles.number({ font: 'heading', wraps: true }) }));
  }

  /** A row of a block; figures that the schedule has are written with their formulas. */
  #line(block: BlockName, row: number, styles: CellStyles): CellToWrite[] {
    const [sheet, key] = [sheetOf(block), keyOf(block)];
    const { id } = this.#schedule.rows(sheet)[row]!;
    const style = styles.number({ isComputed: true });
    const { lacks } = this.#places;
    const places = this.#cases.map((_case, place) => place);
    const figure = (place: number) => this.#schedule.inCase(sheet, id, key, place);
    const formula = (text: string, value: CellValue = null): CellToWrite => ({ value, formula: text, style });
    const line = this.#head(block) + 1 + row;
    const own = (column: number) => `$${columnLetters(column)}$${line}`;
    const counts = this.#schedule.countsOwn(sheet, id, key);
    const tag = this.#cell(sheet, SCHEMA[sheet].tag, row);
    const isShared = block === 'ways.demand' && this.#ranges.sharing().has(id);
    const counted = (place: number) => {
      const cell = own(OWN + 1 + place);
      const text = `IF(${cell}="","",ROUND(${cell},9))`;
      return place < 0 ? `IF(${own(COUNTS)},${text},"")` : text;
    };
    return [
      formula(`${tag}&""`, this.#schedule.value(sheet, id, SCHEMA[sheet].tag)),
      formula(`OR(${own(this.#places.count)}=0,SUM(${own(lacks)}:${own(lacks + places.length - 1)})>0)`, counts),
      ...[-1, ...places].map((place) => isShared ? { value: figure(place), style: styles.number({}) }
        : formula(this.#figure(block, row, place), figure(place))),
      ...[-1, ...places].map((place) => formula(counted(place), place < 0 && !counts ? null : figure(place))),
      formula(this.#sums(block, row, 'count')),
      ...places.map((place) => formula(this.#sums(block, row, 'lacks', place))),
      formula(this.#sums(block, row, 'unknown')),
      ...this.#loadCells(block, row, style),
      ...block !== 'runs.demand' ? [] : [-1, ...places].map((place): CellToWrite =>
        this.#extra(row, this.#schedule.inCase('runs', id, 'extra', place), styles)),
    ];
  }

  /** What a run draws beyond its demand in a case: as it was issued, while that of its row is. */
  #extra(row: number, value: number | null, styles: CellStyles): CellToWrite {
    const [tag, extra] = [this.#cell('runs', 'run', row), this.#cell('runs', 'extra', row)];
    const run = tagOf('runs', this.#schedule.rows('runs')[row]!);
    const formula = `IF(AND(EXACT(${tag},${quoted(run)}),${extra}<>${quoted(this.#schedule.words.say('recalculate'))}),`
      + `${value ?? '""'},"")`;
    return { value, formula, style: styles.number({ isComputed: true }) };
  }

  /** What is asked in a case, or by the diversity of rows alone. */
  #figure(block: BlockName, row: number, place: number): string {
    const column = OWN + 1 + place;
    const { extra } = this.#places;
    const [sheet] = block.split('.') as [SheetName];
    const of = (key: string) => this.#cell(sheet, key, row);
    const known = (figure: string, cells: readonly string[]) =>
      `IFERROR(IF(OR(${cells.map((cell) => `${cell}=""`).join(',')}),"",${figure}),"")`;
    const demand = this.#at('supplies.demand', column, row);
    switch (block) {
      case 'runs.demand': return this.#ofLoads(block, row, place);
      case 'supplies.demand':
        return `${this.#ofLoads(block, row, place)}+${this.#sumOf('runs', 'rail', 'runs.demand', extra + 1 + place, block, row)}`;
      case 'supplies.power': return known(`${of('voltage')}*${demand}`, [of('voltage')]);
      case 'supplies.loss': return known(`${of('voltage')}*${demand}*(1/${of('efficiency')}-1)`, [of('voltage'), of('efficiency')]);
      case 'supplies.inputCurrent': {
        const feeds = this.#ranges.range('feeds', 'voltage');
        if (feeds === undefined) return '""';
        const volts = `INDEX(${feeds},MATCH(${of('feed')},${this.#ranges.range('feeds', 'feed')!},0))`;
        return known(`${of('voltage')}*${demand}/(${of('efficiency')}*${volts}*${of('inputPowerFactor')})`,
          [of('voltage'), of('efficiency'), of('feed'), of('inputPowerFactor'), volts]);
      }
      case 'ways.demand':
        return ['demand', 'extra'].map((part) => this.#sumOf(
          'runs', 'way', 'runs.demand', part === 'extra' ? extra + 1 + place : column, block, row)).join('+');
      case 'ways.available': {
        const rails = this.#ranges.range('supplies', 'rail');
        if (rails === undefined) return '""';
        const at = `MATCH(${of('rail')},${rails},0)`;
        const [usable, peak, all] = [
          this.#ranges.range('supplies', 'usable')!, this.#ranges.range('supplies', 'peak')!, this.#column('supplies.demand', column),
        ].map((range) => `INDEX(${range},${at})`);
        return known(`MAX(0,${usable}*${peak}-MAX(0,${all}-${this.#at('ways.demand', column, row)}))`, [of('rail'), usable!, peak!]);
      }
      case 'feeds.drawn':
        return `${this.#ofLoads(block, row, place)}+${this.#sumOf('supplies', 'feed', 'supplies.inputCurrent', column, block, row)}`;
      case 'feeds.demand': {
        const drawn = this.#at('feeds.drawn', column, row);
        const { lacks, count } = this.#places;
        const covered = place < 0 ? 'FALSE()'
          : `AND(${this.#at('feeds.drawn', count, row)}>0,${this.#at('feeds.drawn', lacks + place, row)}=0)`;
        return `IF(${covered},${drawn},${known(`${drawn}*${of('diversity')}`, [of('diversity')])})`;
      }
      case 'enclosures.supplyLoss': return this.#sumOf('supplies', 'enclosure', 'supplies.loss', column, block, row);
    }
  }

  /** A column of a block added up over the rows of a sheet that name a row. */
  #sumOf(from: SheetName, by: string, block: BlockName, column: number, target: BlockName, row: number): string {
    const naming = this.#ranges.range(from, by, true);
    const tag = this.#at(target, TAG, row);
    return naming === undefined ? '0' : `IF(${tag}="",0,SUMIF(${naming},${tag},${this.#column(block, column)}))`;
  }

  /** What loads ask for: by their diversity, with what the case makes of each group. */
  #ofLoads(block: BlockName, row: number, place: number): string {
    const tag = this.#at(block, TAG, row);
    const { connected, own, counts } = this.#places;
    const sums = LOADS[block]!.flatMap(([sheet, by]) => {
      const naming = this.#ranges.range(sheet, by);
      return naming === undefined ? [] : [`SUMIF(${naming},${tag},${this.#ranges.range(sheet, 'demand')!})`];
    });
    const all = sums.length === 0 ? '0' : `IF(${tag}="",0,${sums.join('+')})`;
    if (place < 0) return all;
    return `MAX(0,${all}+SUMPRODUCT(${this.#across(block, connected, own - 1, row)},${this.#factors('ofConnected', place)})`
      + `+SUMPRODUCT(${this.#across(block, own, counts - 1, row)},${this.#factors('ofOwn', place)}))`;
  }

  /** How many loads hang on a row, how many of them a case gives no factor, and how many one that is not known. */
  #sums(block: BlockName, row: number, which: 'count' | 'lacks' | 'unknown', place = 0): string {
    const { count, lacks, unknown, counts, extra } = this.#places;
    const column = which === 'count' ? count : which === 'lacks' ? lacks + place : unknown;
    const through = (from: SheetName, by: string, of: BlockName) => this.#sumOf(from, by, of, column, block, row);
    switch (block) {
      case 'supplies.power': case 'supplies.loss': case 'supplies.inputCurrent': return this.#at('supplies.demand', column, row);
      case 'ways.demand': return through('runs', 'way', 'runs.demand');
      case 'ways.available': {
        const rails = this.#ranges.range('supplies', 'rail');
        const rail = rails === undefined ? '0'
          : `IFERROR(INDEX(${this.#column('supplies.demand', column)},MATCH(${this.#cell('ways', 'rail', row)},${rails},0)),0)`;
        return `${this.#at('ways.demand', column, row)}+${rail}`;
      }
      case 'feeds.demand': return this.#at('feeds.drawn', column, row);
      case 'enclosures.supplyLoss': return through('supplies', 'enclosure', 'supplies.loss');
      default: {
        const tag = this.#at(block, TAG, row);
        const groups = this.#across(block, counts, extra - 1, row);
        const all = LOADS[block]!.flatMap(([sheet, by]) => {
          const naming = this.#ranges.range(sheet, by);
          return naming === undefined ? [] : [`COUNTIF(${naming},${tag})`];
        });
        const loads = all.length === 0 ? '0' : `IF(${tag}="",0,${all.join('+')})`;
        const own = which === 'count' ? loads
          : which === 'lacks' ? `${loads}-SUM(${groups})+SUMPRODUCT(${groups},${this.#factors('lacks', place)})`
            : `${this.#cases.map((_case, at) => `SUMPRODUCT(${groups},${this.#factors('unknown', at)})`).join('+')}+IF(${this.#valid},0,1)`;
        return block === 'supplies.demand' ? `${own}+${through('runs', 'rail', 'runs.demand')}`
          : block === 'feeds.drawn' ? `${own}+${through('supplies', 'feed', 'supplies.inputCurrent')}` : own;
      }
    }
  }

  /** What of each group hangs on a row: connected, by its diversity, and how many rows. */
  #loadCells(block: BlockName, row: number, style: number): CellToWrite[] {
    const loads = LOADS[block];
    if (loads === undefined) return [];
    const tag = this.#at(block, TAG, row);
    return (['connected', 'demand', 'count'] as const).flatMap((which) => this.#groups.map((_group, place): CellToWrite => {
      const group = `${this.#factorName}$${columnLetters(1 + place)}$1`;
      const sums = loads.flatMap(([sheet, by]) => {
        const [naming, groups] = [this.#ranges.range(sheet, by), this.#ranges.range(sheet, 'group')];
        if (naming === undefined || groups === undefined) return [];
        const named = `${naming},${tag},${groups},${group}`;
        if (which === 'count') return [`COUNTIFS(${named})`];
        return [`SUMIFS(${this.#ranges.range(sheet, which === 'demand' ? 'demand' : ALL_OF[sheet])!},${named})`];
      });
      return { formula: sums.length === 0 ? '0' : `IF(${tag}="",0,${sums.join('+')})`, value: null, style };
    }));
  }
}

/** What the worksheet of factors has of each case and group, a part beside the other. */
const FACTOR_PARTS = ['has', 'demand', 'share', 'unknown', 'ofConnected', 'ofOwn', 'lacks'] as const;
type FactorPart = (typeof FACTOR_PARTS)[number];

const sheetOf = (block: BlockName) => block.split('.')[0] as SheetName;
const keyOf = (block: BlockName) => block.split('.')[1]!;
