import { NO_WORKING_VOLTAGE } from '../../src/schedule/index.ts';
import { numberAt } from '../look/index.ts';
import type { GaugeFigures, GaugeRow } from './gauge.ts';

/**
 * Drop on a run against the drop at which a device lacks voltage at its place: `drop ÷ (drop + least margin)`; the tick
 * is the most drop allowed. Where no device says what it needs, the bar goes up to the most drop.
 */
export function runGauge(row: GaugeRow): GaugeFigures {
  const { schedule, id } = row;
  const rail = schedule.target('runs', id, 'rail');
  const volts = rail < 0 ? null : numberAt(schedule, { sheet: 'supplies', id: rail, key: 'voltage' });
  const [drop, margin, most] = [row.number('drop'), row.number('voltageMargin'), row.number('maxDrop')];
  const about = [row.word('conductor'), row.number('length') === null ? '' : row.text('length')]
    .filter((part) => part !== '').join(', ');
  const common = { key: 'endVoltage', about };
  if (schedule.outcome('runs', id) === NO_WORKING_VOLTAGE) {
    return { ...common, loading: Infinity, target: null, sentence: sentenceOf(row, 'none') };
  }
  const sentence = sentenceOf(row, drop === null ? 'unknown' : 'known');
  if (drop === null || volts === null || (margin === null && most === null)) {
    return { ...common, loading: null, target: null, sentence };
  }
  const allowed = margin === null ? volts * most! : drop + margin;
  return {
    ...common, sentence, loading: allowed > 0 ? drop / allowed : drop === 0 && margin === 0 ? 1 : Infinity,
    target: most === null || allowed <= 0 ? null : volts * most / allowed,
  };
}

function sentenceOf(row: GaugeRow, voltage: 'known' | 'unknown' | 'none'): string {
  const { words } = row;
  const isNeedKnown = row.number('minVoltage') !== null;
  const figures = {
    needed: row.text('minVoltage'), end: row.text('endVoltage'), drop: row.text('dropRatio'), most: row.text('maxDrop'),
  };
  switch (voltage) {
    case 'none': return isNeedKnown
      ? words.say('no stable operating point, needs {needed}', figures)
      : words.say('no stable operating point, need unknown');
    case 'unknown': return isNeedKnown
      ? words.say('end voltage unknown, needs {needed}', figures)
      : words.say('end voltage unknown, need unknown');
    case 'known': return isNeedKnown ? words.say('{end}, needs {needed}; drop {drop} of {most}', figures)
      : words.say('{end}, need unknown; drop {drop} of {most}', figures);
  }
}
