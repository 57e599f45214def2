import { checkCell, columnOf, detectDecimal, type DecimalSign, type InputColumn } from '../../schedule/index.ts';
import type { Words } from '../../words/index.ts';
import { hasStruck, withoutStruck } from '../marked-text.ts';
import { looksLikeArea } from './area-words.ts';
import type { TakeoffColumn } from './columns.ts';
import { areRivals, areYears, placeOf } from './count-headings.ts';
import { decisionOf, type LineDecision, type TakeoffDecisions } from './decisions.ts';
import { DASH, headingFields } from './find-heading.ts';
import { LineCells } from './line-cells.ts';
import type { Legend } from './legend.ts';
import type { LineDraft, LineFlag } from './line.ts';
import { countsUnits, isEach, perUnit, refsSaid, roomsSaid, unitsSaid } from './per-unit.ts';
import { plainKey, plainWords } from './plain-words.ts';
import { readQuantity, type Quantity } from './quantity.ts';
import type { TakeoffRecord } from './records.ts';
import { ColumnSums } from './running-sums.ts';
import type { Band } from './side-by-side.ts';
import { lineKey, sourceOf, type TakeoffTable } from './source.ts';
import { isStatus, isSuperseded } from './superseded-words.ts';
import { headsSummary, isTotalName, namesTotal } from './total-words.ts';

/** What is known of a list before its lines are read. */
export interface DraftContext {
  readonly table: TakeoffTable;
  readonly columns: readonly TakeoffColumn[];
  readonly headingLine: number | undefined;
  readonly lastHeading: number | undefined;
  readonly decimal?: DecimalSign;
  readonly decisions: TakeoffDecisions;
  /** The area of lines that have no other, by the name of their sheet. */
  readonly sheetArea: string | undefined;
  readonly band?: Band;
  readonly legend: Legend;
  /** Whether a text is the name of a device type or like one. */
  readonly isKnown: (names: readonly string[], exactly: boolean) => boolean;
  readonly words: Words;
}

/** One count of a line: its column where the line has several, and what its heading says. */
interface Count {
  readonly index: number;
  readonly isOneOfSeveral: boolean;
  readonly heading: string;
  /** Its whole heading, where it stands beside the counts of a whole list. */
  readonly askedUnder?: string;
  /** Its whole heading. */
  readonly whole: string;
}

/** How often what is counted is there, and where that is said. */
interface Times {
  readonly times: number;
  readonly where: string;
}

/** A line, or one count of it, on the way to its draft. */
interface Item {
  readonly record: TakeoffRecord;
  readonly count: Count;
  readonly quantity: Quantity;
  /** What stands in the cell, whatever was decided: totals were made of it. */
  readonly written: Quantity;
  /** How many that is where it is there several times, as far as that can be proposed. */
  readonly meant: number;
  readonly names: readonly string[];
  readonly decision: LineDecision | undefined;
}

const QTY = columnOf('devices', 'qty') as InputColumn;
const NO_COUNT: Count = { index: -1, isOneOfSeveral: false, heading: '', whole: '' };
/** The longest title that says no more than that its lines are there already, an option or spares. */
const MOST_TITLE_WORDS = 5;

/** Reads the lines of a list one after another: is each a device, a title, a total or something else? */
export class LineReader {
  readonly #context: DraftContext;
  readonly #decimal: DecimalSign | undefined;
  readonly #cells: LineCells;
  readonly #counts: readonly Count[];
  readonly #total: number | undefined;
  /** The headings above several counts name the devices, and not rooms. */
  readonly #headingsName: boolean;
  /** Sums by column of counts. */
  readonly #sums: ReadonlyMap<number, ColumnSums>;
  /** What devices are called that add up no others. */
  readonly #counted = new Set<string>();
  /** What lines are called that may be totals, with the first of them. */
  readonly #doubted = new Map<string, number>();
  readonly #timesColumn: TakeoffColumn | undefined;
  /** How many there are of what is counted, as said above all lines or by a title, and where. */
  #timesAbove: Times | undefined;
  #timesTitle: Times | undefined;
  /** The same by column, as a line says it of flats that stand beside one another. */
  readonly #timesBelow = new Map<number, Times>();
  /** A title that says that its lines count no longer or perhaps; whether lines stand below it, or titles of places. */
  #aside: { readonly text: string; readonly holds: 'nothing' | 'lines' | 'places'; readonly flag: LineFlag } | undefined;
  /** Lines with a ref, as they stand, with the first of each. */
  readonly #refs = new Map<string, number>();

