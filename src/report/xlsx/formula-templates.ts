import { tripMultiple, WAY_KINDS } from '../../electrical/index.ts';
import { STATE_WORDS } from '../model/state-words.ts';
import { columnOf, formatCell, type SheetName } from '../../schedule/index.ts';
import type { SafeSide, Words } from '../../words/index.ts';
import { quoted } from './quoted.ts';

/** Differences that only rounding makes, written as every spreadsheet reads it. */
const ROUNDING = '0.000000001';

/** Limits that other formulas of the workbook read: they stay whole, and are shown with all their decimals. */
export const WHOLE_LIMITS: ReadonlySet<string> = new Set([
  'supplies.usable', 'supplies.batteryNeeded', 'ways.available', 'outputs.rating',
]);

/** Inputs of a row with which its status hangs on more than a spreadsheet can follow: it stands as it is then. */
export const FIXED_BY: Readonly<Record<string, readonly string[]>> = {
  'supplies.status': ['measuredCurrent', 'measuredVoltage', 'overload'],
};

/**
 * Rules that no formula of a spreadsheet follows: those that hold a row against all that hangs on it, and those of what
 * is less than the whole because of another row, in part unknown or named by a tag that stands twice.
 */
export const NOT_FOLLOWED: ReadonlySet<string> = new Set([
  'supply-devices-over-usable', 'supply-devices-over-usable-elsewhere', 'supply-rows-misplaced', 'way-rows-misplaced',
  'supply-trips-no-fuse', 'supply-wrong-voltage', 'supply-devices-wrong-voltage', 'supply-devices-voltage-unknown',
  'way-fuse-unknown', 'way-start-unknown', 'way-trip-below-kind', 'module-common-shared',
  'enclosure-rail-over', 'enclosure-rails-over', 'enclosure-rails-near', 'enclosure-rails-unknown', 'enclosure-rail-absent',
  'branch-over-terminators-on-terminals', 'branch-terminator-midway', 'branch-terminator-half', 'branch-terminators-differ',
  'figure-partial', 'formula-partial', 'tag-not-unique', 'tag-used-twice', 'number-out-of-range',
]);

/**
 * A limit rounded to its safe side. INT goes down for what is below zero too, where the rounding functions of
 * spreadsheets differ.
 */
export function roundedFormula(formula: string, decimals: number, side: SafeSide): string {
  const step = 10 ** decimals;
  return side === 'down'
    ? `INT((${formula})*${step}+${ROUNDING})/${step}`
    : `-INT(-(${formula})*${step}+${ROUNDING})/${step}`;
}

const known = (...paths: readonly string[]) => paths.map((path) => `{${path}}=""`).join(',');

/** Whether one figure exceeds another, rounding apart; not where one of them is unknown. */
const exceeds = (value: string, limit: string) =>
  `IF(OR(${known(value, limit)}),FALSE(),{${value}}-{${limit}}>${ROUNDING}*MAX({${value}},{${limit}}))`;

/** The same of what is reckoned, all of which is known. */
const above = (value: string, limit: string) => `${value}-${limit}>${ROUNDING}*MAX(${value},${limit})`;

/** Whether a figure exceeds what is reckoned from others, rounding apart; not where one of them is unknown. */
const beyond = (value: string, limit: string, ...paths: readonly string[]) =>
  `IF(OR(${known(value, ...paths)}),FALSE(),{${value}}-${limit}>${ROUNDING}*{${value}})`;

/** A value that another row may lack; an empty cell of it would count as 0. */
const ifKnown = (path: string) => `IF({${path}}="","",{${path}})`;

/** Nothing says what a supply gives where it is warm. */
const NO_DERATING = 'AND(NOT(?derating?),{fullUpTo}="")';

/** Whether a battery stands behind a supply, as the schema has it. */
const BUFFERED = 'OR({battery}<>"",IF({standbyHours}="",FALSE(),{standbyHours}>0))';

