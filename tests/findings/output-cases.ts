import type { Cells } from '../../src/schedule/index.ts';
import type { FindingCase } from './finding-case.ts';

const OUTPUT = (output: Cells, contact: Cells = {}) => ({
  contacts: [{ contact: 'K', resistive: 5, lamp: 2, inrush: 30, ...contact }], feeds: [{ feed: 'F1', rated: 100 }],
  outputs: [{ output: 'Q1', contact: 'K', kind: 'resistive', feed: 'F1', inrush: 0, ...output }],
});

export const OUTPUT_CASES: readonly FindingCase[] = [
  {
    rule: 'output-over-rating', sheet: 'outputs', sheets: OUTPUT({ power: 1380 }), severity: 'over', key: 'current',
    value: 6, limit: 5, inStatus: true,
    message: 'Output Q1 switches 6.00 A with a contact rated 5.00 A for resistive loads: 1.00 A too much. Share the load over more outputs, use a stronger contact, or let it switch a contactor.',
    silent: [OUTPUT({ power: 1150 })],
  },
  {
    rule: 'output-over-inrush', sheet: 'outputs', sheets: OUTPUT(
      { kind: 'lamp', power: 23, qty: 4, inrush: 8 }
    ), severity: 'over', key: 'inrushTotal', value: 32, limit: 30, inStatus: true,
    message: 'Output Q1 sees an inrush of 32.00 A and its contact may make 30.00 A: 2.00 A too much. Share the load over more outputs, or limit the inrush.',
    silent: [
      OUTPUT({ kind: 'lamp', power: 23, qty: 4, inrush: 7.5 }),
      OUTPUT({ kind: 'lamp', power: 23, qty: 4, inrush: 8 }, { inrush: null }),
    ],
  },
  {
    rule: 'output-over-target', sheet: 'outputs', sheets: OUTPUT({ power: 1035 }), severity: 'near', key: 'loading',
    value: 0.9, limit: 0.8, inStatus: true,
    message: 'Output Q1 is loaded to 90 % of 5.00 A, above its target of 80 % by 0.50 A: share the load over more outputs, or use a stronger contact.',
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
    message: 'Output Q1 has no kind of load entered, and a contact is rated for each. Choose resistive, lamp, motor or coil.',
    silent: [OUTPUT({ power: 230 })],
  },
  {
    rule: 'output-power-missing', sheet: 'outputs', sheets: OUTPUT({}), severity: 'incomplete', key: 'power',
    value: null, inStatus: true,
    message: 'Output Q1 has no power entered, so its current is not known. Enter the power of one load in W; 0 for a spare output.',
    silent: [OUTPUT({ power: 0 }), OUTPUT({ power: 230 })],
  },
  {
    rule: 'output-rating-missing', sheet: 'outputs', sheets: OUTPUT({
      kind: 'motor', power: 230,
    }), severity: 'incomplete', key: 'rating', value: null, inStatus: true,
    message: 'Output Q1: the contact K has no rating for motor loads. Enter it on the sheet Contacts, or choose another contact.',
    silent: [OUTPUT({ kind: 'motor', power: 230 }, { motor: 1 }), OUTPUT({ kind: null }), OUTPUT({ contact: null })],
  },
  {
    rule: 'output-inrush-not-checked', sheet: 'outputs', sheets: OUTPUT({
      power: 230, inrush: null,
    }), severity: 'note', key: 'inrush', value: null, inStatus: false,
    message: 'Output Q1 has no inrush entered: whether the contact may make it is not checked. Enter the peak current of one load in A.',
    silent: [OUTPUT({ power: 230, inrush: 0 }), OUTPUT({ power: 0, inrush: null })],
  },
  {
    rule: 'output-making-not-checked', sheet: 'outputs', sheets: OUTPUT(
      { power: 230, inrush: 5 }, { inrush: null }
    ), severity: 'note', key: 'inrushHeadroom', value: null, inStatus: false,
    message: 'Output Q1 has an inrush but its contact has none entered that it may make: it is not checked. Enter it on the sheet Contacts.',
    silent: [OUTPUT({ power: 230, inrush: 5 })],
  },
  {
    rule: 'output-feed-not-checked', sheet: 'outputs', sheets: OUTPUT({
      power: 230, feed: null,
    }), severity: 'note', key: 'feed', value: null, inStatus: false,
    message: 'Output Q1 has no feed entered: its current counts in none. Choose the feed behind the contact.',
    silent: [OUTPUT({ power: 230 }), OUTPUT({ power: 0, feed: null })],
  },
];
