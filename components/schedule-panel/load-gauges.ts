import { valueText } from '../look/index.ts';
import type { GaugeFigures, GaugeRow } from './gauge.ts';

/** Demand of a supply or feed against what may be used; the tick is its target. */
export function demandGauge(most: 'usable' | 'rated', about?: string): (row: GaugeRow) => GaugeFigures {
  return (row) => withShare(row, {
    key: 'loading', about: about === undefined ? '' : row.word(about), target: row.number('target'),
    amount: `${row.text('demand')} of ${row.text(most)}`, tail: () => `target ${row.text('target')}`,
  });
}

/** Points on a branch against its limit; the tick stands where the reserve begins. */
export function branchGauge(row: GaugeRow): GaugeFigures {
  const tail = (): string => {
    const beyond = (row.number('points') ?? 0) - (row.number('limit') ?? 0);
    if (beyond > 0) return `${valueText('branches', 'points', beyond, row.words)} too many`;
    const free = row.number('free') ?? 0;
    return free < 0 ? `${valueText('branches', 'free', -free, row.words)} into the reserve` : `${row.text('free')} free`;
  };
  return withShare(row, {
    key: 'used', about: '', target: 1 - (row.number('reserve') ?? 0),
    amount: `${row.text('points')} of ${row.text('limit')} points`, tail,
  });
}

/** Current of an output against the rating of its contact. */
export function outputGauge(row: GaugeRow): GaugeFigures {
  const tail = (): string => {
    const left = row.number('headroom');
    return left !== null && left < 0 ? `${valueText('outputs', 'headroom', -left, row.words)} too much` : `${row.text('headroom')} left`;
  };
  return withShare(row, {
    key: 'loading', about: row.word('load'), target: row.number('target'),
    amount: `${row.text('current')} of ${row.text('rating')}`, tail,
  });
}

interface ShareParts extends Pick<GaugeFigures, 'key' | 'about' | 'target'> {
  readonly amount: string;
  readonly tail: () => string;
}

function withShare(row: GaugeRow, { amount, tail, ...rest }: ShareParts): GaugeFigures {
  const loading = row.number(rest.key);
  return { ...rest, loading, sentence: loading === null ? amount : `${amount}, ${row.text(rest.key)}, ${tail()}` };
}
