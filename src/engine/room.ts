import {
  demandCurrent, drawFromPower, exceeds, inrushLimit, loadCurrent, MOST_VOLTAGE_DIFFERENCE, roomForMore, startCurrent,
  type BreakerCurve,
} from '../electrical/index.ts';
import { tagOf, type CellValue, type ScheduleDocument, type SheetName } from '../schedule/index.ts';
import { message, type Words } from '../words/index.ts';
import { runWithMore, type RunWithMore } from './run-with-more.ts';
import { startingOf } from './starting-of.ts';
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
const AT_END = message('They are taken to be at the far end of the run.');
/** A device more than this takes nothing that counts. */
const MANY = 2 ** 20;

/** Something that more of the same would use up; NaN is unknown. */
interface Limit {
  /** How far there is room, for the sentence. */
  readonly before: string;
  readonly most: number;
  readonly taken: number;
  readonly each: number;
  /** What is taken with so many more, where that is not in proportion. */
  readonly used?: (more: number) => number;
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
  /** What else to say, as messages. */
  readonly remarks: readonly string[];
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
  const isPartial = ([['modules', module, 'current'], ['feeds', feed, 'demand'], ['supplies', rail, 'demand']] as const)
    .some(([sheet, at, key]) => at >= 0 && book.isPartial(sheet, at, key));
  return {
    limits: [steady, making, {
      before: message('up to what the common side of its module carries'), most: book.number('modules', module, 'common'),
      taken: book.number('modules', module, 'current'), each,
    }, {
      before: message('up to the rating of its feed'), most: book.number('feeds', feed, 'rated'),
      taken: book.number('feeds', feed, 'demand'), each: each * (book.cases.cases.length > 0 ? 1 : book.number('feeds', feed, 'diversity')),
    }, {
      before: message('up to the usable current of its rail'), most: book.number('supplies', rail, 'usable'),
      taken: book.number('supplies', rail, 'demand'), each,
    }], isPartial: false, places: [['outputs', id], ['modules', module], ['feeds', feed], ['supplies', rail]],
    target: aim(
      { ...steady, before: BEFORE_TARGET, most: steady.most * own('target') }, {
        before: message('up to the target of its feed'), taken: book.number('feeds', feed, 'demand'),
        most: book.number('feeds', feed, 'rated') * book.number('feeds', feed, 'target'),
        each: each * (book.cases.cases.length > 0 ? 1 : book.number('feeds', feed, 'diversity')),
      }, feedStart(book, id, feed, each), {
        before: message('up to the target of its rail'), taken: book.number('supplies', rail, 'demand'), each,
        most: book.number('supplies', rail, 'usable') * book.number('supplies', rail, 'target'),
      },
    ),
    remarks: [
      // That of a coil is taken by its kind.
      ...isKnown(making) || own('surge') > 0 ? [] : [message('Its inrush is not known and not taken into account.')],
      ...!isPartial ? [] : [message('Not all that hangs on its feed, module or rail is known, so that there may be less.')],
    ],
  };
}

/** What the breaker of a feed stands while more of the load of an output start at once. */
function feedStart(book: Workbook, id: number, feed: number, each: number): Limit {
  const on = (key: string) => book.number('feeds', feed, key);
  const surge = (more: number) => book.workOut('outputs', id, 'surge', ({ by, key }) =>
    by !== undefined ? 0 : key === 'qty' ? more : key === 'current' ? more * each : 0);
  const curve = feed < 0 ? null : book.value('feeds', feed, 'curve') as BreakerCurve | null;
  return {
    before: message('until the breaker of its feed may trip when it starts'), taken: 0, each,
    most: curve === null ? NaN : inrushLimit(on('rated'), curve, on('pulseFactor')),
    used: (more) => on('connected') + more * each
      + Math.max(on('supplySurge'), on('outputSurge'), surge(more) ?? NaN),
  };
}

function ofModule(book: Workbook, id: number): Question {
  const own = (key: string) => book.number('modules', id, key);
  const taken = { before: message('until all are used'), most: own('outputs'), taken: own('used'), each: 1 };
  return { said: OF_OUTPUTS, limits: [taken], target: taken, isPartial: false, places: [['modules', id]], remarks: [] };
}

/** What one device of a type takes of a rail [A]. */
interface TypeDraw {
  readonly connected: number;
  readonly demand: number;
  readonly diversity: number;
  /** When it starts [A]; unknown where its type does not say. */
  readonly start: number;
}

