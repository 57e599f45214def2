import { loopResistancePerMetre } from '../../electrical/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { columnOf, grouped, SCHEMA, tagOf, titleWithUnit, type Row, type SheetName } from '../../schedule/index.ts';
import { BUS_ENDS, Parts, voltageBand } from '../../terminals/index.ts';
import { numberCell, TO_FILL, textCell, textColumns } from './cells.ts';
import type { ReportCell, ReportSection, ReportTable } from './report.ts';
import { filledRows } from './sheet-section.ts';

/** Voltage that insulation is tested with [V] and the least that it must have [MΩ]: IEC 60364-6, from memory. */
const INSULATION = { elv: { volts: 250, least: 0.5 }, mains: { volts: 500, least: 1 } } as const;
/** Temperature at which a loop is worked out [°C], as tables of conductors have it. */
const COLD = 20;
const NUMBER_TO_FILL: ReportCell = { ...TO_FILL, kind: 'number' };
const TICK_TO_FILL: ReportCell = { ...TO_FILL, text: '☐' };
/** What is not measured there. */
const NOT_HERE: ReportCell = textCell('–');

/** What is measured in each panel, its limits beside it, filled in where it is known; `undefined` where nothing is. */
export function measuringSection(schedule: LoadSchedule): ReportSection | undefined {
  const { words } = schedule;
  const parts = new Parts(schedule.document, schedule.figures);
  const tables = [cableTables, liveTables, busTables].map((tablesOf) => tablesOf(schedule, parts));
  const panels = new Set(tables.flatMap((ofPanels) => [...ofPanels.keys()]));
  if (panels.size === 0) return undefined;
  const instruments = ['', '', ''].map(() => ({ cells: [TO_FILL, TO_FILL, TO_FILL, TO_FILL, TO_FILL] }));
  return {
    name: 'measuring', title: words.say('Measuring sheet'),
    sentences: [
      words.say('By a competent person. Local rules and the makers’ instructions may ask for more.'),
      words.say('Insulation is measured from every conductor to earth, electronics disconnected: with {elv} V at least {elvLeast} MΩ for extra-low voltage, with {mains} V at least {mainsLeast} MΩ for mains (IEC 60364-6).', {
        elv: INSULATION.elv.volts, elvLeast: words.number(INSULATION.elv.least), mains: INSULATION.mains.volts,
        mainsLeast: words.number(INSULATION.mains.least),
      }),
      words.say('The loop is both conductors, joined at the far end, at {cold} °C; copper has 4 % more at 30 °C. Clearly more points to a joint or another cable, clearly less to another length.', { cold: COLD }),
    ],
    tables: [
      ...[...panels].flatMap((panel) => tables.flatMap((ofPanels) => ofPanels.get(panel) ?? [])),
      {
        title: words.say('Instruments'), rows: instruments,
        columns: textColumns(words.say('Instrument'), words.say('Number'), words.say('Calibrated until'), words.say('Name'), words.say('Date')),
      },
    ],
  };
}

type Tables = ReadonlyMap<string, ReportTable>;

/** A line of a table, in the panel where it belongs. */
interface Line {
  readonly panel: string;
  readonly cells: readonly ReportCell[];
}

/** A table for each panel that has lines, its name before the title. */
function byPanel({ words }: LoadSchedule, title: string, columns: ReportTable['columns'], lines: readonly Line[]): Tables {
  return new Map([...grouped(lines, ({ panel }) => panel)].map(([panel, those]) => [panel, {
    title: `${panel === '' ? words.say('In no panel') : panel}: ${title}`, heads: 1, columns, rows: those.map(({ cells }) => ({ cells })),
  }]));
}

const numbers = (...titles: readonly string[]): ReportTable['columns'] => titles.map((title) => ({ title, kind: 'number' as const }));

/** Rows with a tag, the first of each. */
const tagged = (schedule: LoadSchedule, parts: Parts, sheet: SheetName): Row[] =>
  filledRows(schedule, sheet).filter((row) => parts.find(sheet, tagOf(sheet, row)) === row.id);