/** Whether a battery bears what it has to for 20 hours, as `batteryNeeded` has it. */
const SLOW = '{standbyDemand}<={battery}/20';

/** A case that says how much comes together stands for everything at once. */
const unlessTogether = (condition: string) => `IF({togetherDemand}<>"",FALSE(),${condition})`;

/** What a supply gives at least; nothing works where that is 0 or less. */
const LOWEST = `({voltage}*IF(${BUFFERED},MIN(1-{tolerance},0.875),1-{tolerance})-IF({seriesDrop}="",0,{seriesDrop}))`;

/** Ways of mounting an enclosure by what decides on its cooling surface (IEC TR 60890, as `effectiveArea` has it). */
const AGAINST_WALL = ['wall', 'row-end-wall', 'row-middle-wall', 'row-middle-wall-covered'];
const AT_END = ['row-end-free', 'row-end-wall'];
const IN_MIDDLE = ['row-middle-free', 'row-middle-wall', 'row-middle-wall-covered'];

/** What changes on the worksheets mean for statuses. */
interface Changes {
  /** Whether a row differs from what was issued. */
  readonly isAny: string;
  /** Whether a row differs from what was issued in what no formula follows. */
  readonly isUnfollowed: string;
  /** The cells of what runs draw beyond their demand, which ask for recalculation in that word. */
  readonly extra: string;
  readonly recalculate: string;
  /** Whether any of them does. */
  readonly anyWaits: string;
  readonly hasRuns: boolean;
  readonly hasDevices: boolean;
}

/**
 * Spreadsheet formulas of the figures whose rule is more than arithmetic on known values, by sheet and key. Paths stand
 * in braces, as in the rules of the schema; `[key]` is how many rows a total lacks, `?key?` whether a
 * cell is entered, `<sheet.key>` all of a column. A formula gives an empty text where
 * the figure is unknown.
 * @param words the language in which the worksheets give statuses and choices.
 */
