import { demandCurrent, drawFromPower, exceeds, loadCurrent, roomForMore } from '../electrical/index.ts';
import { tagOf, type ScheduleDocument, type SheetName } from '../schedule/index.ts';
import { message, type Words } from '../words/index.ts';
import type { Workbook } from './workbook.ts';

/** How many more of the same something takes. A count is `null` where any number fits, as one more takes nothing. */
export interface Room {
  /** Up to what it may carry: beyond it is over. */
  readonly count: number | null;
  /** Up to its target, or the reserve of a branch: beyond it is near the limit. */
  readonly withinTarget: number | null;
  readonly sentence: string;
}

/** The sentences about room: any number fits, none does, up to one limit, and up to a limit and a target. */
interface Sentences {
  readonly any: string;
  readonly none: string;
  readonly one: string;
  readonly two: string;
}

const OF_THIS_LOAD: Sentences = {
  any: message('One more of this load takes nothing: any number fits.'),
  none: message('No capacity left for more of this load {before}.'),
  one: message('Capacity left for {count} more of this load {before}.'),
  two: message('Capacity left for {count} more of this load {before}, {within, plural, =0 {none} other {#}} {target}.'),
};

const OF_OUTPUTS: Sentences = {
  ...OF_THIS_LOAD,
  none: message('No capacity left for more outputs {before}.'),
  one: message('Capacity left for {count} more {count, plural, one {output} other {outputs}} {before}.'),
};

const OF_TYPE: Sentences = {
  any: message('One more of the type {type} takes nothing: any number fits.'),
  none: message('No capacity left for more of the type {type} {before}.'),
  one: message('Capacity left for {count} more of the type {type} {before}.'),
  two: message('Capacity left for {count} more of the type {type} {before}, {within, plural, =0 {none} other {#}} {target}.'),
};

/** Where what is taken is known in part only, so that there may be less room. */
const AT_MOST_OF_TYPE: Sentences = {
  ...OF_TYPE,
  one: message('Capacity left for at most {count} more of the type {type} {before}.'),
  two: message(
    'Capacity left for at most {count} more of the type {type} {before}, {within, plural, =0 {none} other {at most #}} {target}.'
  ),
};

const BEFORE_TARGET = message('up to the target');
const VOLTAGE_REMARK = message('How far the voltage falls along its run is not taken into account.');

/** Something that more of the same would use up; NaN is unknown. */
interface Limit {
  /** How far there is room, for the sentence. */
  readonly before: string;
  readonly most: number;
  readonly taken: number;
  readonly each: number;
}

/** A row; below 0 is none. */
type Place = readonly [sheet: SheetName, id: number];

interface Question {
  /** The device type of which there may be more; absent for more of an output’s own load, and of outputs. */
  readonly type?: string;
  readonly said?: Sentences;
  /** Those that are not known are not reckoned with, apart from the first. */
  readonly limits: readonly Limit[];
  /** The first limit again, as far as the design aims to go. */
  readonly target: Limit;
  readonly isPartial: boolean;
  /** What more of the same would load, as far as it has a status. */
  readonly places: readonly Place[];
  /** What else to say, as a message. */
  readonly remark?: string;
}

/**
 * How many more of the same an output, a module, a supply, a way, a run or a branch takes, and of its type the place of
 * a device row: `⌊(limit − taken) ÷ each⌋` for each of its limits, the least of them.
 *
 * @param id row of `outputs`, `modules`, `supplies`, `ways`, `runs`, `branches` or `devices`
 * @param typeId for supplies, ways, runs and branches the device type of which there may be more; an output takes more
 *   of its own load, a module more outputs, a device row more of its type
 * @param isOver whether a row is over a limit: then there is no room on it, whatever it may still carry
 * @returns counts and one sentence that says them; `undefined` for another sheet, without a type where one is needed,
 *   and where what one takes or what may be taken is not known
 */
