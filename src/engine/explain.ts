import {
  columnOf, isNumeric, rowCount, tagOf, withUnit,
  type Column, type Row, type Rule, type ScheduleDocument, type SheetName,
} from '../schedule/index.ts';
import type { Words } from '../words/index.ts';
import { ofRow } from './figure-name.ts';
import { argument, inCasesOf, ruleOf, type Argument, type PreparedRule } from './schema-rules.ts';
import type { Workbook } from './workbook.ts';

/** A value that a figure was worked out from, and the cell that it stands in. */
export interface ExplanationPart {
  readonly path: string;
  readonly label: string;
  /** The label of the same figure in any row: without the tag of this one. */
  readonly labelInGeneral: string;
  readonly sheet: SheetName;
  readonly id: number;
  readonly key: string;
  readonly text: string;
}

/** Why a figure is what it is. */
export interface Explanation {
  /** Name of the figure: `Demand`. */
  readonly title: string;
  /** The rule in words: `connected × diversity`. */
  readonly words: string;
  /** The rule with the numbers in it: `2.40 A × 70 %`; absent where the rule is no calculation. */
  readonly numbers?: string;
  /** The figure with its unit, or that it is not known. */
  readonly result: string;
  /** Of a status: which checks were made, which wait and for what, and which were not asked for. */
  readonly checks?: string;
  readonly source: string;
  readonly parts: readonly ExplanationPart[];
}

/** The explanation as one line: `Demand = connected × diversity = 2.40 A × 70 % = 1.68 A`. */
export function explanationText({ title, words, numbers, result }: Explanation): string {
  return [title, words, ...(numbers === undefined ? [] : [numbers]), result].join(' = ');
}

/**
 * The figure in a cell with its unit, after the sign of one that is less than the whole; what is not known bears none.
 */
function resultOf(book: Workbook, column: Column, sheet: SheetName, id: number, spoken: Words): string {
  const value = book.value(sheet, id, column.key);
  const isPartial = column.role === 'computed' && value !== null && book.isPartial(sheet, id, column.key);
  const sign = isPartial ? column.whenPartial : undefined;
  const text = withUnit(column, value, spoken);
  return sign === undefined ? text : `${sign} ${text}`;
}

/**
 * Explains the figure in a cell.
 * @param spoken the language in which it is explained.
 * @returns `undefined` for a cell that holds a text or is not calculated.
 */
export function explain(
  document: ScheduleDocument, book: Workbook, sheet: SheetName, id: number, key: string, spoken: Words,
): Explanation | undefined {
  const column = columnOf(sheet, key);
  const row = document.row(sheet, id);
  if (row === undefined) return undefined;
  const base = { title: spoken.text(column.title), result: resultOf(book, column, sheet, id, spoken) };
  const place = book.worstPlace(sheet, id, key);
  if (column.role === 'computed' && column.total !== undefined) {
    const { of, words, source } = column.total;
    const all = of.map((each) => ({ ...each, ids: book.members(each.from, each.by, id) }));
    // Of several sheets, those that have no part in it need not be named.
    const taking = all.filter(({ ids }) => ids.length > 0);
    const members = taking.length === 0 ? all.slice(0, 1) : taking;
    const rows = members.map(({ from, ids }) => rowCount(from, ids.length, spoken)).join(' + ');
    const missing = book.missing(sheet, id, key);
    return {
      ...base, words: inCase(spoken.text(words), place, book, spoken), source: spoken.text(source),
      numbers: missing === 0 ? rows : spoken.say('{rows}, {missing} of them not known', { rows, missing }),
      parts: members.flatMap(({ from, sum, times, ids }) => sum === undefined ? []
        : ids.flatMap((member) => [sum, ...(times === undefined ? [] : [times])]
          .map((read) => part(document, book, { path: read, sheet: from, key: read }, member, spoken, place)))),
    };
  }
  if (column.role === 'computed' && (column.caseTotal ?? column.inMarkedCase) !== undefined) {
    const { words, source } = (column.caseTotal ?? column.inMarkedCase)!;
    const args = column.inMarkedCase === undefined ? [] : [argument(sheet, column.inMarkedCase.of)];
    const rule = { words, source };
    const { numbers: _main, ...explained } = explainRule({ sheet, args, rule }, document, book, id, spoken);
    return { ...base, ...explained };
  }
  if (column.role === 'computed' && column.worstOf !== undefined) {
    return { ...base, ...worstOf(book, sheet, id, column.worstOf, spoken), parts: [] };
  }
  const own = row.cells[key] ?? null;
  if (column.role === 'input' && (own !== null || column.derived === undefined)) {
    if (!isNumeric(column) || (own === null && column.default === undefined)) return undefined;
    return {
      ...base, parts: [],
      words: own === null ? spoken.say('default, as nothing is entered here') : spoken.say('entered here'),
      source: own !== null ? origin(row, key, spoken)
        : column.source === undefined ? spoken.say('default of the column') : spoken.text(column.source),
    };
  }
  if (column.role === 'computed' && column.solved !== undefined) {
    const args = column.solved.of.map((path) => argument(sheet, path));
    const { numbers, words, ...explained } =
      explainRule({ sheet, args, rule: column.solved }, document, book, id, spoken, place);
    return {
      ...base, ...explained, words: inCase(words, place, book, spoken), ...(numbers === words ? {} : { numbers }),
    };
  }
  const rule = ruleOf(sheet, key);
  if (rule === undefined) return undefined;
  const explained = explainRule(rule, document, book, id, spoken, place);
  return { ...base, ...explained, words: inCase(explained.words, place, book, spoken) };
}

