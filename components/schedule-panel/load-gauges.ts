import { valueText } from '../look/index.ts';
import type { GaugeFigures, GaugeRow } from './gauge.ts';

/** Demand of a supply or feed against what may be used; the tick is its target. */
export function demandGauge(most: 'usable' | 'rated', about?: string): (row: GaugeRow) => GaugeFigures {
  return (row) => {
    const { words } = row;
    const [loading, target] = [row.number('loading'), row.number('target')];
    const figures = {
      amount: row.text('demand'), most: row.text(most), share: row.text('loading'), target: row.text('target'),
    };
    const sentence = loading === null
      ? words.say('{amount} of {most}', figures)
      : words.say('{amount} of {most}, {share}, target {target}', figures);
    return { key: 'loading', about: about === undefined ? '' : words.text(row.word(about)), loading, target, sentence };
  };
}

/** Nodes on a branch against its limit; the tick stands where the reserve begins. */
export function branchGauge(row: GaugeRow): GaugeFigures {
  return {
    key: 'used', about: '', loading: row.number('used'), target: 1 - (row.number('reserve') ?? 0),
    sentence: branchSentence(row),
  };
}

function branchSentence(row: GaugeRow): string {
  const { words } = row;
  const figures = { nodes: row.text('nodes'), limit: row.text('limit'), share: row.text('used') };
  const limit = row.number('limit');
  if (limit === null) return words.say('{nodes} nodes, limit not known', figures);
  const beyond = (row.number('nodes') ?? 0) - limit;
  if (beyond > 0) {
    return words.say(
      '{nodes} of {limit} nodes, {share}, {beyond} too many',
      { ...figures, beyond: valueText('branches', 'nodes', beyond, words) }
    );
  }
  const free = row.number('free') ?? 0;
  if (free < 0) {
    return words.say(
      '{nodes} of {limit} nodes, {share}, {kept} into the reserve',
      { ...figures, kept: valueText('branches', 'free', -free, words, 'up') }
    );
  }
  const left = valueText('branches', 'nodes', -beyond, words, 'down');
  return row.number('reserve') === 0 ? words.say('{nodes} of {limit} nodes, {share}, {left} left', { ...figures, left })
    : words.say('{nodes} of {limit} nodes, {share}, {left} left; reserve {reserve}', {
      ...figures, left, reserve: row.text('reserve'),
    });
}

/** Current of all outputs of a module against what its common side carries. */
export function moduleGauge(row: GaugeRow): GaugeFigures {
  const { schedule, id, words } = row;
  const [current, common, left] = [row.number('current'), row.number('common'), row.number('headroom')];
  const loading = current === null || common === null ? null : current / common;
  const share = `${schedule.partialSign('modules', id, 'current')} ${valueText('outputs', 'loading', loading, words)}`;
  const figures = { amount: row.text('current'), most: row.text('common'), share: share.trim() };
  const sentence = loading === null || left === null ? words.say('{amount} of {most}', figures)
    : left < 0 ? words.say(
      '{amount} of {most}, {share}, {over} too much',
      { ...figures, over: valueText('modules', 'headroom', -left, words, 'up') }
    )
    : words.say('{amount} of {most}, {share}, {left} left', { ...figures, left: row.text('headroom') });
  return { key: 'current', about: '', loading, target: null, sentence };
}

/** Current of an output against the rating of its contact. */
export function outputGauge(row: GaugeRow): GaugeFigures {
  return {
    key: 'loading', about: row.word('load'), loading: row.number('loading'), target: row.number('target'),
    sentence: outputSentence(row),
  };
}

function outputSentence(row: GaugeRow): string {
  const { words } = row;
  const figures = { amount: row.text('current'), most: row.text('rating'), share: row.text('loading') };
  if (row.number('loading') === null) return words.say('{amount} of {most}', figures);
  const left = row.number('headroom');
  return left !== null && left < 0
    ? words.say(
      '{amount} of {most}, {share}, {over} too much',
      { ...figures, over: valueText('outputs', 'headroom', -left, words, 'up') }
    )
    : words.say('{amount} of {most}, {share}, {left} left', { ...figures, left: row.text('headroom') });
}