export function roomIn(
  document: ScheduleDocument, book: Workbook, sheet: SheetName, id: number, typeId: number | undefined, words: Words,
  isOver: (sheet: SheetName, id: number) => boolean,
): Room | undefined {
  const question = sheet === 'outputs' ? ofOutput(book, id)
    : sheet === 'modules' ? ofModule(book, id)
    : sheet === 'devices' ? ofDevice(document, book, id)
    : typeId === undefined ? undefined
      : sheet === 'supplies' ? ofSupply(document, book, id, typeId)
        : sheet === 'ways' ? ofWay(document, book, id, typeId)
        : sheet === 'runs' ? ofRun(document, book, id, typeId)
        : sheet === 'branches' ? ofBranch(document, book, id, typeId) : undefined;
  return question
    && answer(question, words, ({ places }) => places.some(([place, at]) => at >= 0 && isOver(place, at)));
}

function ofOutput(book: Workbook, id: number): Question {
  const own = (key: string) => book.number('outputs', id, key);
  const behind = (key: 'contact' | 'module' | 'feed' | 'rail') => book.target('outputs', id, key);
  const [contact, module, feed, rail] = [behind('contact'), behind('module'), behind('feed'), behind('rail')];
  const known = (key: string) => Number.isNaN(own(key)) ? null : own(key);
  const each = loadCurrent(
    1, known('power'), known('voltage'), known('powerFactor'), known('efficiency'), known('ratedCurrent')) ?? NaN;
  const steady = { before: message('up to the rating'), most: own('rating'), taken: own('current'), each };
  const making = {
    before: message('up to the making capacity of the contact'), most: book.number('contacts', contact, 'inrush'),
    taken: own('inrushTotal'), each: own('inrush'),
  };
  return {
    limits: [steady, making, {
      before: message('up to what the common side of its module carries'), most: book.number('modules', module, 'common'),
      taken: book.number('modules', module, 'current'), each,
    }, {
      before: message('up to the rating of its feed'), most: book.number('feeds', feed, 'rated'),
      taken: book.number('feeds', feed, 'demand'), each: each * book.number('feeds', feed, 'diversity'),
    }, {
      before: message('up to the usable current of its rail'), most: book.number('supplies', rail, 'usable'),
      taken: book.number('supplies', rail, 'demand'), each,
    }], isPartial: false, places: [['outputs', id], ['modules', module], ['feeds', feed], ['supplies', rail]],
    target: { ...steady, before: BEFORE_TARGET, most: steady.most * own('target') },
    ...(isKnown(making) ? {} : { remark: message('Its inrush is not known and not taken into account.') }),
  };
}

function ofModule(book: Workbook, id: number): Question {
  const own = (key: string) => book.number('modules', id, key);
  const taken = { before: message('until all are used'), most: own('outputs'), taken: own('used'), each: 1 };
  return { said: OF_OUTPUTS, limits: [taken], target: taken, isPartial: false, places: [['modules', id]] };
}

/** What one device of a type takes of a rail [A]. */
interface TypeDraw {
  readonly connected: number;
  readonly demand: number;
}

function drawOf(book: Workbook, supply: number, typeId: number): TypeDraw {
  const type = (key: string) => book.number('types', typeId, key);
  const draw = Number.isNaN(type('draw'))
    ? drawFromPower(type('power'), book.number('supplies', supply, 'voltage')) ?? NaN : type('draw');
  const diversity = Number.isNaN(type('diversity')) ? 1 : type('diversity');
  return { connected: draw / 1000, demand: demandCurrent(draw / 1000, diversity) };
}

function supplyLimits(book: Workbook, id: number, { demand }: TypeDraw): readonly [Limit, Limit] {
  const own = (key: string) => book.number('supplies', id, key);
  const usable = {
    before: message('up to the usable current'), most: own('usable'), taken: own('demand'), each: demand,
  };
  return [usable, { ...usable, before: message('up to the rating of its fuse'), most: own('fuse') }];
}

function wayLimits(book: Workbook, id: number, draw: TypeDraw, before: string): readonly [Limit, Limit] {
  const own = (key: string) => book.number('ways', id, key);
  const rating = { before, most: own('rated'), taken: own('demand'), each: draw.demand };
  return [rating, alone(rating, draw)];
}

function wayTarget(book: Workbook, id: number, draw: TypeDraw, before: string): Limit {
  const [[limit], connected] = [wayLimits(book, id, draw, before), book.number('ways', id, 'connected')];
  return aim(
    { ...limit, most: limit.most * book.number('ways', id, 'target') }, atOnce(limit, connected, draw)
  );
}