  constructor(context: DraftContext, records: readonly TakeoffRecord[]) {
    const { columns, sheetArea, words } = context;
    this.#context = context;
    this.#cells = new LineCells(columns, sheetArea, words);
    const counts = columns.filter(({ field }) => field === 'qty');
    this.#counts = counts.length === 0 ? [NO_COUNT]
      : counts.map(({ index, heading, isAsked }) => ({
        index, isOneOfSeveral: counts.length > 1, whole: heading,
        heading: isStatus(heading) || areRivals([heading]) ? '' : placeOf(heading),
        ...(isAsked === true ? { askedUnder: heading } : {}),
      }));
    this.#timesColumn = columns.find(({ field }) => field === 'times');
    this.#total = columns.find(({ field }) => field === 'total')?.index;
    this.#headingsName = headingsName(columns);
    const summed = [...this.#counts.map(({ index }) => index), ...(this.#total === undefined ? [] : [this.#total])];
    this.#sums = new Map(summed.map((index) => [index, new ColumnSums()]));
    this.#decimal = context.decimal ?? detectDecimal(
      this.#counts.flatMap(({ index }) => records.map(({ fields }) => fields[index] ?? '')));
  }

  read(records: readonly TakeoffRecord[]): LineDraft[] {
    const { headingLine, lastHeading, words } = this.#context;
    const headingPlace = records.findIndex(({ line }) => line === headingLine);
    const lastPlace = records.findIndex(({ line }) => line === lastHeading);
    const headings = new Set(headingPlace < 0 ? []
      : records.slice(headingPlace, lastPlace + 1).map(({ fields }) => headingKey(fields)));
    this.#beginPart(records[lastPlace + 1]?.line ?? 1);
    this.#entitle(records.slice(0, Math.max(0, headingPlace)));
    return records.flatMap((record, place) => {
      if (record.fields.every((field) => field === '')) return this.#leaveOut(record, words.say('The line is blank.'));
      if (this.#isCounted(record)) return this.#line(record);
      if (place < headingPlace) return this.#leaveOut(record, words.say('It stands above the headings.'));
      if (place >= headingPlace && place <= lastPlace) return this.#leaveOut(record, words.say('These are the headings.'));
      if (headings.has(headingKey(record.fields))) {
        return this.#leaveOut(record, words.say('The headings are repeated.'));
      }
      return this.#line(record);
    });
  }

  /** «Building A» and «Level 1» right above the headings are the area of what stands below them. */
  #entitle(above: readonly TakeoffRecord[]): void {
    for (const { fields } of above) this.#timesAbove = timesSaid(fields.filter((field) => field !== '').join(' ')) ?? this.#timesAbove;
    const filled = above.map(({ line, fields }) => ({ line, fields, texts: fields.filter((field) => field !== '') }))
      .filter(({ texts }) => texts.length > 0);
    const isTitle = ({ texts }: (typeof filled)[number]) => texts.length === 1 && looksLikeArea(texts[0]!);
    for (const { line, fields, texts } of filled.slice(filled.findLastIndex((each) => !isTitle(each)) + 1)) {
      this.#cells.entitle(line, fields, texts[0]!);
    }
    const last = filled.at(-1)?.texts ?? [];
    if (last.length === 1) this.#asideBelow(last[0]!);
  }

  /** Lines below «Bestand» are asked about, up to the next title that is no place within it. */
  #asideBelow(title: string): void {
    const isPlace = looksLikeArea(title);
    const isSummary = this.#counted.size > 0 && headsSummary(title);
    if (!isPlace && (isSummary || isSuperseded(title) || isStatus(title, MOST_TITLE_WORDS))) {
      this.#aside = { text: title, holds: 'nothing', flag: isSummary ? 'sum' : 'superseded' };
    }
    else if (this.#aside !== undefined && isPlace && this.#aside.holds !== 'lines') this.#aside = { ...this.#aside, holds: 'places' };
    else this.#aside = undefined;
  }

  /** The lines of what is no list. */
  leaveOut(records: readonly TakeoffRecord[], kind: 'legend' | 'none'): LineDraft[] {
    const { words } = this.#context;
    const why = kind === 'legend' ? words.say('It stands in a legend, which counts nothing.')
      : words.say('It stands where there is no list: no column is known to hold quantities.');
    return records.flatMap((record) => this.#isCounted(record) ? this.#line(record)
      : this.#leaveOut(record, record.fields.some((field) => field !== '') ? why : words.say('The line is blank.')));
  }

  /** A line as a whole to which somebody gave a quantity is a device, whatever it looks like. */
  #isCounted(record: TakeoffRecord): boolean {
    return typeof decisionOf(this.#context.decisions.lines, lineKey(this.#source(record, NO_COUNT))) === 'object';
  }

  /** One draft for a line, or one for each of its counts. */
  #line(record: TakeoffRecord): LineDraft[] {
    const { words } = this.#context;
    const texts = record.fields.filter((field) => field !== '');
    const isCounted = this.#isCounted(record);
    if (!isCounted && countsUnits(texts[0] ?? '', false)) {
      const said = texts.length < 3 ? timesSaid(texts.join(' ')) : undefined;
      const byColumn = this.#counts.map(({ index }) => [index, readQuantity(record.fields[index] ?? '', '', this.#decimal).qty] as const);
      if (said !== undefined || (texts.length > 2 && byColumn.some(([, qty]) => qty !== null))) {
        this.#timesTitle = said;
        for (const [index, times] of said === undefined ? byColumn : []) {
          if (times !== null) this.#timesBelow.set(index, { times, where: texts[0]! });
        }
        return [this.#leaveOut(record, words.say('It says how many there are of what is counted: {times}.',
          { times: said?.times ?? byColumn.flatMap(([, qty]) => qty ?? []).join(', ') }))];
      }
    }
    const filled = this.#counts.filter(({ index, isOneOfSeveral }) => {
      const text = record.fields[index] ?? '';
      return !isOneOfSeveral || (!isCounted && text !== '' && !DASH.test(text));
    });
    const counts = filled.length > 0 ? filled
      : [isCounted ? NO_COUNT : { ...NO_COUNT, index: this.#total ?? -1 }];
    const items = counts.map((count) => this.#item(record, count));
    const isTotal = this.#isCalledTotal(record);
    const sumFrom = isTotal ? undefined : this.#unknownSum(items);
    const drafts = items.map((item) => {
      const { decision, names, quantity: { qty } } = item;
      if (decision === 'leave-out') {
        if (!isTotal) this.#add(item, sumFrom);
        return this.#draft(item, 'left-out', [words.say('Left out by decision.')]);
      }
      if (decision === undefined && isTotal) return this.#calledTotal(item);
      return this.#title(item) ?? (names.length > 0 ? this.#device(item, sumFrom) : this.#nameless(item, qty));
    });
    const checked = isTotal && filled.length === 0 ? drafts
      : this.#withTotal(record, items, { filled, isTotal }, drafts);
    if (isTotal && texts.length === 1 && headsSummary(texts[0]!)) this.#asideBelow(texts[0]!);
    if (isTotal && items.some(({ decision }) => decision === undefined)) this.#beginPart(record.line + 1);
    return checked;
  }

  #item(record: TakeoffRecord, count: Count): Item {
    const decision = decisionOf(this.#context.decisions.lines, lineKey(this.#source(record, count)));
    const named = count.isOneOfSeveral && this.#headingsName ? [count.heading] : this.#cells.names(record.fields);
    // What somebody counts is called what it says, as a title is that stands where rooms do.
    const names = named.length > 0 || decision === undefined || decision === 'leave-out' ? named
      : [record.fields.find((text, place) => /\p{L}/u.test(text) && !this.#sums.has(place)) ?? ''];
    const explained = names.length === 1 ? this.#context.legend.find(names[0]!) : undefined;
    const all = new Set([...names, explained?.description ?? ''].filter((name) => name !== ''));
    const unit = this.#cells.cell(record.fields, 'unit');
    const written = readQuantity(record.fields[count.index] ?? '', unit, this.#decimal, this.#context.words);
    const meant = this.#times(written, record, count, unit);
    const quantity = this.#decided(meant, decision);
    return { record, count, decision, names: [...all], written, meant: meant.qty ?? 0, quantity };
  }

  /** «4» under «Flat type A (x3)» is proposed to be 12, as «4» per flat of three; totals are of what is written. */
  #times(written: Quantity, record: TakeoffRecord, count: Count, unit: string): Quantity {
    const { qty, doubt, proposal } = written;
    const { words } = this.#context;
    if (qty === null || qty === 0 || (doubt !== undefined && proposal === undefined && perUnit(unit) === undefined)
      || this.#headingsName || this.#isCalledTotal(record)) return written;
    const per = perUnit(count.whole) ?? perUnit(unit);
    const ref = this.#cells.cell(record.fields, 'ref');
    const refs = count.isOneOfSeveral ? undefined : refsSaid(ref);
    if (refs !== undefined && refs !== qty && doubt === undefined) {
      return { ...written, qty: refs, proposal: refs, doubt: words.say(
        'Its ref “{ref}” names {refs}, and its quantity is {qty}. Confirm it, or say how many there are.', { ref, refs, qty }) };
    }
    const found = this.#timesOf(record, count, unit);
    const text = record.fields[count.index]!;
    if (found === undefined) {
      if (per === undefined || (per === 'place' && this.#cells.places('area').length > 0)) return written;
      return { ...written, qty, proposal: qty, doubt: words.say(
        '“{text}” is “{per}”, and nothing says of how many. Say how many there are in all, or confirm it if there is one.',
        { text, per: perUnit(unit) === undefined ? count.whole : unit }) };
    }
    const { times, where } = found;
    if (times === 1) return written;
    const product = Math.round(qty * times * 1000) / 1000;
    return { ...written, qty: product, proposal: product, doubt: where === count.whole ? words.say(
      '“{text}” in “{unit}” probably means {proposal}. Confirm it, or say how many there are.', { text, unit: where, proposal: product })
      : words.say('“{text}” × {times} (“{where}”) probably means {proposal}. Confirm it, or say how many there are.',
        { text, times, where, proposal: product }) };
  }

  /** How often what a line counts is there: as its own column says, else its heading, its room, the title above. */
  #timesOf({ fields }: TakeoffRecord, { whole, index }: Count, unit: string): Times | undefined {
    const column = this.#timesColumn;
    const own = column === undefined ? null : readQuantity(fields[column.index] ?? '', '', this.#decimal).qty;
    if (own !== null) return { times: own, where: column!.heading };
    const place = this.#cells.placeOf(fields);
    const isPerRoom = isEach(`${fields[index] ?? ''} ${this.#cells.cell(fields, 'note')}`) || (perUnit(whole) ?? perUnit(unit)) === 'place';
    const rooms = isPerRoom ? roomsSaid(place) : undefined;
    if (rooms !== undefined) return { times: rooms, where: place };
    return timesSaid(whole) ?? timesSaid(place) ?? this.#timesBelow.get(index) ?? this.#timesTitle ?? this.#timesAbove;
  }

  #decided({ doubt, ...written }: Quantity, decision: LineDecision | undefined): Quantity {
    const { words } = this.#context;
    if (typeof decision === 'object') {
      const problem = checkCell(QTY, decision.qty, undefined, words);
      if (problem !== undefined) return { qty: null, doubt: problem };
      return { qty: decision.qty, ...(Number.isInteger(decision.qty) ? {} : { isLength: true }) };
    }
    const isTaken = decision === 'take' && written.qty !== null && checkCell(QTY, written.qty) === undefined;
    return doubt === undefined || isTaken ? written : { ...written, doubt };
  }

  /** A total is known by its words. */
  #isCalledTotal({ fields }: TakeoffRecord): boolean {
    const counted = new Set(this.#counts.map(({ index }) => index));
    const names = this.#cells.names(fields);
    const first = fields.find((field, index) => field !== '' && !counted.has(index) && index !== this.#total);
    const isCalled = namesTotal(first ?? '') || names.some(isTotalName) || (names.length === 0 && isTotalName(first ?? ''));
    return isCalled && !this.#context.isKnown(names, true);
  }

  /**
   * The line from which on a line adds up others in each of its counts, where no type is called like it: it may be
   * their total. Where the headings name the types, a single count shows nothing. A tag of its own, as «AL-12», is that
   * of a device; a number alone may be that of a line of a bill, which totals have too.
   */
  #unknownSum(items: readonly Item[]): number | undefined {
    if (/\p{L}.*\d/u.test(this.#cells.cell(items[0]!.record.fields, 'ref'))) return undefined;
    const from = items.map(({ count: { index }, written: { qty } }) => {
      const sums = this.#sums.get(index);
      return qty === null ? undefined : sums?.all.sumsFrom(qty, 2) ?? sums?.plain.sumsFrom(qty, 2);
    });
    if (from.includes(undefined) || (this.#headingsName && items.length === 1)) return undefined;
    const { names } = items[0]!;
    const { isKnown, legend } = this.#context;
    const isType = names.length === 0 || this.#counted.has(plainKey(names[0]))
      || isKnown(names, false) || legend.find(names[0]!) !== undefined;
    return isType && !this.#headingsName ? undefined : from[0];
  }

  #calledTotal(item: Item): LineDraft {
    const { count: { index }, quantity: { qty } } = item;
    const { words } = this.#context;
    const sums = this.#sums.get(index);
    if (qty === null || sums === undefined) {
      return this.#draft(item, 'left-out', [words.say('It is a total without a legible quantity.')], { isTotal: true });
    }
    const [from, fromPlain] = [sums.all.sumsFrom(qty) ?? sums.meant.sumsFrom(qty), sums.plain.sumsFrom(qty)];
    const remark = from !== undefined
      ? words.say('It is a total: {qty} is the sum of the lines from {line} on.', { qty, line: from })
      : fromPlain === undefined ? undefined : words.say(
        'It is a total: {qty} is the sum of the lines from {line} on, without quantities that are not plain counts.',
        { qty, line: fromPlain });
    if (remark !== undefined) return this.#draft(item, 'left-out', [remark], { isTotal: true });
    return this.#draft(item, 'undecided', [words.say(
      'It is called a total and says {qty}, but the lines above come to {expected}. Check both, then leave it out.',
      { qty, expected: sums.all.expected(qty) },
    )], { isTotal: true, flag: 'sum' });
  }

  /** Titles, remarks and lines of nothing. */
  #title(item: Item): LineDraft | undefined {
    const { record, names, quantity } = item;
    if (quantity.qty !== null || quantity.doubt !== undefined) return undefined;
    const { words } = this.#context;
    // «1.2; Ground floor» is a title with its number.
    const filled = record.fields.filter((field) => /[^\d.]/.test(field));
    if (filled.length === 1 && !(names.length > 0 && this.#context.isKnown(names, false))) {
      this.#beginPart(record.line + 1);
      const title = withoutStruck(filled[0]!);
      this.#cells.entitle(record.line, record.fields, title);
      this.#asideBelow(title);
      // «Kitchen» below «Flat type A (x3)» is three kitchens.
      this.#timesTitle = this.#cells.titles.map(timesSaid).findLast((times) => times !== undefined);
      return this.#draft(item, 'left-out', [words.say('It is a title or a remark: a single text without a quantity.')]);
    }
    return names.length > 0 ? undefined
      : this.#draft(item, 'left-out', [words.say('It names no device and has no quantity.')]);
  }

  /** A quantity of nothing; one that is the sum of lines above may be their total, or count once more. */
  #nameless(item: Item, qty: number | null): LineDraft {
    const { record, count, quantity: { doubt } } = item;
    const { words } = this.#context;
    const sums = this.#sums.get(count.index);
    const from = qty === null ? undefined : sums?.all.sumsFrom(qty) ?? sums?.plain.sumsFrom(qty);
    const why = from === undefined
      ? words.say('It has a quantity but names no device. Say what it counts in the takeoff, or leave it out.')
      : words.say('It names no device, and {qty} is the sum of the lines from {line} on. Leave it out if it is their total.',
        { qty: qty!, line: from });
    if (qty === 0) return this.#draft(item, 'left-out', [words.say('There are none: the quantity is 0.')]);
    // What stands in its columns of areas holds for blank cells below.
    this.#cells.area(record);
    if (from === undefined) this.#add(item);
    else sums?.beginPart(record.line + 1);
    return this.#draft(item, 'undecided', [why, ...(doubt === undefined ? [] : [doubt])], from === undefined ? {} : { flag: 'sum' });
  }

  #device(item: Item, sumFrom: number | undefined): LineDraft {
    const { record, count, names, decision, quantity: { qty, proposal, isFraction } } = item;
    const doubt = isFraction === true ? undefined : item.quantity.doubt;
    const { words } = this.#context;
    const place = (count.isOneOfSeveral || this.#isPlace(count)) && !this.#headingsName ? count.heading : '';
    const { area, remark, below } = this.#cells.area(record, place);
    this.#add(item, sumFrom);
    const name = plainKey(names[0]);
    if (sumFrom === undefined) this.#counted.add(name);
    else if (decision === undefined && !this.#doubted.has(name)) this.#doubted.set(name, record.line);
    const doubted = sumFrom === undefined && !this.#context.isKnown(names, false) ? this.#doubted.get(name) : undefined;
    if (this.#aside?.holds === 'nothing') this.#aside = { ...this.#aside, holds: 'lines' };
    const flagged = qty === 0 ? undefined : this.#flagged(record, count, names) ?? (sumFrom === undefined ? undefined
      : { flag: 'sum' as const, why: words.say(
        'It may be a total: {qty} is the sum of the lines from {line} on. Take it if it counts besides, or leave it out.',
        { qty: item.written.qty!, line: sumFrom }) })
      ?? (doubted === undefined ? undefined : { flag: 'sum' as const, why: words.say(
        'Line {line}, which is called the same, may be a total, so that this one may be one too. Take it if it counts, or leave it out.',
        { line: doubted }) });
    const asked = decision === undefined ? flagged?.why : undefined;
    const kind = doubt !== undefined || qty === null || asked !== undefined ? 'undecided' : qty === 0 ? 'left-out' : 'device';
    const remarks = [
      asked, doubt ?? (qty === null ? words.say('It has no quantity. Say how many there are.') : undefined),
      qty === 0 ? words.say('There are none: the quantity is 0.') : undefined, remark,
    ].filter((each) => each !== undefined);
    const explained = this.#context.legend.find(names[0]!)?.facts;
    return {
      ...this.#draft(item, kind, remarks, { flag: flagged?.flag ?? (proposal === undefined ? undefined : 'proposal') }),
      names, ...(below === undefined ? {} : { below }),
      cells: { ...this.#cells.cells(record.fields), ...(area === undefined ? {} : { area }) },
      facts: { ...explained, ...this.#cells.facts(record.fields, this.#decimal) },
    };
  }

  /** Why a device that can be read may count no longer. */
  #flagged(
    { line, fields }: TakeoffRecord, { index, askedUnder }: Count, names: readonly string[],
  ): { readonly flag: LineFlag; readonly why: string } | undefined {
    const { table: { hiddenRows, hiddenColumns, struckRows }, words, isKnown } = this.#context;
    const said = fields.find((text, place) => (isSuperseded(text) || this.#saysStatus(text, place))
      && !(names.includes(text) && isKnown(names, true)));
    const under = this.#aside?.text
      ?? (this.#counts.every((count) => count.askedUnder !== undefined) ? askedUnder : undefined);
    if (said === undefined && under !== undefined) {
      return { flag: this.#aside?.flag ?? 'superseded', why: words.say('It stands under “{heading}”. Take it if it counts all the same, or leave it out.', { heading: under }) };
    }
    if (said !== undefined) {
      return { flag: 'superseded', why: words.say('It says “{text}”. Take it if it counts all the same, or leave it out.', { text: said }) };
    }
    if (struckRows?.has(line - 1) === true) {
      return { flag: 'struck', why: words.say('It is struck through. Take it if it counts all the same, or leave it out.') };
    }
    // What is struck through in a quantity is told with it.
    const struck = fields.find((text, place) => !this.#sums.has(place) && hasStruck(text));
    if (struck !== undefined) {
      return { flag: 'struck', why: words.say('“{text}” is struck through in part. Take what is left of it if it counts, or leave it out.', { text: struck }) };
    }
    if (hiddenRows?.has(line - 1) === true) {
      return { flag: 'hidden', why: words.say('Its row is hidden in the workbook. Take it if it counts, or leave it out.') };
    }
    if (hiddenColumns?.has(index) === true) {
      return { flag: 'hidden', why: words.say('Its column is hidden in the workbook. Take it if it counts, or leave it out.') };
    }
    const same = this.#sameAbove(line, fields);
    if (same !== undefined) {
      return { flag: 'sum', why: words.say('It is the same as line {line}, ref included. Take it if it counts besides, or leave it out.', { line: same }) };
    }
    const guessed = this.#context.columns.find(({ isGuess }) => isGuess === true);
    if (guessed !== undefined) {
      return { flag: 'matrix', why: words.say('“{type}” may be a type and “{area}” a room, or the other way round. Choose what column {column} holds, or take it as it is.', {
        type: names[0]!, area: fields[guessed.index] ?? '', column: guessed.index + 1 }) };
    }
    return askedUnder === undefined ? undefined : { flag: 'sum', why: words.say(
      'It stands under “{heading}”, beside another count. Take it if it counts besides, or leave it out.', { heading: askedUnder }) };
  }

  /** The line above that has the same in every cell, where one of these is a ref: one with a number, as no code has. */
  #sameAbove(line: number, fields: readonly string[]): number | undefined {
    if (!/\d/.test(this.#cells.cell(fields, 'ref'))) return undefined;
    const key = JSON.stringify(fields);
    const first = this.#refs.get(key) ?? line;
    this.#refs.set(key, first);
    return first === line ? undefined : first;
  }

  /** A single count under «Qty L0» is of that place where no column says another. */
  #isPlace({ heading, whole }: Count): boolean {
    return looksLikeArea(heading) && !areYears([heading, heading])
      && perUnit(whole) === undefined && headingFields(heading)[0]?.exact !== true
      && this.#cells.places('area').length === 0;
  }

  /** A status stands in a column of its own or among remarks, or in a name, where it may stand in brackets. */
  #saysStatus(text: string, place: number): boolean {
    const field = this.#context.columns.find(({ index }) => index === place)?.field;
    if (field === undefined || field === 'note') return isStatus(text);
    // «Réserve» is a room too.
    if (field === 'area') return isStatus(text) && !/^r[eé]serve/iu.test(text);
    if (field !== 'type' && field !== 'description') return false;
    if (isStatus(/(?:[([,:;]|\s[–—-])([^([,:;]*)$/u.exec(text)?.[1] ?? '')) return true;
    // «Spare kit» may well be a device; a spare of a known one is a spare.
    const words = text.split(/\s+/);
    return isStatus(text) && (words.length === 1 || this.#context.isKnown([words.filter((word) => !isStatus(word)).join(' ')], false));
  }

  /** Holds the total of a line against its counts. Where they disagree, a person says which are right. */
  #withTotal(
    { fields }: TakeoffRecord, items: readonly Item[],
    { filled, isTotal }: { readonly filled: readonly Count[]; readonly isTotal: boolean }, drafts: readonly LineDraft[],
  ): LineDraft[] {
    const { words } = this.#context;
    const text = this.#total === undefined ? '' : fields[this.#total] ?? '';
    const { qty: total } = readQuantity(text, '', this.#decimal, words);
    const sum = items.reduce((before, { written: { qty } }) => before + (qty ?? 0), 0);
    const sums = this.#total === undefined ? undefined : this.#sums.get(this.#total);
    if (total === null || items.every(({ decision }) => decision !== undefined)) return [...drafts];
    // What a line above says wrong is asked about there, and not at the total once more.
    if (isTotal && sums?.all.sumsFrom(total) !== undefined) return [...drafts];
    if (!isTotal && filled.length > 0) sums?.add(total, false);
    // What is asked about may be part of the total or not.
    const main = items.reduce((before, { count, written: { qty } }) =>
      count.askedUnder === undefined ? before + (qty ?? 0) : before, 0);
    if (filled.length > 0 && [sum, main].some((each) => Math.abs(each - total) < 5e-4)) return [...drafts];
    const why = filled.length > 0
      ? words.say('The line says {total} in all, but its counts come to {sum}. Check them.', { total, sum: Math.round(sum * 1000) / 1000 })
      : words.say('The line says {total} in all and does not say where. Check it.', { total });
    return drafts.map((draft, place) => items[place]!.decision !== undefined || (total === 0 && sum === 0) ? draft
      : { ...draft, kind: 'undecided', flag: draft.flag ?? 'sum', remarks: [why, ...draft.remarks] });
  }

  /** @param sumFrom the line from which on it may add up others: then it counts besides only by decision. */
  #add(item: Item, sumFrom?: number): void {
    const { record, count: { index }, written: { qty, proposal }, quantity, meant, decision } = item;
    const sums = this.#sums.get(index);
    if (sumFrom !== undefined && (decision === undefined || decision === 'leave-out')) sums?.beginPart(record.line + 1);
    else sums?.add(qty ?? quantity.qty ?? 0, proposal !== undefined, qty === null ? undefined : meant);
  }

  #beginPart(line: number): void {
    for (const sums of this.#sums.values()) sums.beginPart(line);
    this.#cells.endPart();
  }

  #source({ line }: TakeoffRecord, { index, isOneOfSeveral }: Pick<Count, 'index' | 'isOneOfSeveral'>): LineDraft['source'] {
    const { table, band } = this.#context;
    const column = isOneOfSeveral || (band !== undefined && index >= 0) ? index : band?.own[0];
    return sourceOf(table, line, column === undefined ? undefined : column + 1);
  }

  #draft(
    { record, count, quantity: { qty, isLength, isFraction, doubt, proposal } }: Item, kind: LineDraft['kind'], remarks: readonly string[],
    { isTotal = false, flag }: { readonly isTotal?: boolean; readonly flag?: LineFlag | undefined } = {},
  ): LineDraft {
    return {
      source: this.#source(record, count), fields: record.fields, kind, isTotal, qty,
      isLength: isLength === true || isFraction === true, names: [], cells: {}, facts: {}, remarks,
      ...(isFraction === true && doubt !== undefined ? { lengthDoubt: doubt } : {}),
      ...(flag === undefined ? {} : { flag }), ...(proposal === undefined ? {} : { proposal }),
    };
  }

  #leaveOut(record: TakeoffRecord, why: string): LineDraft {
    return {
      source: this.#source(record, { index: -1, isOneOfSeveral: false }), fields: record.fields, kind: 'left-out', isTotal: false, qty: null, isLength: false,
      names: [], cells: {}, facts: {}, remarks: [why],
    };
  }
}

/** How many there are of what is counted, where a text says it. */
function timesSaid(where: string): Times | undefined {
  const times = unitsSaid(where);
  return times === undefined ? undefined : { times, where };
}

/** Whether the headings above several counts name the devices: where no column does, and one holds rooms. */
export function headingsName(columns: readonly TakeoffColumn[]): boolean {
  const fields = columns.map(({ field }) => field);
  return fields.filter((field) => field === 'qty').length > 1 && fields.includes('area')
    && !fields.includes('type') && !fields.includes('description');
}

/** A line of headings in short, to find it repeated. */
export function headingKey(fields: readonly string[]): string {
  return fields.map((field) => plainWords(field).join(' ')).join('|').replace(/\|+$/, '');
}
