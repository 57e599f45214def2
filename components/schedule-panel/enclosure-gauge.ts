import { valueText } from '../look/index.ts';
import type { GaugeFigures, GaugeRow } from './gauge.ts';

/** So near to the most inside it counts as near the limit [K]. */
const NEAR_KELVIN = 5;

/** Rise of the temperature inside against the rise that is allowed; the tick stands where it is near the limit. */
export function enclosureGauge(row: GaugeRow): GaugeFigures {
  const [inside, most, ambient] = [row.number('inside'), row.number('maxInside'), row.number('ambient')];
  const common = { key: 'inside', about: row.word('note'), sentence: sentenceOf(row, inside, most) };
  if (inside === null || most === null || ambient === null) return { ...common, loading: null, target: null };
  const allowed = most - ambient;
  if (allowed <= 0) return { ...common, loading: Infinity, target: null };
  return { ...common, loading: (inside - ambient) / allowed, target: Math.max(0, 1 - NEAR_KELVIN / allowed) };
}

function sentenceOf(row: GaugeRow, inside: number | null, most: number | null): string {
  const { words } = row;
  const figures = { inside: row.text('inside'), most: row.text('maxInside') };
  if (most === null) return words.say('{inside} inside, no most given', figures);
  if (inside === null) return words.say('{inside} inside of {most}', figures);
  const left = most - inside;
  const kelvin = valueText('enclosures', 'rise', Math.abs(left), words, left < 0 ? 'up' : 'down');
  return left < 0 ? words.say('{inside} inside of {most}, {kelvin} too warm', { ...figures, kelvin })
    : words.say('{inside} inside of {most}, {kelvin} left', { ...figures, kelvin });
}