/** What the cable of a run carries; how far the voltage falls follows from where along it a device stands. */
function cableLimit(book: Workbook, id: number, { connected, demand }: TypeDraw): Limit {
  const own = (key: string) => book.number('runs', id, key);
  return {
    before: message('up to what its cable carries'), most: own('carries'), taken: own('current'),
    each: book.value('runs', id, 'basis') === 'demand' ? demand : connected,
  };
}

function branchLimit(book: Workbook, id: number, typeId: number, before: string): Limit {
  const own = (key: string) => book.number('branches', id, key);
  return { before, most: own('limit'), taken: own('nodes'), each: book.number('types', typeId, 'nodes') };
}

/** What its devices may take from the supply of the bus, where that is entered. */
function busLimit(book: Workbook, id: number, typeId: number): Limit {
  const own = (key: string) => book.number('branches', id, key);
  return {
    before: message('up to what the supply of the bus gives'), most: own('busCurrent'), taken: own('busDemand'),
    each: book.number('types', typeId, 'busDraw') / 1000,
  };
}

function ofSupply(document: ScheduleDocument, book: Workbook, id: number, typeId: number): Question {
  const draw = drawOf(book, id, typeId);
  const [usable, fuse] = supplyLimits(book, id, draw);
  const [connected, target] = ['connected', 'target'].map((key) => book.number('supplies', id, key)) as [number, number];
  return {
    type: typeName(document, typeId), limits: [usable, fuse, alone(usable, draw)],
    target: aim(
      { ...usable, before: BEFORE_TARGET, most: usable.most * target },
      atOnce(usable, connected, draw), atOnce(fuse, connected, draw)
    ),
    isPartial: book.isPartial('supplies', id, 'demand'), places: [['supplies', id]],
    ...(
      Number.isNaN(book.number('supplies', id, 'fullUpTo'))
        ? {}
        : { remark: message('That more load makes its enclosure warmer is not taken into account.') }
    ),
  };
}

function ofRun(document: ScheduleDocument, book: Workbook, id: number, typeId: number): Question {
  const draw = drawOf(book, book.target('runs', id, 'rail'), typeId);
  const cable = cableLimit(book, id, draw);
  const ways = ['way', 'secondWay'].map((by) => book.target('runs', id, by)).filter((way, at) => at === 0 || way >= 0);
  const target = aim(...ways.map((way) => wayTarget(book, way, draw, message('up to the target of its way'))) as [Limit]);
  return {
    type: typeName(document, typeId), limits: [
      cable, alone(cable, draw),
      // How two ways share one more hangs on its place: either has room for all of it.
      ...ways.flatMap((way) => wayLimits(book, way, draw, message('up to the rating of its way'))),
    ],
    target: isKnown(target) ? target : cable,
    isPartial: book.isPartial('runs', id, 'current')
      || ways.some((way) => way >= 0 && book.isPartial('ways', way, 'demand')),
    places: [['runs', id], ...ways.map((way): Place => ['ways', way])],
    remark: VOLTAGE_REMARK,
  };
}

function ofWay(document: ScheduleDocument, book: Workbook, id: number, typeId: number): Question {
  const draw = drawOf(book, book.target('ways', id, 'rail'), typeId);
  return {
    type: typeName(document, typeId), limits: wayLimits(book, id, draw, message('up to the rating')),
    target: wayTarget(book, id, draw, BEFORE_TARGET), isPartial: book.isPartial('ways', id, 'demand'),
    places: [['ways', id]],
  };
}

function ofBranch(document: ScheduleDocument, book: Workbook, id: number, typeId: number): Question {
  const limit = branchLimit(book, id, typeId, message('up to the limit'));
  const bus = busLimit(book, id, typeId);
  const [free, reserve] = ['free', 'reserve'].map((key) => book.number('branches', id, key)) as [number, number];
  const before = message('up to the reserve');
  return {
    type: typeName(document, typeId), limits: [limit, bus],
    target: aim({ ...limit, before, most: free + limit.taken }, { ...bus, before, most: bus.most * (1 - reserve) }),
    isPartial: book.isPartial('branches', id, 'nodes') || (isKnown(bus) && book.isPartial('branches', id, 'busDemand')), places: [['branches', id]],
  };
}

