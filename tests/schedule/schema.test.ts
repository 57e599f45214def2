import { describe, expect, test } from 'vitest';
import { SOLUTIONS } from '../../src/engine/index.ts';
import {
  computedColumns, findColumn, inputColumns, SCHEMA, SHEET_NAMES, type Column, type SheetName,
} from '../../src/schedule/index.ts';

/**
 * Keys in order: what a person fills in | what is worked out. Files and hosts depend on these, by key: columns may come
 * in between, none may go.
 */
const KEYS: Readonly<Record<SheetName, string>> = {
  devices: 'ref area type qty rail branch run distance unitDraw diversity group note | connected demand share nodes terminalVoltage',
  types: 'type description purpose draw power load inrush nodes diversity group minVoltage note |',
  supplies: 'rail purpose voltage rated units redundant target derating fuse fuseKind peak efficiency enclosure offAt width standbyHours battery overload'
    + ' feed inputPowerFactor inputInrush maxOnB16 note | usable connected demand worstCase loading spare limitDiversity fuseLoading leastTrip'
    + ' loss standbyDemand batteryNeeded batteryLasts inputCurrent surge status',
  ways: 'way rail kind rated trip k2 target enclosure width mountedOn note | connected demand worstCase loading available status',
  branches: 'branch limit reserve terminated terminators maxCable enclosure width note'
    + ' | nodes free used cables cableLength status',
  runs: 'run rail way branch conductor pairs length ambient maxDrop grouped temperature basis note'
    + ' | current carries drop dropRatio endVoltage minVoltage faultCurrent maxLength smallestConductor status',
  conductors: 'conductor size resistance maxCurrent maxTemperature baseTemperature source |',
  modules: 'module enclosure common outputs width note | current headroom used free status',
  outputs: 'output module contact load kind qty power voltage powerFactor efficiency ratedCurrent inrush maxOnB16'
    + ' feed rail target area note | current rating loading headroom inrushTotal inrushHeadroom surge status',
  contacts: 'contact resistive lamp motor coil dc dcCoil maxVoltage maxDcVoltage inrush source |',
  feeds: 'feed voltage rated curve diversity target pulseFactor enclosure width note'
    + ' | connected demand loading spare supplySurge outputSurge inrush status',
  enclosures: 'enclosure height width depth mounting transfer topFactor otherLoss ambient maxInside rails railLength reserve note'
    + ' | loss area rise inside top usedWidth freeWidth status',
  terminals: 'terminal strip enclosure potential inside outside core size maxSize bridge partition width wired by on wiredAs checked checkedBy checkedOn checkedAs note | status',
  cases: 'case hours standby together note | demand energy',
  factors: 'case group factor of note |',
};
const UNITS: Readonly<Record<string, string>> = {
  distance: 'm', unitDraw: 'mA', draw: 'mA', minVoltage: 'V', rated: 'A', fuse: 'A', length: 'm', carries: 'A',
  temperature: '°C', available: 'A',
  size: 'mm²', resistance: 'Ω/km', maxCurrent: 'A', maxTemperature: '°C', baseTemperature: '°C', inrush: 'A',
  resistive: 'A', lamp: 'A', motor: 'A', coil: 'A', height: 'mm', width: 'mm',
  depth: 'mm', transfer: 'W/(m²K)', otherLoss: 'W', ambient: '°C', maxInside: '°C', connected: 'A', demand: 'A',
  terminalVoltage: 'V',
  usable: 'A', spare: 'A', current: 'A', drop: 'V', endVoltage: 'V', faultCurrent: 'A', maxLength: 'm', headroom: 'A',
  inrushTotal: 'A',
  inrushHeadroom: 'A', ratedCurrent: 'A', inputInrush: 'A', inputCurrent: 'A', surge: 'A', supplySurge: 'A',
  outputSurge: 'A', common: 'A', dc: 'A', dcCoil: 'A', maxVoltage: 'V', maxDcVoltage: 'V',
  area: 'm²', rise: 'K', inside: '°C', top: '°C', offAt: '°C', usedWidth: 'mm', freeWidth: 'mm', railLength: 'mm',
  standbyHours: 'h', battery: 'Ah', batteryNeeded: 'Ah', batteryLasts: 'h', maxCable: 'm', cableLength: 'm',
};
/** Nobody can know these but the person who enters them. */
const WITHOUT_DEFAULT = ['types.nodes', 'branches.limit'];
const DEFAULTS: Readonly<Record<string, string | number | boolean>> = {
  'types.load': 'current', 'supplies.voltage': 24, 'supplies.units': 1, 'supplies.redundant': false, 'ways.target': 0.8,
  'supplies.derating': 1, 'supplies.target': 0.8, 'supplies.peak': 1, 'supplies.tolerance': 0, 'supplies.maxOutput': 1.5, 'supplies.innerResistance': 0.3,
  'types.voltage': 24, 'branches.reserve': 0, 'runs.pairs': 1,
  'runs.ambient': 30,
  'runs.basis': 'connected', 'runs.maxDrop': 0.05,
  'conductors.maxTemperature': 70,
  'conductors.baseTemperature': 30, 'outputs.qty': 1, 'outputs.target': 0.8,
  'contacts.maxVoltage': 250, 'feeds.pulseFactor': 1, 'feeds.voltage': 230, 'feeds.diversity': 1, 'feeds.target': 0.8,
  'enclosures.transfer': 5.5, 'enclosures.topFactor': 1.3, 'enclosures.reserve': 0.2,
};
/** Empty without harm to the status. */
const OPTIONAL = [
  'supplies.fuse', 'supplies.efficiency', 'supplies.enclosure', 'outputs.inrush', 'outputs.feed', 'outputs.module', 'outputs.rail',
  'outputs.ratedCurrent', 'outputs.maxOnB16', 'supplies.feed', 'supplies.inputPowerFactor', 'supplies.inputInrush',
  'supplies.maxOnB16', 'feeds.curve', 'modules.common', 'modules.outputs', 'contacts.dc', 'contacts.maxDcVoltage',
  'runs.way', 'supplies.fuseKind', 'ways.enclosure', 'ways.width', 'ways.mountedOn', 'terminals.mountedOn',
  'conductors.maxCurrent', 'contacts.inrush', 'types.minVoltage',
  'types.inrush', 'supplies.offAt', 'supplies.width', 'supplies.standbyHours', 'supplies.battery', 'supplies.overload',
  'branches.terminators', 'branches.maxCable', 'branches.enclosure', 'branches.width', 'enclosures.rails',
  'enclosures.railLength',
];

