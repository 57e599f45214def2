import { html, nothing, type TemplateResult } from 'lit';
import { icon } from '../look/index.ts';
import type { ElvProblem } from '../load-schedule/events.ts';

/** What can be done about what just happened. */
export type Offer = 'undo' | 'redo' | 'keepBoth';

const OFFER_WORDS: Readonly<Record<Offer, string>> = { undo: 'Undo', redo: 'Redo', keepBoth: 'Keep the rows from before too' };

/** What the line below the grid says. */
export interface Message {
  readonly text: string;
  readonly tone: 'info' | 'refused';
  /** The buttons beside it. */
  readonly offers?: readonly Offer[];
}

/** Something that could not be done, and every reason. */
export interface Refusal {
  /** One sentence: what was refused, and that nothing changed. */
  readonly title: string;
  readonly problems: readonly ElvProblem[];
  /** The next action puts it away: it was about what was being entered. */
  readonly passing?: true;
}

/**
 * The refusal of a file.
 * @param total how many problems there are, where not all of them are listed.
 */
export function fileRefusal(name: string, problems: readonly ElvProblem[], total = problems.length): Refusal {
  const listed = total > problems.length ? `, of which the first ${problems.length} are listed` : '';
  const number = total === 1 ? 'a problem' : `${total} problems${listed}`;
  return { title: `${name} was not read because of ${number}. The schedule is as it was.`, problems };
}

/** What just happened, with a button that takes it back. Both regions always stand, so that what appears is spoken. */
export function messageLine(message: Message | undefined, take: (offer: Offer) => void): TemplateResult {
  const refused = message?.tone === 'refused';
  const { offers = [] } = message ?? {};
  return html`<span role="status" class="said">${refused ? nothing : message?.text}</span>
    <span role="alert" class="refused">${refused ? message.text : nothing}</span>
    ${offers.map((offer) => html`<button type="button" class="link" data-offer=${offer}
      @click=${() => { take(offer); }}>${OFFER_WORDS[offer]}</button>`)}`;
}

/** What was refused, each problem with its place and what to do. */
export function refusalList({ title, problems }: Refusal, dismiss: () => void): TemplateResult {
  return html`<section class="problems" aria-label="What was refused">
    <header><h3><span role="alert">${title}</span></h3>
      <button type="button" title="Dismiss" aria-label="Dismiss the problems" @click=${dismiss}>${icon('close')}</button></header>
    <ul tabindex="0" aria-label="Problems">${problems.map(problemLine)}</ul>
  </section>`;
}

function problemLine({ line, column, message }: ElvProblem): TemplateResult {
  const place = line === undefined || message.startsWith('Line ') ? nothing
    : html`<b>Line ${line}${column === undefined ? nothing : `, column ${column}`}:</b> `;
  return html`<li>${place}${message}</li>`;
}