/**
 * More of the type of a device row, where it stands: on its supply, its run and its branch together; on the branch
 * alone where nothing can be said of the supply.
 */
function ofDevice(document: ScheduleDocument, book: Workbook, id: number): Question | undefined {
  const to = (key: string) => book.target('devices', id, key);
  const [type, supply, run, branch] = [to('type'), to('rail'), to('run'), to('branch')];
  if (type < 0) return undefined;
  const question = supply < 0 ? undefined : ofSupply(document, book, supply, type);
  if (question === undefined || !isKnown(question.limits[0]!)) {
    return branch < 0 ? undefined : ofBranch(document, book, branch, type);
  }
  const onRun = run < 0 ? [] : [ofRun(document, book, run, type)];
  const onBranch = branch < 0 ? [] : [{
    ...ofBranch(document, book, branch, type),
    limits: [
      branchLimit(book, branch, type, message('up to the limit of its branch')), busLimit(book, branch, type),
    ],
  }];
  const places = [question, ...onRun, ...onBranch];
  return {
    ...question,
    limits: places.flatMap(({ limits }) => limits),
    target: aim(question.target, ...[...onRun, ...onBranch].map(({ target }) => target)),
    isPartial: places.some(({ isPartial }) => isPartial), places: places.flatMap((place) => place.places),
    ...(run < 0 ? {} : { remark: VOLTAGE_REMARK }),
  };
}

function typeName(document: ScheduleDocument, typeId: number): string {
  const row = document.row('types', typeId);
  return row === undefined ? '' : tagOf('types', row);
}

const isKnown = ({ most, taken, each }: Limit): boolean => !Number.isNaN(most + taken + each);

function roomBelow({ most, taken, each }: Limit): number | null {
  return exceeds(taken, most) ? 0 : roomForMore(most, taken, each);
}

/** The limit that leaves the least room. */
function tightest(limits: readonly Limit[]): Limit {
  return limits.reduce((least, other) =>
    (roomBelow(other) ?? Infinity) < (roomBelow(least) ?? Infinity) ? other : least);
}

/** How far the design aims to go: a target, and what else is near before the limit, as far as it is known. */
const aim = (target: Limit, ...others: readonly Limit[]): Limit => tightest([target, ...others.filter(isKnown)]);

/** The same limit for everything at once: beyond it, what is there lives on diversity. */
const atOnce = (limit: Limit, taken: number, { connected }: TypeDraw): Limit =>
  ({ ...limit, before: message('until all of it at the same time is too much'), taken, each: connected });

/** The same limit for one by itself, which passes it whatever the diversity, or never. */
const alone = (limit: Limit, { connected }: TypeDraw): Limit => ({ ...limit, taken: connected, each: 0 });

function answer(question: Question, words: Words, isOver: (question: Question) => boolean): Room | undefined {
  const { type, said: sentences, limits, target, isPartial, remark } = question;
  const isAsked = isKnown(limits[0]!) && isKnown(target);
  const known = limits.filter(isKnown);
  if (isOver(question) && !(isAsked && roomBelow(tightest(known)) === 0)) {
    return { count: 0, withinTarget: 0, sentence: words.say('No capacity left: what it hangs on is over a limit.') };
  }
  if (!isAsked) return undefined;
  const limit = tightest(known);
  const within = tightest([limit, target]);
  const [count, withinTarget] = [roomBelow(limit), roomBelow(within)];
  const said = sentences ?? (type === undefined ? OF_THIS_LOAD : isPartial ? AT_MOST_OF_TYPE : OF_TYPE);
  const sentence = words.say(count === null || withinTarget === null ? said.any
    : count === 0 ? said.none
      : within === limit ? said.one : said.two, {
    type: type ?? '', count: count ?? 0, within: withinTarget ?? 0,
    before: words.say(limit.before), target: words.say(target.before),
  });
  return { count, withinTarget, sentence: remark === undefined ? sentence : `${sentence} ${words.say(remark)}` };
}
