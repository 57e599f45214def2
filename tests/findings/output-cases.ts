import type { Cells } from '../../src/schedule/index.ts';
import type { FindingCase } from './finding-case.ts';

const OUTPUT = (output: Cells, contact: Cells = {}) => ({
  contacts: [{ contact: 'K', resistive: 5, lamp: 2, inrush: 30, ...contact }], feeds: [{ feed: 'F1', rated: 100 }],
  outputs: [{ output: 'Q1', contact: 'K', kind: 'resistive', feed: 'F1', inrush: 0, ...output }],
});

/** A motor whose contact has a rating for it. */
const MOTOR = (output: Cells) =>
  OUTPUT({ kind: 'motor', powerFactor: 0.8, efficiency: 0.7, inrush: 3, ...output }, { motor: 3 });

/** A load of 1 A on a rail of 24 V. */
const ON_RAIL = (output: Cells, contact: Cells = {}) => ({
  ...OUTPUT(
    { kind: 'dc', power: 24, feed: null, rail: 'L1', ...output }, { dc: 5, dcCoil: 2, maxDcVoltage: 30, ...contact },
  ), supplies: [{ rail: 'L1', rated: 10 }],
});

/** Outputs of 3 A each in one module. */
const IN_MODULE = (module: Cells, count: number) => ({
  ...OUTPUT({}), modules: [{ module: 'M', ...module }],
  outputs: Array.from({ length: count }, () => ({ module: 'M', contact: 'K', kind: 'resistive', power: 690, feed: 'F1' })),
});