const every: [string, SheetName, Column][] = SHEET_NAMES.flatMap((sheet) =>
  SCHEMA[sheet].columns.map((column): [string, SheetName, Column] => [`${sheet}.${column.key}`, sheet, column]));

test('the sheets are these, in this order', () => {
  expect(SHEET_NAMES).toEqual(Object.keys(KEYS));
  expect(Object.keys(SCHEMA)).toEqual(Object.keys(KEYS));
});

test.each(SHEET_NAMES)('%s has these keys in this order', (sheet) => {
  const fixed = new Set(KEYS[sheet].split(' '));
  const keys = (columns: readonly Column[]) => columns.map(({ key }) => key).filter((key) => fixed.has(key)).join(' ');
  expect(`${keys(inputColumns(sheet))} | ${keys(computedColumns(sheet))}`.trim()).toBe(KEYS[sheet]);
  expect(SCHEMA[sheet].name).toBe(sheet);
  // A factor is named by its group, which stands in one for each case: nothing refers to it.
  expect(findColumn(sheet, SCHEMA[sheet].tag)).toMatchObject(
    sheet === 'factors' ? { kind: 'text' } : { tag: true, kind: 'text', key: SCHEMA[sheet].columns[0]!.key }
  );
});

test('units, defaults and what is optional are as the document says', () => {
  const numbers = every.filter(([, , { kind }]) => kind !== 'text' && kind !== 'reference' && kind !== 'choice');
  for (const [name, , { key, unit, kind }] of numbers) {
    if (kind === 'ratio' || kind === 'boolean') expect([name, unit]).toEqual([name, undefined]);
    if (key in UNITS && name !== 'outputs.area' && name !== 'cases.demand') expect([name, unit]).toEqual([name, UNITS[key]]);
  }
  const inputs =
    SHEET_NAMES.flatMap((sheet) => inputColumns(sheet).map((column) => [`${sheet}.${column.key}`, column] as const));
  expect(Object.fromEntries(inputs.map(([name, column]) => [name, column.default]))).toMatchObject(DEFAULTS);
  for (const name of WITHOUT_DEFAULT) expect([name, Object.fromEntries(inputs)[name]!.default])
    .toEqual([name, undefined]);
  expect(inputs.filter(([, { optional }]) => optional).map(([name]) => name)).toEqual(expect.arrayContaining(OPTIONAL));
});