/** Before energising: insulation, polarity and loop of each cable. */
function cableTables(schedule: LoadSchedule, parts: Parts): Tables {
  const { words } = schedule;
  const cable = (row: Row, sheet: SheetName, panel: string, band: 'elv' | 'mains', loop: number | null | undefined): Line => ({
    panel, cells: [
      textCell(tagOf(sheet, row)), textCell(words.text(SCHEMA[sheet].rowName)),
      numberCell(String(INSULATION[band].volts)), numberCell(words.number(INSULATION[band].least)), NUMBER_TO_FILL,
      TICK_TO_FILL,
      ...loop === undefined ? [NOT_HERE, NOT_HERE] : [numberCell(loop === null ? words.say('not known') : words.number(loop, 3)), NUMBER_TO_FILL],
    ],
  });
  const lines = [
    ...tagged(schedule, parts, 'feeds').map((row) => cable(row, 'feeds', parts.text('feeds', row.id, 'enclosure'), 'mains', undefined)),
    ...tagged(schedule, parts, 'outputs').map((row) => cable(row, 'outputs', parts.enclosureOfOutput(row.id), bandOfOutput(parts, row.id), undefined)),
    ...tagged(schedule, parts, 'runs').map((row) => cable(row, 'runs', parts.enclosureOfRun(row.id), 'elv', loopOf(parts, row.id))),
  ];
  return byPanel(schedule, words.say('cables, before energising'), [
    ...textColumns(words.say('Cable'), words.say('Belongs to')),
    ...numbers(words.say('Test voltage (V)'), words.say('Insulation at least (MΩ)'), words.say('Measured (MΩ)')),
    ...textColumns(words.say('Polarity')), ...numbers(words.say('Loop calculated (Ω)'), words.say('Measured (Ω)')),
  ], lines);
}

/** What is not known to be of extra-low voltage is tested as mains are. */
const bandOfOutput = (parts: Parts, id: number): 'elv' | 'mains' =>
  voltageBand(parts.number('outputs', id, 'voltage'), parts.text('outputs', id, 'kind')) ?? 'mains';

/** Resistance of both conductors of a run, to its far end or from way to way [Ω]. */
function loopOf(parts: Parts, id: number): number | null {
  const conductor = parts.find('conductors', parts.text('runs', id, 'conductor'));
  const ohmPerKm = conductor === undefined ? null : parts.number('conductors', conductor, 'resistance');
  const length = parts.number('runs', id, 'wholeLength') ?? parts.number('runs', id, 'length');
  const pairs = parts.number('runs', id, 'pairs');
  const perMetre = ohmPerKm === null || pairs === null ? null : loopResistancePerMetre(ohmPerKm, COLD, pairs);
  return perMetre === null || length === null ? null : perMetre * length;
}

