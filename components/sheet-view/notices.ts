import { html, nothing, type TemplateResult } from 'lit';
import { icon } from '../look/index.ts';
import { MOST_PROBLEMS } from '../../src/exchange/index.ts';
import { editsTitle } from '../../src/report/file-text.ts';
import { message, type Words } from '../../src/words/index.ts';
import type { ElvProblem } from '../load-schedule/events.ts';

/** What can be done about what just happened. */
export type Offer = 'undo' | 'redo' | 'whatChanged' | 'cancelReading' | 'takeoff';

const OFFER_WORDS: Readonly<Record<Offer, string>> = {
  undo: message('Undo'), redo: message('Redo'), whatChanged: message('What changed'),
  cancelReading: message('Cancel the reading'), takeoff: message('Read it with Takeoff'),
};

/** What the line below the grid says. */
export interface Message {
  readonly text: string;
  readonly tone: 'info' | 'refused';
  /** The buttons beside it. */
  readonly offers?: readonly Offer[];
  /** The list that a takeoff is offered for. */
  readonly list?: string | undefined;
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
export function fileRefusal(
  words: Words, name: string, problems: readonly ElvProblem[], total = problems.length
): Refusal {
  const { length: listed } = problems;
  const title = total > listed
    ? words.say(
      '{file} was not read because of {total} problems, of which the first {listed} are listed. The schedule is as it was.',
      { file: name, total, listed }
    )
    : words.say(
      '{file} was not read because of {total, plural, one {a problem} other {# problems}}. The schedule is as it was.',
      { file: name, total }
    );
  return { title, problems };
}

/** What was not taken over from the worksheets of a load table, the first of it where there is much. */
export function editsRefusal(words: Words, name: string, edits: readonly string[]): Refusal {
  const more = edits.length - MOST_PROBLEMS;
  const rest = more > 0 ? [words.say('And {count} more of this kind.', { count: more })] : [];
  const listed = [...edits.slice(0, MOST_PROBLEMS), ...rest];
  return { title: editsTitle(name, words), problems: listed.map((sentence) => ({ message: sentence })) };
}

/** What just happened, with a button that takes it back. Both regions always stand, so that what appears is spoken. */
export function messageLine(shown: Message | undefined, words: Words, take: (offer: Offer) => void): TemplateResult {
  const refused = shown?.tone === 'refused';
  const { offers = [] } = shown ?? {};
  return html`<span role="status" class="said">${refused ? nothing : shown?.text}</span>
    <span role="alert" class="refused">${refused ? shown.text : nothing}</span>
    ${offers.map((offer) => html`<button type="button" class="link" data-offer=${offer}
      @click=${() => { take(offer); }}>${words.say(OFFER_WORDS[offer])}</button>`)}`;
}

/** What was refused, each problem with its place and what to do. */
export function refusalList({ title, problems }: Refusal, words: Words, dismiss: () => void): TemplateResult {
  return html`<section class="problems" aria-label=${words.say('What was refused')}>
    <header><h3><span role="alert">${title}</span></h3>
      <button type="button" title=${words.say('Dismiss')} aria-label=${words.say('Dismiss the problems')} @click=${dismiss}>${icon('close')}</button></header>
    ${problems.length === 0 ? nothing : html`<ul tabindex="0" aria-label=${words.say('Problems')}>${problems.map((problem) => problemLine(problem, words))}</ul>`}
  </section>`;
}

function problemLine({ line, column, message: sentence }: ElvProblem, words: Words): TemplateResult {
  if (line === undefined) return html`<li>${sentence}</li>`;
  const place = column === undefined
    ? words.say('Line {line}:', { line })
    : words.say('Line {line}, column {column}:', { line, column });
  // A reader that knows more of the place begins with it.
  const isPlaced = sentence.startsWith(words.say('Line {line}', { line }));
  return html`<li>${isPlaced ? nothing : html`<b>${place}</b> `}${sentence}</li>`;
}