describe('every column', () => {
  test.each(every)('%s has a title and a line of help', (_name, _sheet, { title, help, key }) => {
    expect(title).toMatch(/^[A-Z]\S*( \S+)*$/);
    expect(help).toMatch(/^[A-Z].*[.]$/);
    expect(help).not.toMatch(/\n/);
    expect(key).toMatch(/^[a-z][A-Za-z0-9]*$/);
  });

  test('that is worked out says how and whence', () => {
    const solved = SOLUTIONS.flatMap(({ sheet, from, gives, givesEach }) =>
      [...gives.map((key) => `${sheet}.${key}`), ...givesEach.map((key) => `${from}.${key}`)]);
    for (const sheet of SHEET_NAMES) {
      for (const column of computedColumns(sheet)) {
        const name = `${sheet}.${column.key}`;
        const isSolved = solved.includes(name);
        const ways = [
          column.rule, column.total, column.status, column.worstOf, column.caseTotal, column.inMarkedCase,
          isSolved || undefined,
        ].map((way) => way !== undefined);
        expect([name, ways.filter(Boolean).length]).toEqual([name, 1]);
        const { rule, total, caseTotal, inMarkedCase } = column;
        const source = (rule ?? total ?? column.solved ?? caseTotal ?? inMarkedCase)?.source;
        if (column.status !== true && column.worstOf === undefined) expect([name, source]).toEqual([name, expect.stringMatching(/\S/)]);
      }
    }
  });

  test('that has a default other than nothing, or a range with a reason, can name its source', () => {
    const silent = [
      'supplies.units', 'supplies.redundant', 'supplies.derating', 'branches.reserve', 'runs.pairs', 'runs.basis',
      'outputs.qty', 'types.load',
    ];
    for (const name of Object.keys(DEFAULTS).filter((each) => !silent.includes(each))) {
      const [sheet, key] = name.split('.') as [SheetName, string];
      expect([name, findColumn(sheet, key)]).toMatchObject([name, { source: expect.stringMatching(/\S/) as string }]);
    }
  });

  test.each(every.filter(([, , column]) => column.role === 'input'))('%s has a default that its own range allows', (
    _name, sheet, column
  ) => {
    if (column.role !== 'input') throw new TypeError('an input is expected');
    const { default: value, min = -Infinity, above = -Infinity, max = Infinity, choices, to, kind } = column;
    if (typeof value === 'number') expect(value >= min && value > above && value <= max).toBe(true);
    if (typeof value === 'string') expect(choices).toContain(value);
    expect(kind === 'choice').toBe(choices !== undefined);
    expect(kind === 'reference').toBe(to !== undefined);
    if (to !== undefined) expect(to).not.toBe(sheet);
  });

  test('titles with units are told apart on their sheet, as CSV headers', () => {
    for (const sheet of SHEET_NAMES) {
      const titles = SCHEMA[sheet].columns.map(({ title }) => title);
      expect(new Set(titles).size).toBe(titles.length);
    }
  });
});