export function formulaTemplates(words: Words, changes: Changes): Readonly<Record<string, string>> {
  const yes = quoted(words.say('yes'));
  const called = (state: keyof typeof STATE_WORDS) => quoted(words.say(STATE_WORDS[state]));
  /**
   * The worst that the limits of a row say, in words. What is over stays so; else, where no formula follows a change,
   * or what is added up waits for recalculation, the status does as well.
   */
  const status = (sheet: SheetName, over: readonly string[], near: readonly string[], incomplete: string, waits = 'FALSE()') => ({
    [`${sheet}.over`]: `OR(${over.join(',')})`,
    [`${sheet}.status`]: `IF(OR(${over.join(',')}),${called('over')},IF(OR(${changes.isUnfollowed},${waits}),${quoted(changes.recalculate)},`
      + `IF(OR(${near.join(',')}),${called('near')},IF(${incomplete},${called('incomplete')},${called('ok')}))))`,
  });
  /** Whether a run of a rail waits for recalculation. */
  const waitsOn = (rail: string) => changes.hasRuns
    ? `COUNTIFS(<runs.rail>,${rail},${changes.extra},${quoted(changes.recalculate)})>0` : 'FALSE()';
  const { anyWaits } = changes;
  /** Whether what a row names is not there. */
  const lost = (...tags: readonly string[]) => `OR(${tags.map((tag) =>
    `IF({${tag}}="",FALSE(),IFERROR({${tag}.${tag}}="",TRUE()))`).join(',')})`;
  const choice = (sheet: SheetName, key: string, value: string) =>
    quoted(formatCell(columnOf(sheet, key), value, words, 'show'));
  const isKind = (kind: string) => `{kind}=${choice('outputs', 'kind', kind)}`;
  const direct = `OR(${isKind('dc')},${isKind('dcCoil')})`;
  const spare = 'AND({power}<>"",{power}=0,{ratedCurrent}="")';
  /** Whether the voltage of a load is more than 10 % from that behind its contact. */
  const differs = (path: string) =>
    `IFERROR(IF(OR(${known('voltage', path)}),FALSE(),ABS({voltage}-{${path}})-0.1*{${path}}>${ROUNDING}*{voltage}),FALSE())`;
  /** What a breaker stands: 1.41 × rating × lower end of its band, as `inrushLimit` has it. */
  const breaker = (rated: string, curve: string, pulseFactor: string) =>
    `1.41*{${rated}}*IF({${curve}}="B",3,IF({${curve}}="C",5,10))*{${pulseFactor}}`;
  /** As `startSurge` has it: by the number on a breaker where there is one, else by the peak. */
  const surge = (qty: string, running: string, peak: string) => {
    const isShared = `IFERROR(AND(${[qty, 'maxOnB16', 'feed.rated', 'feed.curve', 'feed.pulseFactor']
      .map((path) => `{${path}}<>""`).join(',')}),FALSE())`;
    const shared = `{${qty}}/({maxOnB16}*{feed.rated}/16*IF({feed.curve}="B",1,5/3))*${breaker('feed.rated', 'feed.curve', 'feed.pulseFactor')}`;
    return `IF({${running}}="","",MAX(0,IF(${isShared},${shared},${peak})-{${running}}))`;
  };
  const isWay = (...kinds: readonly string[]) => `OR(${kinds.map((kind) => `{kind}=${choice('ways', 'kind', kind)}`).join(',')})`;
  const isFuse = (...kinds: readonly string[]) =>
    `OR(${kinds.map((kind) => `{rail.fuseKind}=${choice('supplies', 'fuseKind', kind)}`).join(',')})`;
  const actsFrom = `IF(${isFuse('B')},4,IF(${isFuse('C')},7,10))*{rail.fuse}`;
  /** Whether a way takes the fuse of its supply with it, as `discriminates` has it; not where no rule shows it. */
  const takesFuse = `IFERROR(IF(OR(${known('rail.fuse', 'rail.fuseKind', 'rated', 'kind')}),FALSE(),`
    + `IF(${isWay('electronic')},${above('{rated}', '{rail.fuse}')},IF(${isWay('B', 'C', 'D')},IF(${isFuse('B', 'C', 'D')},`
    + `OR(${above('2*{rated}', '{rail.fuse}')},IF({available}="",FALSE(),NOT(${above(actsFrom, '{available}')}))),FALSE()),`
    + `IF({kind}={rail.fuseKind},${above(`IF(${isWay('gG')},25/16,2)*{rated}`, '{rail.fuse}')},FALSE())))),FALSE())`;
  /** Whether it may do so with a fuse of which the kind is not known: one of its own kind would open too. */
  const mayTakeFuse = 'IFERROR(AND({rail.fuse}<>"",{rail.fuseKind}="",{kind}<>"",'
    + `${above(`IF(${isWay('electronic')},1,IF(${isWay('gG')},25/16,2))*{rated}`, '{rail.fuse}')}),FALSE())`;
  const mounted = (ways: readonly string[]) =>
    `OR(${ways.map((way) => `{mounting}=${choice('enclosures', 'mounting', way)}`).join(',')})`;
  /** The highest unit draw of the devices that name a row [A]. */
  const largestOn = (by: string) => changes.hasDevices
    ? `_xlfn.MAXIFS(<devices.unitDraw>,<devices.${by}>,{${by}},<devices.qty>,"<>0")/1000` : '0';
  return {
    'devices.rail': ifKnown('run.rail'),
    'runs.rail': ifKnown('way.rail'),
    'runs.largest': largestOn('run'),
    'ways.enclosure': ifKnown('rail.enclosure'),
    'ways.trip': WAY_KINDS.reduce((otherwise, kind) => `IF(${isWay(kind)},${tripMultiple(kind)},${otherwise})`, '""'),
    'devices.group': ifKnown('type.group'),
    'devices.unitDraw': 'IF({type.draw}<>"",{type.draw},IF(OR({type.power}="",{rail.voltage}=""),"",{type.power}/{rail.voltage}*1000))',
    'devices.diversity': 'IFERROR(IF({type.diversity}="",1,{type.diversity}),1)',
    'devices.share': `IF(${anyWaits},${quoted(changes.recalculate)},IF(OR(${known('demand', 'rail.usable')}),"",{demand}/{rail.usable}))`,
    'devices.voltageMargin': `IF(OR(${known('terminalVoltage', 'type.minVoltage', 'qty')}),"",`
      + `IF({qty}=0,"",${roundedFormula('{terminalVoltage}-{type.minVoltage}', 2, 'down')}))`,
    // The cells of some spreadsheets count an empty text as 0, others as a fault, so that what is unknown is asked for
    // first.
    'supplies.usable': `IF(OR(${known('rated', 'units', 'derating')},IF({fullUpTo}="",FALSE(),`
      + `OR({lessPerKelvin}="",IFERROR({enclosure.top}="",TRUE())))),"",{rated}*({units}-IF({redundant}=${yes},1,0))*{derating}`
      + '*IF({fullUpTo}="",1,MAX(0,1-{lessPerKelvin}*MAX(0,{enclosure.top}-{fullUpTo}))))',
    'supplies.batteryNeeded': `IF(OR(${known('standbyDemand', 'standbyHours')}),"",1.25*{standbyDemand}*{standbyHours}`
      + `*IF(IF({battery}="",FALSE(),${SLOW}),1,1.75))`,
    'supplies.batteryLasts': `IF(OR(${known('standbyDemand', 'battery')}),"",IF({standbyDemand}=0,"",`
      + `${roundedFormula(`{battery}/(1.25*IF(${SLOW},1,1.75)*{standbyDemand})`, 1, 'down')}))`,
    'supplies.lowest': `IF(OR(${known('voltage', 'tolerance')},IF({redundant}=${yes},{seriesDrop}="",FALSE())),"",`
      + `IF(${LOWEST}>0,${roundedFormula(LOWEST, 2, 'down')},""))`,
    'supplies.highest': `IF(OR(${known('voltage', 'tolerance')}),"",`
      + `${roundedFormula(`{voltage}*IF(${BUFFERED},MAX(1+{tolerance},1.15),1+{tolerance})`, 2, 'up')})`,
    ...status(
      'supplies',
      [
        exceeds('demand', 'usable'), 'IF({usable}="",FALSE(),{usable}<=0)', exceeds('demand', 'fuse'),
        exceeds('batteryNeeded', 'battery'),
        `IF({offAt}="",FALSE(),IFERROR(IF({enclosure.top}="",FALSE(),{offAt}-{enclosure.top}<=${ROUNDING}*MAX({offAt},{enclosure.top})),FALSE()))`,
      ], [
        exceeds('loading', 'target'), unlessTogether(exceeds('connected', 'usable')), unlessTogether(exceeds('connected', 'fuse')),
        beyond('fuse', `{rated}*({units}-IF({redundant}=${yes},1,0))*{peak}`, 'rated', 'units', 'peak'),
        beyond('leastTrip', '{usable}*{peak}', 'usable', 'peak'),
      ],
      `OR(${lost('enclosure', 'feed')},${known('usable', 'target')},[demand]>0,IF({redundant}=${yes},{seriesDrop}="",FALSE()),AND({standbyHours}<>"",{battery}="",{batteryNeeded}<>""),`
      + `IF({enclosure}="",FALSE(),OR({efficiency}="",IF(OR({offAt}<>"",${NO_DERATING}),IFERROR({enclosure.top}="",TRUE()),FALSE()),`
      + `IF(${NO_DERATING},IFERROR(IF({enclosure.top}="",FALSE(),{enclosure.top}-40>${ROUNDING}*{enclosure.top}),FALSE()),FALSE()))),`
      + 'IF({feed}="",FALSE(),OR({efficiency}="",{inputCurrent}="",IFERROR(IF({feed.curve}="",FALSE(),{surge}=""),FALSE()))))',
      // How warm it gets hangs on all that stand in its enclosure.
      `IF(AND({fullUpTo}="",{offAt}=""),${waitsOn('{rail}')},${anyWaits})`,
    ),
    // An unknown rating of one of its ways counts as 0 in the product, so that it is asked for first.
    'supplies.leastTrip': 'IF({rail}="","",IF(OR(COUNTIF(<ways.rail>,{rail})=0,'
      + 'COUNTIF(<ways.rail>,{rail})>COUNTIFS(<ways.rail>,{rail},<ways.rated>,">0",<ways.trip>,">0")),"",'
      + 'SUMPRODUCT(MIN(<ways.rated>*<ways.trip>+1000000000*(<ways.rail><>{rail})))))',
    // What a start adds is less, the more flows before it: where that is a least, it is not known.
    'supplies.surge': `IF(${anyWaits},${quoted(changes.recalculate)},`
      + `${surge('units', 'inputCurrent', 'IF({inputInrush}="",NA(),{units}*{inputInrush})')})`,
    'ways.available': `IF(OR(${known('rail.usable', 'rail.peak', 'rail.demand', 'demand')}),"",`
      + 'MAX(0,{rail.usable}*{rail.peak}-MAX(0,{rail.demand}-{demand})))',
    ...status(
      'ways',
      [exceeds('demand', 'rated'), exceeds('largest', 'rated')], [
        exceeds('loading', 'target'), unlessTogether(exceeds('connected', 'rated')),
        `IF(OR(${known('rated', 'trip', 'available')}),FALSE(),${above('{rated}*{trip}', '{available}')})`, takesFuse,
      ], `OR(${lost('rail', 'enclosure')},${known('rail', 'rated', 'target', 'available')},AND({kind}="",OR({trip}="",NOT(?k2?))),[demand]>0,${mayTakeFuse})`,
      anyWaits,
    ),
    'branches.free': `IF(OR(${known('limit', 'reserve')}),"",${roundedFormula(`INT({limit}*(1-{reserve})+${ROUNDING})-{nodes}`, 0, 'down')})`,
    ...status(
      'branches',
      [
        exceeds('nodes', 'limit'), exceeds('cableLength', 'maxCable'), exceeds('busDemand', 'busCurrent'),
        'IF({terminators}="",FALSE(),{terminators}>2)',
      ], [
        'IF({free}="",FALSE(),{free}<0)', 'IF({terminators}="",FALSE(),{terminators}<2)',
        beyond('busDemand', '{busCurrent}*(1-{reserve})', 'busCurrent', 'reserve'),
      ],
      `OR(${lost('enclosure')},{free}="",[nodes]>0,IF({busCurrent}="",FALSE(),[busDemand]>0),`
        + 'IF({maxCable}="",FALSE(),OR([cableLength]>0,AND({cableLength}=0,{nodes}>0))))',
    ),
    'outputs.voltage': `IF(OR({rail}<>"",${direct}),${ifKnown('rail.voltage')},IFERROR(IF({feed.voltage}="",230,{feed.voltage}),230))`,
    'outputs.powerFactor': `IF(OR({kind}="",${isKind('motor')}),"",IF(${isKind('lamp')},`
      + 'IF({power}="","",IF({power}>25,0.9,IF({power}>10,0.7,0.5))),1))',
    'outputs.efficiency': `IF(OR({kind}="",${isKind('motor')}),"",1)`,
    'outputs.current': 'IF({qty}="","",IF({ratedCurrent}<>"",{qty}*{ratedCurrent},IF({power}="","",IF({power}=0,0,'
      + `IF(OR(${known('voltage', 'powerFactor', 'efficiency')}),"",{qty}*{power}/({voltage}*{powerFactor}*{efficiency}))))))`,
    'outputs.rating': ['resistive', 'lamp', 'motor', 'coil', 'dc', 'dcCoil'].reduce(
      (otherwise, kind) => `IF(${isKind(kind)},${ifKnown(`contact.${kind}`)},${otherwise})`, '""',
    ),
    'outputs.surge': surge('qty', 'current', `IF({inrush}<>"",{qty}*{inrush},IF(OR({kind}="",${isKind('lamp')},`
      + `${isKind('motor')}),NA(),{current}*IF(${isKind('coil')},10,1)))`),
    ...status(
      'outputs',
      [
        exceeds('current', 'rating'), `IFERROR(${exceeds('inrushTotal', 'contact.inrush')},FALSE())`,
        `IFERROR(IF({kind}="",FALSE(),IF(${direct},IF({rail}="",${exceeds('voltage', 'contact.maxDcVoltage')},`
          + `${exceeds('rail.highest', 'contact.maxDcVoltage')}),${exceeds('voltage', 'contact.maxVoltage')})),FALSE())`,
        `IF({rail}="",FALSE(),${differs('rail.voltage')})`,
        `IF(OR({feed}="",{rail}<>"",${direct}),FALSE(),${differs('feed.voltage')})`, `AND({feed}<>"",${direct})`,
      ], [exceeds('loading', 'target')],
      `OR(${lost('contact', 'module', 'feed', 'rail')},${known('current', 'rating', 'target')},`
        + `AND(IF(AND({rail}<>"",${direct}),IFERROR({rail.highest}="",TRUE()),{voltage}=""),NOT(${spare})),AND({rail}<>"",NOT(${direct})),IFERROR(IF(${direct},{contact.maxDcVoltage}="",{contact.maxVoltage}=""),TRUE()),`
        + 'IF({inrush}<>"",{inrushHeadroom}="",'
        + `AND(OR(${isKind('lamp')},${isKind('motor')}),NOT(${spare}))))`,
    ),
    ...status(
      'modules', [exceeds('current', 'common'), exceeds('used', 'outputs')], ['FALSE()'],
      `OR(${lost('enclosure')},AND({common}<>"",[current]>0))`
    ),
    'feeds.inrush': `IF(${anyWaits},${quoted(changes.recalculate)},{connected}+MAX({supplySurge},{outputSurge}))`,
    ...status(
      'feeds',
      [exceeds('demand', 'rated')], [
        exceeds('loading', 'target'),
        `IF(OR(${known('curve', 'rated', 'pulseFactor')}),FALSE(),`
          + `{inrush}-${breaker('rated', 'curve', 'pulseFactor')}>${ROUNDING}*{inrush})`,
      ], `OR(${lost('enclosure')},${known('demand', 'rated', 'target')},[connected]>0,[drawn]>0,AND({curve}<>"",[supplySurge]+[outputSurge]>0))`,
      anyWaits,
    ),
    ...status(
      'enclosures', [exceeds('top', 'maxInside'), beyond('usedWidth', '{rails}*{railLength}', 'rails', 'railLength')],
      [
        `IF(OR(${known('top', 'maxInside')}),FALSE(),NOT({maxInside}-5-{top}>${ROUNDING}*MAX({maxInside},{top})))`,
        'IF({freeWidth}="",FALSE(),{freeWidth}<0)',
      ],
      `OR(${known('height', 'width', 'depth', 'maxInside')},({rails}="")<>({railLength}=""),[supplyLoss]>0,`
        + 'AND({rails}<>"",{railLength}<>"",[usedWidth]>0))',
      // Whether each part finds room on one of its rails no formula follows.
      `OR(${anyWaits},AND({rails}<>"",{railLength}<>"",${changes.isAny}))`,
    ),
    'enclosures.area': `IF(OR(${known('height', 'width', 'depth', 'mounting')}),"",IF(${mounted(['flush'])},0.9*{width}*{height},`
      + `IF(${mounted(['row-middle-wall-covered'])},0.7,1.4)*{width}*{depth}`
      + `+(0.9+IF(${mounted(AGAINST_WALL)},0.5,0.9))*{width}*{height}`
      + `+IF(${mounted(AT_END)},1.4,IF(${mounted(IN_MIDDLE)},1,1.8))*{depth}*{height})/1000000)`,
  };
}
