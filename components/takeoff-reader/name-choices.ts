import { html, nothing, type TemplateResult } from 'lit';
import type { NameDecision, Takeoff, TakeoffName } from '../../src/exchange/takeoff/index.ts';
import type { Words } from '../../src/words/index.ts';

/** From here on the likest type may be taken for many names at once. */
const VERY_LIKE = 0.8;

export interface NameChoicesOptions {
  readonly takeoff: Takeoff;
  /** Tags of the types that there are. */
  readonly types: readonly string[];
  readonly decide: (decisions: Readonly<Record<string, NameDecision | undefined>>) => void;
  readonly words: Words;
}

/** Names that are no tag and no alias of a type, those to be decided first, each with what it may mean. */
export function nameChoices(options: NameChoicesOptions): TemplateResult | typeof nothing {
  const { takeoff, decide, words } = options;
  const open = takeoff.names.filter(({ state }) => state === 'undecided');
  const others = takeoff.names.filter(({ state }) => state !== 'undecided' && state !== 'matched');
  if (open.length + others.length === 0) return nothing;
  const counts = countsOf(takeoff);
  const alike = open.filter(({ match: { candidates: [first, second] } }) =>
    first !== undefined && first.score >= VERY_LIKE && first.score > (second?.score ?? 0));
  const takeLikest = () => {
    decide(Object.fromEntries(alike.map(({ key, match }) => [key, { type: match.candidates[0]!.type }])));
  };
  return html`<section class="names" aria-labelledby="names-heading">
    <h3 id="names-heading">${open.length === 0 ? words.say('Names that are no type yet')
      : words.say('{count, plural, one {# name} other {# names}} to decide', { count: open.length })}</h3>
    <p class="quiet spoken">${words.say('What you choose is kept as an alias of the type, so that it is asked once.')}
      ${alike.length < 2 ? nothing : html`<button type="button" class="link" data-do="likest" @click=${takeLikest}>
        ${words.say('Take the likest type for the {count} that are {likeness} alike or more', { count: alike.length, likeness: VERY_LIKE })}</button>`}</p>
    <table><tbody>${[...open, ...others].map((name) => nameLine(name, counts.get(name.key), options))}</tbody></table>
  </section>`;
}

function nameLine(
  { key, texts, state, type, match }: TakeoffName, counted: { lines: number; qty: number } | undefined,
  { types, decide, words }: NameChoicesOptions,
): TemplateResult {
  const { candidates } = match;
  const [likest] = candidates;
  const others = types.filter((each) => !candidates.some((candidate) => candidate.type === each));
  const chosen = state === 'undecided' ? '' : state === 'new' ? 'new' : state === 'left-out' ? 'leave-out' : `=${type}`;
  const option = (value: string, text: string) =>
    html`<option value=${value} ?selected=${value === chosen}>${text}</option>`;
  const choose = (event: Event) => {
    const { value } = event.currentTarget as HTMLSelectElement;
    decide(
      {
        [key]: value === '' ? undefined : value.startsWith('=') ? { type: value.slice(1) } : value as 'new'
          | 'leave-out',
      }
    );
  };
  const { lines, qty } = counted ?? { lines: 0, qty: 0 };
  const name = texts.join(', ');
  return html`<tr data-name=${key} data-state=${state}>
    <td><b>${name}</b> <span class="quiet">${words.say('{qty} on {lines, plural, one {# line} other {# lines}}', { qty, lines })}</span></td>
    <td><select aria-label=${words.say('What {name} is', { name })} .value=${chosen} @change=${choose}>
      ${candidates.length > 0 ? option('', words.say('to be decided')) : nothing}
      ${candidates.length === 0 ? nothing : html`<optgroup label=${words.say('Like it')}>
        ${candidates.map((each) => option(`=${each.type}`,
          words.say('{type} (likeness {likeness})', { type: each.type, likeness: words.number(each.score, 2) })))}</optgroup>`}
      ${option('new', words.say('a new type, without a draw yet'))}${option('leave-out', words.say('nothing to be counted'))}
      <optgroup label=${words.say('Other types')}>${others.map((each) => option(`=${each}`, each))}</optgroup></select></td>
    <td class="nowrap">${state === 'undecided' && likest !== undefined ? html`<button type="button" class="bordered" data-do="confirm"
      @click=${() => { decide({ [key]: { type: likest.type } }); }}>${words.say('Yes, {type}', { type: likest.type })} <span class="quiet">${words.number(likest.score, 2)}</span></button>` : nothing}</td>
  </tr>`;
}

function countsOf({ lines }: Takeoff): Map<string, { lines: number; qty: number }> {
  const counts = new Map<string, { lines: number; qty: number }>();
  for (const { nameKey, qty } of lines) {
    if (nameKey === undefined) continue;
    const counted = counts.get(nameKey) ?? { lines: 0, qty: 0 };
    counts.set(nameKey, { lines: counted.lines + 1, qty: Math.round((counted.qty + (qty ?? 0)) * 1000) / 1000 });
  }
  return counts;
}