/** Most cases that an explanation tells, the worst first. */
const MOST_TOLD = 4;

/** Why a case is the worst: what the figure comes to in it and in those that come next. */
function worstOf(
  book: Workbook, sheet: SheetName, id: number, key: string, spoken: Words,
): Pick<Explanation, 'words' | 'numbers' | 'source'> {
  const column = columnOf(sheet, key);
  const names = book.cases.cases.map(({ name }, place) => ({ name, place }));
  const all = [{ name: spoken.say('own diversity'), place: -1 }, ...names]
    .filter(({ place }) => place >= 0 || book.countsOwn(sheet, id, key))
    .map(({ name, place }) => ({ name, value: book.inCase(sheet, id, key, place) }))
    .sort((one, other) => (other.value ?? Infinity) - (one.value ?? Infinity));
  const told = all.slice(0, MOST_TOLD).map(({ name, value }) => `${name} ${withUnit(column, value, spoken)}`);
  return {
    words: spoken.say('the case with the highest {figure}', { figure: spoken.within(column.title) }),
    numbers: [...told, ...all.length > MOST_TOLD ? ['…'] : []].join(', '), source: spoken.say('arithmetic of the load schedule'),
  };
}

/** A rule in words, with the case in which it gives the figure. */
function inCase(words: string, place: number | undefined, book: Workbook, spoken: Words): string {
  return place === undefined || place < 0 ? words
    : spoken.say('{words}, in the case “{worst}”', { words, worst: book.cases.cases[place]!.name });
}

/** Who says what stands in a cell: the list in which devices were counted, else a person. */
function origin({ cells: { source } }: Row, key: string, spoken: Words): string {
  return key === 'qty' && typeof source === 'string' ? spoken.say('counted in {source}', { source })
    : spoken.say('the person who entered it');
}

type Explainable = Pick<PreparedRule, 'sheet' | 'args'> & { readonly rule: Pick<Rule, 'words' | 'source'> };

function explainRule(
  { sheet, args, rule }: Explainable, document: ScheduleDocument, book: Workbook, id: number, spoken: Words,
  place?: number,
): Omit<Explanation, 'title' | 'result'> {
  const holder = ({ by }: Argument) => by === undefined ? id : book.target(sheet, id, by);
  const values = args.map((arg) => holder(arg) < 0 ? null : book.value(arg.sheet, holder(arg), arg.key));
  const template = spoken.text(typeof rule.words === 'string' ? rule.words : rule.words(...values));
  const parts = args.map((arg) => part(document, book, arg, holder(arg), spoken, place));
  const fill = (of: 'label' | 'text') => template.replace(/\{([\w.]+)\}/g, (_all, path: string) =>
    parts.find((each) => each.path === path)![of]);
  const used = parts.filter(({ path }) => template.includes(`{${path}}`));
  return { words: fill('label'), numbers: fill('text'), source: spoken.text(rule.source), parts: used };
}

/** A rule of a sheet in words that hold for every row: `quantity × unit draw ÷ 1000`. */
export function ruleInGeneral(sheet: SheetName, { of, words }: Pick<Rule, 'of' | 'words'>, spoken: Words): string {
  const template = spoken.text(typeof words === 'string' ? words : words(...of.map(() => null)));
  return template.replace(/\{([\w.]+)\}/g, (_all, path: string) => labelOf(argument(sheet, path), '', spoken));
}

/** What a value that a rule reads is called, by the tag of its row where that is another. */
function labelOf({ sheet, key, by }: Argument, tag: string, spoken: Words): string {
  const figure = spoken.within(columnOf(sheet, key).title);
  return by === undefined ? figure : ofRow(sheet, figure, tag, spoken);
}

/** @param place the case in which figures count that are worked out in cases */
function part(
  document: ScheduleDocument, book: Workbook, arg: Argument, id: number, spoken: Words, place?: number,
): ExplanationPart {
  const column = columnOf(arg.sheet, arg.key);
  const how = place === undefined ? undefined : inCasesOf(arg.sheet, arg.key);
  const value = how === undefined ? book.value(arg.sheet, id, arg.key)
    : typeof how === 'object' ? book.shareInCase(arg.sheet, id, arg.key, place!)
    : book.inCase(arg.sheet, id, arg.key, place!);
  const row = document.row(arg.sheet, id);
  const tag = row === undefined ? '' : tagOf(arg.sheet, row);
  const [label, labelInGeneral] = [labelOf(arg, tag, spoken), labelOf(arg, '', spoken)];
  return {
    path: arg.path, label, labelInGeneral, sheet: arg.sheet, id, key: arg.key,
    text: row === undefined ? spoken.say('not known') : withUnit(column, value, spoken),
  };
}