/** Energised: voltage and current, each with what it may be. */
function liveTables(schedule: LoadSchedule, parts: Parts): Tables {
  const { words } = schedule;
  const figure = (sheet: SheetName, id: number | undefined, key: string): ReportCell => {
    const value = id === undefined ? null : schedule.value(sheet, id, key);
    return numberCell(typeof value !== 'number' ? words.say('not known') : `${schedule.partialSign(sheet, id!, key)}${words.number(value, 2)}`);
  };
  const measured = (sheet: SheetName, { id }: Row, key: string): ReportCell => {
    const value = schedule.value(sheet, id, key);
    return typeof value === 'number' ? numberCell(words.number(value, 2)) : NUMBER_TO_FILL;
  };
  const bound = (supply: number | undefined, end: 'lowest' | 'highest'): ReportCell => {
    const volts = supply === undefined ? null : boundOf(parts, supply, end);
    return numberCell(volts === null ? words.say('not known') : words.number(volts, 2));
  };
  const line = (sheet: SheetName, row: Row, panel: string, cells: readonly ReportCell[]): Line => ({
    panel, cells: [textCell(tagOf(sheet, row)), textCell(words.text(SCHEMA[sheet].rowName)), ...cells],
  });
  const supplyOf = (sheet: 'ways' | 'runs', id: number) => parts.find('supplies', parts.text(sheet, id, 'rail'));
  const lines = [
    ...tagged(schedule, parts, 'feeds').map((row) => line('feeds', row, parts.text('feeds', row.id, 'enclosure'), [
      NOT_HERE, NOT_HERE, NUMBER_TO_FILL, figure('feeds', row.id, 'demand'), figure('feeds', row.id, 'rated'), NUMBER_TO_FILL,
    ])),
    ...tagged(schedule, parts, 'supplies').map((row) => line('supplies', row, parts.text('supplies', row.id, 'enclosure'), [
      bound(row.id, 'lowest'), bound(row.id, 'highest'), measured('supplies', row, 'measuredVoltage'),
      figure('supplies', row.id, 'demand'), figure('supplies', row.id, 'usable'), measured('supplies', row, 'measuredCurrent'),
    ])),
    ...tagged(schedule, parts, 'ways').map((row) => line('ways', row, parts.text('ways', row.id, 'enclosure'), [
      bound(supplyOf('ways', row.id), 'lowest'), bound(supplyOf('ways', row.id), 'highest'), NUMBER_TO_FILL,
      figure('ways', row.id, 'demand'), figure('ways', row.id, 'rated'), NUMBER_TO_FILL,
    ])),
    ...tagged(schedule, parts, 'runs').map((row) => line('runs', row, parts.enclosureOfRun(row.id), [
      figure('runs', row.id, 'minVoltage'), bound(supplyOf('runs', row.id), 'highest'), measured('runs', row, 'measuredVoltage'),
      figure('runs', row.id, 'current'), figure('ways', parts.find('ways', parts.text('runs', row.id, 'way')), 'rated'),
      measured('runs', row, 'measuredCurrent'),
    ])),
    ...tagged(schedule, parts, 'outputs').map((row) => line('outputs', row, parts.enclosureOfOutput(row.id), [
      NOT_HERE, NOT_HERE, NUMBER_TO_FILL, figure('outputs', row.id, 'current'), figure('outputs', row.id, 'rating'), NUMBER_TO_FILL,
    ])),
  ];
  return byPanel(schedule, words.say('energised'), [
    ...textColumns(words.say('Measured at'), words.say('What')),
    ...numbers(
      words.say('Voltage at least (V)'), words.say('at most (V)'), words.say('Measured (V)'),
      words.say('Current calculated (A)'), words.say('at most (A)'), words.say('Measured (A)')),
  ], lines);
}

/** Least or most that may be measured of a supply [V], with what it may differ by, rounded to the safe side. */
function boundOf(parts: Parts, id: number, end: 'lowest' | 'highest'): number | null {
  const [bound, nominal, share] = [end, 'voltage', 'voltageTolerance'].map((key) => parts.number('supplies', id, key)) as
    [number | null, number | null, number | null];
  if (bound === null || nominal === null || share === null) return null;
  return end === 'lowest' ? Math.ceil((bound - share * nominal) * 100 - 1e-6) / 100
    : Math.floor((bound + share * nominal) * 100 + 1e-6) / 100;
}

/** The bus: resistors at its ends, and nodes that answer. */
function busTables(schedule: LoadSchedule, parts: Parts): Tables {
  const { words } = schedule;
  const lines = tagged(schedule, parts, 'branches').map((row): Line => {
    const nodes = schedule.value('branches', row.id, 'nodes');
    const { terminators } = row.cells;
    return {
      panel: parts.text('branches', row.id, 'enclosure'), cells: [
        textCell(tagOf('branches', row)), numberCell(String(BUS_ENDS)), typeof terminators === 'number' ? numberCell(String(terminators)) : NUMBER_TO_FILL,
        numberCell(typeof nodes === 'number' ? `${schedule.partialSign('branches', row.id, 'nodes')}${words.number(nodes)}` : words.say('not known')),
        NUMBER_TO_FILL, TICK_TO_FILL,
      ],
    };
  });
  return byPanel(schedule, words.say('bus'), [
    ...textColumns(words.say('Branch')), ...numbers(words.say('Terminators'), words.say('Found'), titleWithUnit(columnOf('branches', 'nodes'), words), words.say('Answer')),
    ...textColumns(words.say('Polarity')),
  ], lines);
}
