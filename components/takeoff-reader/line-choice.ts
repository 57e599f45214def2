import { html, nothing, type TemplateResult } from 'lit';
import type { LineDecision, Takeoff, TakeoffLine } from '../../src/exchange/takeoff/index.ts';
import { columnOf } from '../../src/schedule/index.ts';
import type { Words } from '../../src/words/index.ts';

export interface LineChoiceOptions {
  readonly takeoff: Takeoff;
  readonly decide: (key: string, decision: LineDecision) => void;
  readonly words: Words;
}

/**
 * What a person can say of a line: how many there are, with what it says or proposes as the beginning, or that it does
 * not count. What has no name that is decided on can only be left out.
 */
export function lineChoice(
  { key, qty, nameKey, outcome, flag, source }: TakeoffLine, { takeoff, decide, words }: LineChoiceOptions,
): TemplateResult {
  const isNamed = takeoff.names.some((name) => name.key === nameKey && name.state !== 'undecided');
  const count = (event: Event) => {
    // The focus goes on to what is next, which the same key press must not press.
    event.preventDefault();
    const field = (event.currentTarget as Element).closest('.decide')!.querySelector('input')!;
    if (field.value === '' || !field.reportValidity()) return;
    // What is asked about is taken as it stands; what cannot be read, or not as a count, needs the number.
    decide(key, flag !== undefined && field.valueAsNumber === qty ? 'take' : { qty: field.valueAsNumber });
  };
  return html`<span class="decide">
    ${!isNamed ? nothing : html`<label>${words.text(columnOf('devices', 'qty').title)} <input type="number" min="0" step="any" .value=${qty === null ? '' : String(qty)}
      aria-label=${words.say('Quantity of line {line}', { line: source.line })}
      @keydown=${(event: KeyboardEvent) => { if (event.key === 'Enter' && !event.ctrlKey) count(event); }}></label>
      <button type="button" class="bordered" data-do="count" @click=${count}>${words.say('Count it')}</button>`}
    ${outcome === 'left-out' ? nothing : html`<button type="button" class="link" data-do="leave-out" @click=${() => { decide(key, 'leave-out'); }}>${words.say('Leave it out')}</button>`}</span>`;
}
