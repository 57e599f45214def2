import { html, nothing, type TemplateResult } from 'lit';
import type { NameDecision, Takeoff, TakeoffName } from '../../src/exchange/takeoff/index.ts';

/** From here on the likest type may be taken for many names at once. */
const VERY_LIKE = 0.8;

export interface NameChoicesOptions {
  readonly takeoff: Takeoff;
  /** Tags of the types that there are. */
  readonly types: readonly string[];
  readonly decide: (decisions: Readonly<Record<string, NameDecision | undefined>>) => void;
}

/** Names that are no tag and no alias of a type, those to be decided first, each with what it may mean. */
export function nameChoices({ takeoff, types, decide }: NameChoicesOptions): TemplateResult | typeof nothing {
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
    <h3 id="names-heading">${open.length === 0 ? 'Names that are no type yet' : `${count(open.length, 'name')} to decide`}</h3>
    <p class="quiet english">What you choose is kept as an alias of the type, so that it is asked once.
      ${alike.length < 2 ? nothing : html`<button type="button" class="link" data-do="likest" @click=${takeLikest}>
        Take the likest type for the ${alike.length} that are ${VERY_LIKE} alike or more</button>`}</p>
    <table><tbody>${[...open, ...others].map((name) => nameLine(name, counts.get(name.key), types, decide))}</tbody></table>
  </section>`;
}

function nameLine(
  { key, texts, state, type, match }: TakeoffName, counted: { lines: number; qty: number } | undefined,
  types: readonly string[], decide: NameChoicesOptions['decide'],
): TemplateResult {
  const { candidates } = match;
  const [likest] = candidates;
  const others = types.filter((each) => !candidates.some((candidate) => candidate.type === each));
  const chosen = state === 'undecided' ? '' : state === 'new' ? 'new' : state === 'left-out' ? 'leave-out' : `=${type}`;
  const option = (value: string, words: string) => html`<option value=${value} ?selected=${value === chosen}>${words}</option>`;
  const choose = (event: Event) => {
    const { value } = event.currentTarget as HTMLSelectElement;
    decide({ [key]: value === '' ? undefined : value.startsWith('=') ? { type: value.slice(1) } : value as 'new' | 'leave-out' });
  };
  const { lines, qty } = counted ?? { lines: 0, qty: 0 };
  return html`<tr data-name=${key} data-state=${state}>
    <td><b>${texts.join(', ')}</b> <span class="quiet">${qty} on ${count(lines, 'line')}</span></td>
    <td><select aria-label=${`What ${texts.join(', ')} is`} .value=${chosen} @change=${choose}>
      ${candidates.length > 0 ? option('', 'to be decided') : nothing}
      ${candidates.length === 0 ? nothing : html`<optgroup label="Like it">
        ${candidates.map((each) => option(`=${each.type}`, `${each.type} (likeness ${each.score.toFixed(2)})`))}</optgroup>`}
      ${option('new', 'a new type, without a draw yet')}${option('leave-out', 'nothing to be counted')}
      <optgroup label="Other types">${others.map((each) => option(`=${each}`, each))}</optgroup></select></td>
    <td class="nowrap">${state === 'undecided' && likest !== undefined ? html`<button type="button" class="bordered" data-do="confirm"
      @click=${() => { decide({ [key]: { type: likest.type } }); }}>Yes, ${likest.type} <span class="quiet">${likest.score.toFixed(2)}</span></button>` : nothing}</td>
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

export function count(number: number, noun: string): string {
  return `${number} ${noun}${number === 1 ? '' : 's'}`;
}