function drawOf(book: Workbook, supply: number, typeId: number): TypeDraw {
  const type = (key: string) => book.number('types', typeId, key);
  const draw = Number.isNaN(type('draw'))
    ? drawFromPower(type('power'), book.number('supplies', supply, 'voltage')) ?? NaN : type('draw');
  const own = Number.isNaN(type('diversity')) ? 1 : type('diversity');
  // The most of all cases, each of which has to hold: there may be more room than is said, never less.
  const diversity = book.cases.mostShare(book.cases.placeOf(book.value('types', typeId, 'group')), own,
    book.countsOwn('supplies', supply, 'demand'));
  const connected = draw / 1000;
  return { connected, demand: demandCurrent(connected, diversity), diversity, start: Math.max(connected, type('inrush')) };
}

/** What a run draws more than in proportion, as its voltage falls. */
type More = (more: number) => number;

const NO_MORE: More = () => 0;

/** A limit of what also takes what a run draws more. */
const withMore = (limit: Limit, more: More): Limit =>
  more === NO_MORE ? limit : { ...limit, used: (count) => limit.taken + count * limit.each + more(count) };

function supplyLimits(
  book: Workbook, id: number, draw: TypeDraw, more: More, before: string = message('up to the usable current'),
): readonly [Limit, Limit, Limit] {
  const own = (key: string) => book.number('supplies', id, key);
  const usable = { before, most: own('usable'), taken: own('demand'), each: draw.demand };
  const fuse = { ...usable, before: message('up to the rating of its fuse'), most: own('fuse') };
  return [withMore(usable, more), withMore(fuse, more), alone(usable, draw)];
}

/** A rail of another voltage than a type bears has no room for it, by the same rule as for its device rows. */
function voltageLimits(book: Workbook, supply: number, typeId: number): readonly Limit[] {
  const on = (key: string) => book.number('supplies', supply, key);
  const type = (key: string) => book.number('types', typeId, key);
  const [least, most] = [type('minVoltage'), type('maxVoltage')];
  const limit = { before: message('at the voltage of its rail'), each: 0 };
  return [
    { ...limit, taken: on('highest'), most }, { ...limit, taken: least, most: on('lowest') },
    ...!Number.isNaN(least + most) ? [] : [{
      ...limit, taken: Math.abs(type('voltage') - on('voltage')), most: MOST_VOLTAGE_DIFFERENCE * on('voltage'),
    }],
  ];
}

/** How far the design aims to load a supply: its target, all of it at once, its start and what its ways need to act. */
function supplyTarget(
  book: Workbook, id: number, way: number, draw: TypeDraw, more: More, before: string = BEFORE_TARGET,
): Limit {
  const own = (key: string) => book.number('supplies', id, key);
  const [usable, fuse] = supplyLimits(book, id, draw, NO_MORE);
  const most = own('usable') * own('peak');
  const others = book.members('ways', 'rail', id).filter((other) => other !== way).map((other): Limit => {
    const of = (key: string) => book.number('ways', other, key);
    return {
      before: message('until another way of its rail may not act on a short circuit any more'),
      most: of('available'), taken: of('trip') * of('rated'), each: draw.demand,
    };
  // Of one that may not act as it is that is told, and no room helps.
  }).filter((limit) => !exceeds(limit.taken, limit.most));
  const connected = atOnceOn(book, 'supplies', id);
  return aim(
    withMore({ ...usable, before, most: usable.most * own('target') }, more),
    atOnce(usable, connected, draw, more), atOnce(fuse, connected, draw, more),
    ...others.map((limit) => withMore(limit, more)),
    ...book.value('supplies', id, 'overload') !== 'retries' ? [] : [{
      before: message('until all of it together starts no more'), most, taken: startOn(book, id), each: draw.start,
    }],
  );
}

/** What everything on a supply asks for when all of it starts at once [A]; unknown where that is of a part of it. */
function startOn(book: Workbook, id: number): number {
  const devices = startCurrent(book.members('devices', 'rail', id).map((row) => startingOf(book, row)));
  return book.members('outputs', 'rail', id).reduce((sum, row) => sum + book.number('outputs', row, 'current'), devices);
}

function wayLimits(
  book: Workbook, id: number, draw: TypeDraw, more: More, before: string = message('up to the rating of its way'),
): readonly [Limit, Limit] {
  const own = (key: string) => book.number('ways', id, key);
  const rating = { before, most: own('rated'), taken: own('demand'), each: draw.demand };
  return [withMore(rating, more), alone(rating, draw)];
}

