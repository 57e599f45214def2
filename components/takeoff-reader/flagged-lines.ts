import { html, nothing, type TemplateResult } from 'lit';
import type { LineDecision, LineFlag, Takeoff, TakeoffLine } from '../../src/exchange/takeoff/index.ts';
import { message, type Words } from '../../src/words/index.ts';

export interface FlaggedLinesOptions {
  readonly takeoff: Takeoff;
  readonly decide: (decisions: Readonly<Record<string, LineDecision>>) => void;
  /** Shows the lines that are to be decided. */
  readonly show: () => void;
  readonly words: Words;
}

const FLAGS: Readonly<Record<LineFlag, string>> = {
  hidden: message('{count, plural, one {# line is} other {# lines are}} hidden in the file: {qty}'),
  struck: message('{count, plural, one {# line is} other {# lines are}} struck through: {qty}'),
  superseded: message('{count, plural, one {# line is} other {# lines are}} said to be superseded, existing, an option or for others: {qty}'),
  sum: message('{count, plural, one {# line may be a sum} other {# lines may be sums}} of others or count beside them: {qty}'),
  matrix: message('{count, plural, one {# count stands} other {# counts stand}} in a table in which types and rooms cannot be told apart: {qty}'),
  proposal: message('{count, plural, one {# quantity is} other {# quantities are}} proposed from what is written: {qty}'),
};

/** Lines that a person must decide on: those that do not only wait for what their name means. */
export function openLines({ lines, names }: Takeoff): TakeoffLine[] {
  const waiting = new Set(names.filter(({ state }) => state === 'undecided').map(({ key }) => key));
  return lines.filter(({ outcome, nameKey }) => outcome === 'undecided' && !waiting.has(nameKey ?? ''));
}

/** Lines that a person is asked about, those of the same cause together, to be decided on alike at once. */
export function flaggedLines({ takeoff, decide, show, words }: FlaggedLinesOptions): TemplateResult | typeof nothing {
  const open = openLines(takeoff);
  const alike = (lines: readonly TakeoffLine[], decision: LineDecision) => () => {
    decide(Object.fromEntries(lines.map(({ key }) => [key, decision])));
  };
  const groups = (Object.keys(FLAGS) as LineFlag[]).flatMap((flag) => {
    const lines = open.filter((line) => line.flag === flag);
    if (lines.length === 0) return [];
    const takeable = lines.filter(({ qty, nameKey }) => qty !== null && nameKey !== undefined);
    const qty = Math.round(lines.reduce((sum, line) => sum + (line.qty ?? 0), 0) * 1000) / 1000;
    return [html`<li data-flag=${flag}><span class="name">${words.say<string>(FLAGS[flag], { count: lines.length, qty })}</span>
      <span class="choices">${takeable.length === 0 ? nothing : html`<button type="button" class="bordered" data-do="take-alike" @click=${alike(takeable, 'take')}>
        ${words.say('Take {count, plural, one {it} other {all #}}', { count: takeable.length })}</button>`}
      <button type="button" class="bordered" data-do="leave-alike" @click=${alike(lines, 'leave-out')}>
        ${words.say('Leave {count, plural, one {it} other {all #}} out', { count: lines.length })}</button></span></li>`];
  });
  const others = open.filter(({ flag }) => flag === undefined);
  if (groups.length === 0 && others.length === 0) return nothing;
  return html`<section class="flagged" aria-labelledby="flagged-heading"><h3 id="flagged-heading">${words.say('Lines to decide')}</h3>
    <ul>${groups}${others.length === 0 ? nothing : html`<li><button type="button" class="link" data-do="show-undecided" @click=${show}>
      ${words.say('{count, plural, one {# line} other {# lines}} to decide one by one', { count: others.length })}</button></li>`}</ul></section>`;
}
