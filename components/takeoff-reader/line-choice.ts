import { html, nothing, type TemplateResult } from 'lit';
import { partOf, type LineDecision, type Takeoff, type TakeoffLine } from '../../src/exchange/takeoff/index.ts';
import { columnOf } from '../../src/schedule/index.ts';
import type { Words } from '../../src/words/index.ts';

export interface LineChoiceOptions {
  readonly takeoff: Takeoff;
  readonly decide: (key: string, decision: LineDecision) => void;
  readonly words: Words;
}

/**
 * The line that is being decided on, why, and what a person can say of it: how many there are, with what it says or
 * proposes as the beginning, or that it does not count. What its name means is said first; a total or a title, which
 * has none, is called what it says.
 */
export function lineChoice(line: TakeoffLine, { takeoff, decide, words }: LineChoiceOptions): TemplateResult {
  const { key, qty, nameKey, outcome, flag, source, fields, reason } = line;
  const { sheet } = partOf(line, takeoff.parts);
  const said = { line: source.line, text: fields.filter((field) => field !== '').join(', ') };
  const name = takeoff.names.find((each) => each.key === nameKey);
  const isCountable = name === undefined ? fields.some((text) => /\p{L}/u.test(text))
    : name.state !== 'undecided' && name.state !== 'left-out';
  const count = (event: Event) => {
    // The focus goes on to what is next, which the same key press must not press.
    event.preventDefault();
    const field = (event.currentTarget as Element).closest('.decide')!.querySelector('input')!;
    if (field.value === '' || !field.reportValidity()) return;
    // What is asked about is taken as it stands; what cannot be read, or not as a count, needs the number.
    decide(key, flag !== undefined && field.valueAsNumber === qty ? 'take' : { qty: field.valueAsNumber });
  };
  return html`<section class="decide" data-line=${source.line} data-key=${key} aria-labelledby="deciding">
    <h3 id="deciding">${sheet === undefined || takeoff.parts.length < 2 ? words.say('Line {line}: {text}', said) : words.say('Line {line} of {sheet}: {text}', { ...said, sheet })}</h3>
    <p class="spoken">${reason}</p>
    ${name?.state === 'left-out' ? html`<p class="spoken">${words.say('What “{name}” is has to be said first.', { name: name.texts.join(', ') })}</p>` : nothing}
    <span class="choices">${!isCountable ? nothing : html`<label>${words.text(columnOf('devices', 'qty').title)} <input type="number" min="0" step="any" .value=${qty === null ? '' : String(qty)}
      aria-label=${words.say('Quantity of line {line}', { line: source.line })}
      @keydown=${(event: KeyboardEvent) => { if (event.key === 'Enter' && !event.ctrlKey) count(event); }}></label>
      <button type="button" class="bordered" data-do="count" @click=${count}>${words.say('Count it')}</button>`}
    ${outcome === 'left-out' ? nothing : html`<button type="button" class="link" data-do="leave-out" @click=${() => { decide(key, 'leave-out'); }}>${words.say('Leave it out')}</button>`}</span></section>`;
}