function wayTarget(
  book: Workbook, id: number, draw: TypeDraw, more: More, before: string = message('up to the target of its way'),
): Limit {
  const own = (key: string) => book.number('ways', id, key);
  const [limit] = wayLimits(book, id, draw, NO_MORE, before);
  return aim(
    withMore({ ...limit, most: limit.most * own('target') }, more),
    atOnce(limit, atOnceOn(book, 'ways', id), draw, more),
    ...book.value('ways', id, 'kind') !== 'electronic' ? [] : [{
      ...limit, before: message('until all of it together starts no more'), taken: own('start'),
      each: Number.isNaN(draw.start) ? draw.connected : draw.start,
    }],
  );
}

/** What the cable of a run carries, and how far the voltage may fall on it until a device lacks it. */
function cableLimits(book: Workbook, id: number, draw: TypeDraw, on: RunWithMore): readonly [Limit, Limit, Limit] {
  const own = (key: string) => book.number('runs', id, key);
  const lowest = book.number('supplies', book.target('runs', id, 'rail'), 'lowest');
  const carries = {
    before: message('up to what its cable carries'), most: own('carries'), taken: own('current'),
    each: draw.connected, used: (more: number) => on(more).current,
  };
  return [carries, alone(carries, draw), {
    before: message('until a device on its run has too little voltage'), most: lowest, taken: 0, each: draw.connected,
    used: (more) => lowest - on(more).margin,
  }];
}

