import { describe, expect, test } from 'vitest';
import { explainCell, roomFor } from '../../src/explanations.ts';
import type { Cells } from '../../src/schedule/index.ts';
import { closeTo, EXACT } from '../support/close-to.ts';
import { enter, findingsAt, idAt, scheduleOf, valueAt } from '../support/schedules.ts';

// Expected figures by hand; the arithmetic stands beside each.

const CONTACTS = [{
  contact: 'K', resistive: 16, lamp: 5, motor: 4, coil: 4, dc: 10, dcCoil: 1, maxDcVoltage: 30, inrush: 200,
}];
const rules = (schedule: ReturnType<typeof scheduleOf>, sheet: 'outputs' | 'feeds' | 'supplies' | 'contacts', at = 0) =>
  findingsAt(schedule, sheet, at).filter(({ severity }) => severity !== 'note').map(({ rule }) => rule);

describe('the relay side', () => {
  test('eight outputs of 7.8 A do not fit through a common side of 16 A', () => {
    const schedule = scheduleOf({
      contacts: CONTACTS, modules: [{ module: 'M1', common: 16, outputs: 8 }],
      outputs: Array.from({ length: 8 }, (_each, at) =>
        ({ output: `M1.${at + 1}`, module: 'M1', contact: 'K', kind: 'resistive', power: 1794 })), // 7.8 A × 230 V
    });
    // 8 × 7.8 A = 62.4 A; 16 − 62.4
    expect(['current', 'headroom', 'used', 'free', 'status'].map((key) => valueAt(schedule, 'modules', 0, key)))
      .toEqual([closeTo(62.4, EXACT), closeTo(-46.4, EXACT), 8, 0, 'over']);
    expect(roomFor(schedule, 'modules', 0)?.sentence).toBe('No capacity left for more outputs until all are used.');
  });

  const motor = (cells: Cells) => scheduleOf({
    contacts: CONTACTS, feeds: [{ feed: 'F1', rated: 16 }],
    outputs: [{ output: 'K1', contact: 'K', feed: 'F1', kind: 'motor', power: 370, inrush: 15, ...cells }],
  });
  test.each<[Cells, number | null, string, string[]]>([
    [{}, null, 'incomplete', ['output-power-factor-missing']],
    [{ powerFactor: 0.8 }, null, 'incomplete', ['output-efficiency-missing']],
    // 370 ÷ (230 × 0.8 × 0.7), of 4 A
    [{ powerFactor: 0.8, efficiency: 0.7 }, 370 / 128.8, 'ok', []],
    // The plate gives what it takes in: 370 ÷ (230 × 0.8)
    [{ powerFactor: 0.8, efficiency: 1 }, 370 / 184, 'ok', []],
    [{ ratedCurrent: 2.7 }, 2.7, 'ok', []],
    [{ ratedCurrent: 2.7, inrush: null }, 2.7, 'incomplete', ['output-inrush-missing']],
  ])('a motor of 370 W with %o takes %s A and is %s', (cells, current, status, found) => {
    const schedule = motor(cells);
    expect([valueAt(schedule, 'outputs', 0, 'current'), valueAt(schedule, 'outputs', 0, 'status')])
      .toEqual([current === null ? null : closeTo(current, EXACT), status]);
    expect(rules(schedule, 'outputs')).toEqual(found);
  });

  // EU 2019/2020, as read on a secondary page: 0.5 up to 10 W, 0.7 up to 25 W, 0.9 above
  test.each([[7, 0.5], [10, 0.5], [11, 0.7], [25, 0.7], [26, 0.9]])('a lamp of %d W has %d', (power, factor) => {
    const schedule = motor({ kind: 'lamp', power });
    expect([valueAt(schedule, 'outputs', 0, 'powerFactor'), valueAt(schedule, 'outputs', 0, 'current')])
      .toEqual([factor, closeTo(power / (230 * factor), EXACT)]);
  });

  test('what a contact does not say is told once, at the contact, with how many outputs wait', () => {
    const schedule = scheduleOf({
      contacts: [{ contact: 'K', resistive: 16 }],
      outputs: [1, 2, 3].map((at) => ({ output: `Q${at}`, contact: 'K', kind: 'lamp', power: 46, inrush: 5 })),
    });
    expect(schedule.findings.filter(({ severity }) => severity === 'incomplete')
      .map(({ sheet, rule, key, waiting }) => [sheet, rule, key, waiting])).toEqual([
      ['contacts', 'contact-rating-missing', 'lamp', 3], ['contacts', 'contact-inrush-missing', 'inrush', 3],
    ]);
    expect([0, 1, 2].map((at) => valueAt(schedule, 'outputs', at, 'status')))
      .toEqual(['incomplete', 'incomplete', 'incomplete']);
  });
});

