import { valueText } from '../look/index.ts';
import type { GaugeFigures, GaugeRow } from './gauge.ts';

/** So near to the most inside it counts as near the limit [K]. */
const NEAR_KELVIN = 5;

/** Rise of the temperature inside against the rise that is allowed; the tick stands where it is near the limit. */
export function enclosureGauge(row: GaugeRow): GaugeFigures {
  const [inside, most, ambient] = [row.number('inside'), row.number('maxInside'), row.number('ambient')];
  const left = inside === null || most === null ? null : most - inside;
  const kelvin = (value: number) => valueText('enclosures', 'rise', value, row.words);
  const tail = left === null ? '' : left < 0 ? `, ${kelvin(-left)} too warm` : `, ${kelvin(left)} left`;
  const limit = most === null ? ', no most given' : ` of ${row.text('maxInside')}`;
  const common = { key: 'inside', about: row.word('note'), sentence: `${row.text('inside')} inside${limit}${tail}` };
  if (inside === null || most === null || ambient === null) return { ...common, loading: null, target: null };
  const allowed = most - ambient;
  if (allowed <= 0) return { ...common, loading: Infinity, target: null };
  return { ...common, loading: (inside - ambient) / allowed, target: Math.max(0, 1 - NEAR_KELVIN / allowed) };
}