export const OUTPUT_CASES: readonly FindingCase[] = [
  {
    rule: 'output-over-rating', sheet: 'outputs', sheets: OUTPUT({ power: 1380 }), severity: 'over', key: 'current',
    value: 6, limit: 5, inStatus: true,
    message: 'Output Q1 switches 6.00 A with a contact rated 5.00 A for resistive loads: 1.00 A too much. Share the load over more outputs, use a higher-rated contact, or let it switch a contactor.',
    silent: [OUTPUT({ power: 1150 })],
  },
  {
    rule: 'output-over-feed', sheet: 'outputs', sheets: {
      ...OUTPUT({ power: 1035 }), feeds: [{ feed: 'F1', rated: 4, diversity: 0.5 }],
    }, severity: 'over', key: 'current', value: 4.5, limit: 4, inStatus: true,
    message: 'Output Q1 takes 4.50 A by itself, and its feed is rated 4.00 A: 0.50 A too much, whatever the diversity. Put it on a larger feed, or share the load over more outputs and feeds.',
    silent: [
      { ...OUTPUT({ power: 920 }), feeds: [{ feed: 'F1', rated: 4, diversity: 0.5 }] },
      { ...OUTPUT({ power: 1035 }), feeds: [{ feed: 'F1', rated: 4 }] },
    ],
  },
  {
    rule: 'output-over-inrush', sheet: 'outputs', sheets: OUTPUT(
      { kind: 'lamp', power: 23, qty: 4, inrush: 8 }
    ), severity: 'over', key: 'inrushTotal', value: 32, limit: 30, inStatus: true,
    message: 'Output Q1: its inrush is 32.00 A and the making capacity of its contact 30.00 A: 2.00 A too much. Share the load over more outputs, or limit the inrush. It bears 3 of its 4 loads.',
    silent: [
      OUTPUT({ kind: 'lamp', power: 23, qty: 4, inrush: 7.5 }),
      OUTPUT({ kind: 'lamp', power: 23, qty: 4, inrush: 8 }, { inrush: null }),
    ],
  },
  {
    rule: 'output-over-target', sheet: 'outputs', sheets: OUTPUT({ power: 1035 }), severity: 'near', key: 'loading',
    value: 0.9, limit: 0.8, inStatus: true,
    message: 'Output Q1 is loaded to 90 % of 5.00 A, above its target of 80 % by 0.50 A: share the load over more outputs, or use a higher-rated contact.',
    silent: [OUTPUT({ power: 920 }), OUTPUT({ power: 1380 })],
  },
  {
    rule: 'output-contact-missing', sheet: 'outputs', sheets: OUTPUT({
      contact: null, power: 230,
    }), severity: 'incomplete', key: 'contact', value: null, inStatus: true,
    message: 'Output Q1 has no contact entered, so its rating is not known. Choose one of the contacts.',
    silent: [OUTPUT({ power: 230 })],
  },
  {
    rule: 'output-kind-missing', sheet: 'outputs', sheets: OUTPUT({
      kind: null, power: 230,
    }), severity: 'incomplete', key: 'kind', value: null, inStatus: true,
    message: 'Output Q1 has no kind of load entered, and a contact is rated for each, and 1 row waits for it. Choose resistive, lamp, motor, coil, DC or DC coil.',
    silent: [OUTPUT({ power: 230 })],
  },
  {
    rule: 'output-power-missing', sheet: 'outputs', sheets: OUTPUT({}), severity: 'incomplete', key: 'power',
    value: null, inStatus: true,
    message: 'Output Q1 has no power entered, so its current is not known, and 1 row waits for it. Enter the power of one load in W; 0 for a spare output.',
    silent: [OUTPUT({ power: 0 }), OUTPUT({ power: 230 })],
  },
  {
    rule: 'output-power-factor-missing', sheet: 'outputs', sheets: MOTOR({ power: 230, powerFactor: null }),
    severity: 'incomplete', key: 'powerFactor', value: null, inStatus: true,
    message: 'Output Q1 switches a motor, and its current is not known without its power factor and its efficiency, and 1 row waits for it. Enter both, or its rated current from the plate.',
    silent: [MOTOR({ power: 230 }), MOTOR({ power: 230, powerFactor: null, ratedCurrent: 1 }), OUTPUT({ power: 230 })],
  },
  {
    rule: 'output-efficiency-missing', sheet: 'outputs', sheets: MOTOR({ power: 230, efficiency: null }),
    severity: 'incomplete', key: 'efficiency', value: null, inStatus: true,
    message: 'Output Q1 switches a motor, and its current is not known without its efficiency, and 1 row waits for it. Enter it, 1 where its plate says what it takes in, or its rated current from the plate.',
    silent: [MOTOR({ power: 230 }), MOTOR({ power: 230, efficiency: null, ratedCurrent: 1 }), MOTOR({ power: 0 })],
  },
  {
    rule: 'output-voltage-missing', sheet: 'outputs', sheets: ON_RAIL({ rail: null }), severity: 'incomplete',
    key: 'voltage', value: null, inStatus: true,
    message: 'Output Q1 switches a load on direct current of unknown voltage. Choose the rail that feeds it, or enter its voltage in V.',
    silent: [ON_RAIL({}), ON_RAIL({ rail: null, voltage: 24 }), ON_RAIL({ rail: null, power: 0 })],
  },
  {
    rule: 'output-inrush-missing', sheet: 'outputs', sheets: OUTPUT({ kind: 'lamp', power: 23, inrush: null }),
    severity: 'incomplete', key: 'inrush', value: null, inStatus: true,
    message: 'Output Q1 has no inrush entered, and lamps take many times their current at switching on: whether the making capacity of the contact covers that is not known. Enter the peak current of one load in A.',
    silent: [
      OUTPUT({ kind: 'lamp', power: 23, inrush: 5 }), OUTPUT({ kind: 'lamp', power: 0, inrush: null }),
      OUTPUT({ power: 23, inrush: null }),
    ],
  },
  {
    rule: 'output-over-voltage', sheet: 'outputs', sheets: ON_RAIL({}, { maxDcVoltage: 12 }), severity: 'over',
    key: 'voltage', value: 24, limit: 12, inStatus: true,
    message: 'Output Q1 switches 24.00 V and its contact may switch 12.00 V of such a load: 12.00 V too much. Use a contact for that voltage, or let it switch a contactor.',
    silent: [ON_RAIL({}), ON_RAIL({}, { maxVoltage: 12 }), OUTPUT({ power: 230 })],
  },
  {
    // 24 V × 1.3
    rule: 'output-over-voltage', sheet: 'outputs', severity: 'over', key: 'voltage', value: 31.2, limit: 30, inStatus: true,
    sheets: { ...ON_RAIL({}), supplies: [{ rail: 'L1', rated: 10, tolerance: 0.3 }] },
    message: 'Output Q1 switches 31.20 V and its contact may switch 30.00 V of such a load: 1.20 V too much. Use a contact for that voltage, or let it switch a contactor.',
    silent: [{ ...ON_RAIL({}), supplies: [{ rail: 'L1', rated: 10, tolerance: 0.25 }] }],
  },
  {
    rule: 'output-voltage-not-of-rail', sheet: 'outputs', sheets: ON_RAIL({ voltage: 12 }), severity: 'over',
    key: 'voltage', value: 12, limit: 24, inStatus: true,
    message: 'Output Q1 switches a load of 12.00 V and rail L1 gives 24.00 V, more than 10 % apart. Choose a rail of its voltage, or correct the voltage.',
    silent: [ON_RAIL({ voltage: 26.4 }), ON_RAIL({})],
  },
  {
    rule: 'output-voltage-not-of-feed', sheet: 'outputs', sheets: OUTPUT({ power: 24, voltage: 24 }), severity: 'over',
    key: 'voltage', value: 24, limit: 230, inStatus: true,
    message: 'Output Q1 switches a load of 24.00 V and feed F1 gives 230.00 V, more than 10 % apart. Choose a feed of its voltage, the rail of a load on direct current, or correct the voltage.',
    silent: [OUTPUT({ power: 24, voltage: 220 }), OUTPUT({ power: 24, voltage: 24, feed: null })],
  },
  {
    rule: 'output-dc-on-feed', sheet: 'outputs', sheets: ON_RAIL({ rail: null, feed: 'F1', voltage: 24 }),
    severity: 'over', key: 'feed', value: 'F1', inStatus: true,
    message: 'Output Q1 switches a load on direct current and feed F1 gives alternating current. Choose its rail in place of the feed, or correct the kind.',
    silent: [ON_RAIL({}), OUTPUT({ power: 230 })],
  },
  {
    rule: 'output-ac-on-rail', sheet: 'outputs', sheets: ON_RAIL({ kind: 'resistive' }), severity: 'incomplete',
    key: 'kind', value: null, inStatus: true,
    message: 'Output Q1: rail L1 gives direct current, and a contact has other ratings for it, so whether it bears the load is not known. Choose DC or DC coil as its kind, or its feed in place of the rail.',
    silent: [ON_RAIL({}), ON_RAIL({ kind: 'dcCoil' })],
  },
  {
    rule: 'contact-rating-missing', sheet: 'contacts', sheets: OUTPUT({
      kind: 'motor', power: 230, inrush: 2,
    }), severity: 'incomplete', key: 'motor', value: null, inStatus: false,
    message: 'Contact K: its rating for motor loads is not known, and 1 output waits for it. Enter it, or choose another contact there.',
    silent: [MOTOR({ power: 230 }), OUTPUT({ kind: null }), OUTPUT({ contact: null, kind: 'motor' })],
  },
  {
    rule: 'contact-dc-voltage-missing', sheet: 'contacts', sheets: ON_RAIL({}, { maxDcVoltage: null }),
    severity: 'incomplete', key: 'maxDcVoltage', value: null, inStatus: false,
    message: 'Contact K: up to which direct voltage its ratings hold is not known, and 1 output waits for it. Enter it, or choose another contact there.',
    silent: [ON_RAIL({}), OUTPUT({ power: 230 }), ON_RAIL({}, { maxDcVoltage: '=1/0' })],
  },
  {
    rule: 'contact-inrush-missing', sheet: 'contacts', sheets: OUTPUT(
      { power: 230, inrush: 5 }, { inrush: null }
    ), severity: 'incomplete', key: 'inrush', value: null, inStatus: false,
    message: 'Contact K: its making capacity is not known, and 1 output waits for it. Enter it, or choose another contact there.',
    silent: [OUTPUT({ power: 230, inrush: 5 }), OUTPUT({ power: 230, inrush: null }, { inrush: null })],
  },
  {
    rule: 'module-over-common', sheet: 'modules', sheets: IN_MODULE({ common: 16 }, 8), severity: 'over',
    key: 'current', value: 24, limit: 16, inStatus: true,
    message: 'Module M carries 24.00 A over its common side, which may carry 16.00 A: 8.00 A too much. Move outputs to another module, or let some of them switch contactors.',
    silent: [IN_MODULE({ common: 24 }, 8), IN_MODULE({}, 8)],
  },
  {
    rule: 'module-common-shared', sheet: 'modules', severity: 'over', key: 'common', value: 16, inStatus: true,
    sheets: { ...IN_MODULE({ common: 16 }, 1), outputs: ['F1', 'F2', 'F1'].map((feed) => ({ module: 'M', feed, kind: 'resistive', power: 230 })) },
    message: 'Module M has one common side, and its outputs are fed from F1, F2: these come together there, live together and behind the protection of another. Move outputs to a module of their own, give them one feed, or empty Common where each has a contact of its own.',
    silent: [
      IN_MODULE({ common: 16 }, 2),
      { ...IN_MODULE({}, 1), outputs: ['F1', 'F2'].map((feed) => ({ module: 'M', feed, kind: 'resistive', power: 230 })) },
      { ...IN_MODULE({ common: 16 }, 1), outputs: ['F1', null].map((feed) => ({ module: 'M', feed, kind: 'resistive', power: 230 })) },
    ],
  },
  {
    rule: 'module-over-outputs', sheet: 'modules', sheets: IN_MODULE({ outputs: 4 }, 5), severity: 'over',
    key: 'used', value: 5, limit: 4, inStatus: true,
    message: 'Module M has 4 outputs and 5 rows name it: 1 too many. Move them to another module, or correct their module.',
    silent: [IN_MODULE({ outputs: 4 }, 4), IN_MODULE({}, 5)],
  },
  {
    rule: 'output-feed-not-checked', sheet: 'outputs', sheets: OUTPUT({
      power: 230, feed: null,
    }), severity: 'note', key: 'feed', value: null, inStatus: false,
    message: 'Output Q1 has no feed entered: its current counts in none. Choose the feed behind the contact, or the rail.',
    silent: [OUTPUT({ power: 230 }), OUTPUT({ power: 0, feed: null })],
  },
];