test.each([[230, 'ok'], [250, 'ok'], [400, 'over']])('%d V on a contact of 250 V is %s', (voltage, status) => {
  const schedule = scheduleOf({
    contacts: CONTACTS, outputs: [{ output: 'K1', contact: 'K', kind: 'resistive', power: 1000, voltage }],
  });
  expect(valueAt(schedule, 'outputs', 0, 'status')).toBe(status);
  expect(findingsAt(schedule, 'outputs').filter(({ severity }) => severity === 'over').map(({ rule, value, limit }) => [rule, value, limit]))
    .toEqual(status === 'ok' ? [] : [['output-over-voltage', 400, 250]]);
});

describe('a load of 24 V that a relay switches', () => {
  const sheets = (output: Cells) => scheduleOf({
    contacts: CONTACTS, feeds: [{ feed: 'F1', rated: 10 }], supplies: [{ rail: 'L1', rated: 10 }],
    outputs: [{ output: 'K1', contact: 'K', kind: 'dc', power: 48, ...output }],
    devices: [{ ref: 'D1', rail: 'L1', qty: 1, unitDraw: 3000 }],
  });

  test('counts on its rail: 48 W ÷ 24 V + 3 A', () => {
    const schedule = sheets({ rail: 'L1' });
    expect([valueAt(schedule, 'outputs', 0, 'voltage'), valueAt(schedule, 'outputs', 0, 'status')]).toEqual([24, 'ok']);
    expect([valueAt(schedule, 'supplies', 0, 'connected'), valueAt(schedule, 'supplies', 0, 'demand')]).toEqual([5, 5]);
  });

  test('is opened at what its rail may give: 24 V × 1.3 = 31.2 V on a contact for 30 V, 27.6 V with a battery', () => {
    const schedule = sheets({ rail: 'L1' });
    enter(schedule, 'supplies', 0, { tolerance: 0.3 });
    expect([valueAt(schedule, 'outputs', 0, 'status'), rules(schedule, 'outputs')]).toEqual(['over', ['output-over-voltage']]);
    enter(schedule, 'supplies', 0, { tolerance: 0.1, battery: 7 });
    expect(valueAt(schedule, 'outputs', 0, 'status')).toBe('ok');
    enter(schedule, 'contacts', 0, { maxDcVoltage: 27 });
    expect(findingsAt(schedule, 'outputs').map(({ rule, value, limit }) => [rule, value, limit]))
      .toEqual([['output-over-voltage', closeTo(27.6, EXACT), 27]]);
  });

  test('says in its explanation that nothing was looked at of its cable', () => {
    const schedule = sheets({ rail: 'L1' });
    expect(explainCell(schedule, 'outputs', idAt(schedule, 'outputs'), 'status')!.checks)
      .toContain('not judged here: the cable to its load');
  });

  test.each<[string, Cells, string, string[]]>([
    ['of direct current on a feed', { feed: 'F1', voltage: 24 }, 'over', ['output-dc-on-feed']],
    ['of any kind on a feed of 230 V', { kind: 'resistive', feed: 'F1', voltage: 24 }, 'over',
      ['output-voltage-not-of-feed']],
    ['of no known voltage', {}, 'incomplete', ['output-voltage-missing']],
    ['with a rating for alternating current', { kind: 'resistive', rail: 'L1' }, 'incomplete', ['output-ac-on-rail']],
    // Its contact opens what the rail gives.
    ['made for another voltage than its rail has', { rail: 'L1', voltage: 48 }, 'over', ['output-voltage-not-of-rail']],
  ])('%s is %s', (_name, output, status, found) => {
    const schedule = sheets(output);
    expect([valueAt(schedule, 'outputs', 0, 'status'), rules(schedule, 'outputs')]).toEqual([status, found]);
  });
});

