import { NO_WORKING_VOLTAGE } from '../../src/schedule/index.ts';
import { numberAt } from '../look/index.ts';
import type { GaugeFigures, GaugeRow } from './gauge.ts';

/**
 * Drop on a run against the drop at which the devices lack voltage: `drop ÷ (rail voltage − needed voltage)`; the tick is
 * the most drop allowed. Where no device says what it needs, the bar goes up to the most drop.
 */
export function runGauge(row: GaugeRow): GaugeFigures {
  const { schedule, id } = row;
  const rail = schedule.target('runs', id, 'rail');
  const volts = rail < 0 ? null : numberAt(schedule, { sheet: 'supplies', id: rail, key: 'voltage' });
  const [drop, needed, most] = [row.number('drop'), row.number('minVoltage'), row.number('maxDrop')];
  const about = [row.word('conductor'), row.number('length') === null ? '' : row.text('length')].filter((part) => part !== '').join(', ');
  const common = { key: 'endVoltage', about };
  if (schedule.outcome('runs', id) === NO_WORKING_VOLTAGE) {
    return { ...common, loading: Infinity, target: null, sentence: `no working voltage, ${needs(row)}` };
  }
  const sentence = drop === null ? `end voltage unknown, ${needs(row)}`
    : `${row.text('endVoltage')}, ${needs(row)}; drop ${row.text('dropRatio')} of ${row.text('maxDrop')}`;
  if (drop === null || volts === null || (needed === null && most === null)) return { ...common, loading: null, target: null, sentence };
  const allowed = needed === null ? volts * most! : volts - needed;
  return {
    ...common, sentence, loading: allowed > 0 ? drop / allowed : Infinity,
    target: most === null || allowed <= 0 ? null : volts * most / allowed,
  };
}

function needs(row: GaugeRow): string {
  return row.number('minVoltage') === null ? 'need unknown' : `needs ${row.text('minVoltage')}`;
}
