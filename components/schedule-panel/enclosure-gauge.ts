import { valueText } from '../look/index.ts';
import type { GaugeFigures, GaugeRow } from './gauge.ts';

/** So near to the most inside it counts as near the limit [K]. */
const NEAR_KELVIN = 5;

/** Rise of the temperature at the top against the rise that is allowed; the tick stands where it is near the limit. */
export function enclosureGauge(row: GaugeRow): GaugeFigures {
  const [top, most, ambient] = [row.number('top'), row.number('maxInside'), row.number('ambient')];
  const common = { key: 'top', about: row.word('note'), sentence: sentenceOf(row, top, most) };
  if (top === null || most === null || ambient === null) return { ...common, loading: null, target: null };
  const allowed = most - ambient;
  if (allowed <= 0) return { ...common, loading: Infinity, target: null };
  return { ...common, loading: (top - ambient) / allowed, target: Math.max(0, 1 - NEAR_KELVIN / allowed) };
}

function sentenceOf(row: GaugeRow, top: number | null, most: number | null): string {
  const { words } = row;
  const figures = { top: row.text('top'), most: row.text('maxInside') };
  if (most === null) return words.say('{top} at the top, no limit given', figures);
  if (top === null) return words.say('{top} at the top of {most}', figures);
  const left = most - top;
  const kelvin = valueText('enclosures', 'rise', Math.abs(left), words, left < 0 ? 'up' : 'down');
  return left < 0 ? words.say('{top} at the top of {most}, {kelvin} too warm', { ...figures, kelvin })
    : words.say('{top} at the top of {most}, {kelvin} left', { ...figures, kelvin });
}