describe('mains feeds', () => {
  test('eight lamps of 160 A on 10 A, B: one of them is too much', () => {
    const schedule = scheduleOf({
      contacts: CONTACTS, feeds: [{ feed: 'F1', rated: 10, curve: 'B' }],
      outputs: Array.from({ length: 8 }, (_each, at) => ({
        output: `K${at}`, contact: 'K', kind: 'lamp', power: 115, powerFactor: 1, inrush: 160, feed: 'F1',
      })),
    });
    // 160 A while the other seven run with 0.5 A each; B 10 stands 1.41 × 10 × 3
    expect([valueAt(schedule, 'feeds', 0, 'inrush'), valueAt(schedule, 'feeds', 0, 'status')])
      .toEqual([closeTo(163.5, EXACT), 'near']);
    expect(findingsAt(schedule, 'feeds')[0]).toMatchObject({ rule: 'feed-over-inrush', limit: closeTo(42.3, EXACT) });
  });

  test('a load of 24 V among them is over by its voltage, and the breaker by what starts', () => {
    const lamps = Array.from({ length: 8 }, (_each, at) => (
      { output: `K${at}`, contact: 'K', kind: 'lamp', power: 115, powerFactor: 1, inrush: 160, feed: 'F1' }));
    const schedule = scheduleOf({
      contacts: CONTACTS, feeds: [{ feed: 'F1', rated: 10, curve: 'B' }],
      outputs: [...lamps, { output: 'K9', contact: 'K', kind: 'resistive', power: 24, voltage: 24, feed: 'F1' }],
    });
    expect(schedule.findings.filter(({ severity }) => severity !== 'note').map(({ rule, tag, value, limit }) => [rule, tag, value, limit]))
      .toEqual(expect.arrayContaining([
        ['output-voltage-not-of-feed', 'K9', 24, 230],
        // 160 A while seven others take 0.5 A and the load of 24 V 1 A; B 10 stands 1.41 × 10 × 3.
        ['feed-over-inrush', 'F1', closeTo(164.5, EXACT), closeTo(42.3, EXACT)],
      ]));
    expect([valueAt(schedule, 'outputs', 8, 'status'), valueAt(schedule, 'feeds', 0, 'status')]).toEqual(['over', 'near']);
  });

  const supply = (rail: string, cells: Cells = {}) => ({
    rail, rated: 10, feed: 'F1', efficiency: 0.9, inputPowerFactor: 0.95, inputInrush: 40, ...cells,
  });
  const supplies = (feed: Cells, ...rows: Cells[]) => scheduleOf({
    feeds: [{ feed: 'F1', rated: 16, ...feed }], supplies: rows,
    devices: rows.map(({ rail }) => ({ rail: rail!, qty: 1, unitDraw: 7200 })),
  });
  // 24 V × 7.2 A ÷ (0.9 × 230 V × 0.95)
  const EACH = 172.8 / 196.65;

  test('supplies count with their input current, and all start at power return', () => {
    const schedule = supplies({ curve: 'B' }, supply('L1'), supply('L2', { units: 2, redundant: true }));
    expect([valueAt(schedule, 'supplies', 0, 'inputCurrent'), valueAt(schedule, 'feeds', 0, 'connected')])
      .toEqual([closeTo(EACH, EXACT), closeTo(2 * EACH, EXACT)]);
    // Three units of 40 A; B 16 stands 67.68 A
    expect([valueAt(schedule, 'feeds', 0, 'inrush'), valueAt(schedule, 'feeds', 0, 'status')])
      .toEqual([closeTo(120, EXACT), 'near']);
  });

  test.each<[string, Cells, Cells, string, string]>([
    ['one of 40 A on B 16', { curve: 'B' }, {}, 'ok', 'ok'],
    ['one whose inrush is not known', { curve: 'B' }, { inputInrush: null }, 'incomplete', 'incomplete'],
    ['that where no curve is entered', {}, { inputInrush: null }, 'ok', 'ok'],
    ['one of no known efficiency', {}, { efficiency: null }, 'incomplete', 'incomplete'],
    ['one of no known power factor', {}, { inputPowerFactor: null }, 'incomplete', 'incomplete'],
    // 3 of 3 on B 16 are a whole breaker
    ['as many units as its maker allows', { curve: 'B' }, { inputInrush: null, maxOnB16: 3, units: 3 }, 'ok', 'ok'],
    ['one unit more', { curve: 'B' }, { inputInrush: null, maxOnB16: 3, units: 4 }, 'ok', 'near'],
    // C 16 stands 5 ÷ 3 times as many: 5
    ['five on C 16', { curve: 'C' }, { inputInrush: null, maxOnB16: 3, units: 5 }, 'ok', 'ok'],
    ['six on C 16', { curve: 'C' }, { inputInrush: null, maxOnB16: 3, units: 6 }, 'ok', 'near'],
  ])('%s', (_name, feed, cells, ofSupply, ofFeed) => {
    const schedule = supplies(feed, supply('L1', cells));
    expect([valueAt(schedule, 'supplies', 0, 'status'), valueAt(schedule, 'feeds', 0, 'status')])
      .toEqual([ofSupply, ofFeed]);
    expect(rules(schedule, 'supplies')).toHaveLength(ofSupply === 'ok' ? 0 : 1);
  });
});