/** How far the voltage of a run is to fall. */
function dropLimit(book: Workbook, id: number, draw: TypeDraw, on: RunWithMore): Limit {
  const most = book.number('runs', id, 'maxDrop') * book.number('supplies', book.target('runs', id, 'rail'), 'voltage');
  return {
    before: message('up to the drop that its run may have'), most, taken: 0, each: draw.connected,
    used: (more) => on(more).drop,
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
  return {
    type: typeName(document, typeId),
    limits: [...supplyLimits(book, id, draw, NO_MORE), ...voltageLimits(book, id, typeId)],
    target: supplyTarget(book, id, -1, draw, NO_MORE),
    isPartial: book.isPartial('supplies', id, 'demand'), places: [['supplies', id]],
    remarks: [...warmthRemark(book, id), ...cableRemark(book, typeId)],
  };
}

/** What is said of a supply in an enclosure. */
const warmthRemark = (book: Workbook, supply: number): readonly string[] =>
  book.target('supplies', supply, 'enclosure') < 0
    ? [] : [message('That more load makes its enclosure warmer is not taken into account.')];

/** What is said where it is not known on which run they are to be. */
const cableRemark = (book: Workbook, typeId: number): readonly string[] =>
  book.value('types', typeId, 'load') !== 'power'
    ? [] : [message('What they draw more as the voltage falls along a cable is not taken into account.')];

/** More of a type on a run, at one place or at its far end, with all that the run hangs on. */
function ofRun(
  document: ScheduleDocument, book: Workbook, id: number, typeId: number, distance: CellValue = null,
): Question & { readonly onRail: readonly Limit[] } {
  const rail = book.target('runs', id, 'rail');
  const draw = drawOf(book, rail, typeId);
  const on = runWithMore(book, id, typeId, draw, distance);
  // While its cable is not known, no more is reckoned with, and there may be less room.
  const isKnownExtra = !Number.isNaN(on(0).extra);
  const more: More = isKnownExtra ? (count) => on(count).extra - on(0).extra : NO_MORE;
  const cable = cableLimits(book, id, draw, on);
  const ways = ['way', 'secondWay'].map((by) => book.target('runs', id, by)).filter((way, at) => at === 0 || way >= 0);
  const aims = [
    ...ways.map((way) => wayTarget(book, way, draw, more)), dropLimit(book, id, draw, on),
    supplyTarget(book, rail, ways[0]!, draw, more, message('up to the target of its rail')),
  ].filter(isKnown);
  const onRail = [
    ...supplyLimits(book, rail, draw, more, message('up to the usable current of its rail')),
    ...voltageLimits(book, rail, typeId),
  ];
  return {
    onRail,
    type: typeName(document, typeId), limits: [
      ...cable,
      // How two ways share one more hangs on its place: either has room for all of it.
      ...ways.flatMap((way) => wayLimits(book, way, draw, more)),
      ...onRail,
    ],
    target: aims.length === 0 ? cable[0] : tightest(aims),
    isPartial: !isKnownExtra || book.isPartial('runs', id, 'current') || book.isPartial('supplies', rail, 'demand')
      || ways.some((way) => way >= 0 && book.isPartial('ways', way, 'demand')),
    places: [['runs', id], ['supplies', rail], ...ways.map((way): Place => ['ways', way])],
    remarks: [...distance === null ? [AT_END] : [], ...warmthRemark(book, rail)],
  };
}

function ofWay(document: ScheduleDocument, book: Workbook, id: number, typeId: number): Question {
  const rail = book.target('ways', id, 'rail');
  const draw = drawOf(book, rail, typeId);
  return {
    type: typeName(document, typeId), limits: [
      ...wayLimits(book, id, draw, NO_MORE, message('up to the rating')),
      ...supplyLimits(book, rail, draw, NO_MORE, message('up to the usable current of its rail')),
      ...voltageLimits(book, rail, typeId),
    ],
    target: aim(
      wayTarget(book, id, draw, NO_MORE, BEFORE_TARGET),
      supplyTarget(book, rail, id, draw, NO_MORE, message('up to the target of its rail'))
    ),
    isPartial: book.isPartial('ways', id, 'demand') || book.isPartial('supplies', rail, 'demand'),
    places: [['ways', id], ['supplies', rail]], remarks: [...warmthRemark(book, rail), ...cableRemark(book, typeId)],
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
    remarks: [],
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
  const onRun = run < 0 ? { ...question, onRail: [] } : ofRun(document, book, run, type, book.value('devices', id, 'distance'));
  const onBranch = branch < 0 ? [] : [{
    ...ofBranch(document, book, branch, type),
    limits: [
      branchLimit(book, branch, type, message('up to the limit of its branch')), busLimit(book, branch, type),
    ],
  }];
  const places = [onRun, ...onBranch];
  const { limits, target, onRail } = onRun;
  return {
    ...question,
    limits: [...onRail, ...limits, ...onBranch.flatMap((each) => each.limits)],
    target: aim(target, ...onBranch.map((each) => each.target)),
    isPartial: places.some(({ isPartial }) => isPartial), places: places.flatMap((place) => place.places),
    // Where it stands on its run is known.
    remarks: run < 0 ? question.remarks : warmthRemark(book, supply),
  };
}

function typeName(document: ScheduleDocument, typeId: number): string {
  const row = document.row('types', typeId);
  return row === undefined ? '' : tagOf('types', row);
}

const isKnown = ({ most, taken, each, used }: Limit): boolean =>
  !Number.isNaN(most + taken + each + (used === undefined ? 0 : used(0) + used(1)));

function roomBelow({ most, taken, each, used }: Limit): number | null {
  if (used === undefined || each === 0) return exceeds(taken, most) ? 0 : roomForMore(most, taken, each);
  const isTooMuch = (more: number) => exceeds(used(more), most);
  if (isTooMuch(0)) return 0;
  let fails = 1;
  while (!isTooMuch(fails)) if ((fails *= 2) > MANY) return null;
  let holds = Math.floor(fails / 2);
  while (fails - holds > 1) {
    const middle = (holds + fails) >> 1;
    if (isTooMuch(middle)) fails = middle;
    else holds = middle;
  }
  return holds;
}

/** The limit that leaves the least room. */
function tightest(limits: readonly Limit[]): Limit {
  return limits.reduce((least, other) =>
    (roomBelow(other) ?? Infinity) < (roomBelow(least) ?? Infinity) ? other : least);
}

/** How far the design aims to go: a target, and what else is near before the limit, as far as it is known. */
const aim = (target: Limit, ...others: readonly Limit[]): Limit => tightest([target, ...others.filter(isKnown)]);

/** The same limit for everything at once: beyond it, what is there lives on diversity. */
const atOnce = (limit: Limit, taken: number, { connected }: TypeDraw, more: More): Limit =>
  withMore({ ...limit, before: message('until all of it at the same time is too much'), taken, each: connected }, more);

/** Everything at once on a row [A]; not asked for where a case says how much comes together. */
const atOnceOn = (book: Workbook, sheet: 'supplies' | 'ways', id: number): number =>
  Number.isNaN(book.number(sheet, id, 'togetherDemand')) ? book.number(sheet, id, 'connected') : NaN;

/** The same limit for one by itself, which passes it whatever the diversity, or never. */
const alone = ({ before, most }: Limit, { connected }: TypeDraw): Limit =>
  ({ before, most, taken: connected, each: 0 });

function answer(question: Question, words: Words, isOver: (question: Question) => boolean): Room | undefined {
  const { type, said: sentences, limits, target, isPartial, remarks } = question;
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
  return { count, withinTarget, sentence: [sentence, ...remarks.map((each) => words.say<string>(each))].join(' ') };
}
