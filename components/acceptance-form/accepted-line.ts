import { html, nothing, type TemplateResult } from 'lit';
import type { Finding } from '../../src/findings/finding.ts';
import type { Words } from '../../src/words/index.ts';

/** By whom a finding was accepted, when and why; that it has grown worse since, where it has. */
export function acceptedLine({ accepted, reopened }: Finding, words: Words): TemplateResult | typeof nothing {
  const by = accepted ?? reopened;
  if (by === undefined) return nothing;
  const { name, date, reason } = by;
  return html` <span class="quiet acceptance">${accepted === undefined
    ? words.say('Worse than when it was accepted by {name} on {date}: {reason}', { name, date: words.date(date), reason })
    : words.say('Accepted by {name} on {date}: {reason}', { name, date: words.date(date), reason })}</span>`;
}
