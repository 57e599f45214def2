import { css, html, nothing, type TemplateResult } from 'lit';
import type { Finding, Severity } from '../../src/findings/finding.ts';
import { columnOf, SCHEMA } from '../../src/schedule/index.ts';
import { GoToEvent } from '../events/index.ts';
import { markShape } from '../look/index.ts';

/** Headings of the groups of findings. */
export const SEVERITY_TITLES: Readonly<Record<Severity, string>> = {
  over: 'Over', near: 'Near the limit', incomplete: 'Incomplete', note: 'Notes',
};

function findingLine({ severity, sheet, id, key, tag, row, message, accepted }: Finding): TemplateResult {
  const go = (event: Event) => event.currentTarget!.dispatchEvent(new GoToEvent({ sheet, id, key }));
  const where = `${SCHEMA[sheet].title}, row ${row}, ${columnOf(sheet, key).title}`;
  return html`<li><button type="button" class="finding" title=${where} @click=${go}>
    ${markShape(severity)}<span class="english">${withTag(message, tag)}${accepted === undefined ? nothing
      : html` <span class="quiet">Accepted by ${accepted.name}: ${accepted.reason}</span>`}</span>
  </button></li>`;
}

/** A sentence in which the tag that it is about stands out. */
function withTag(message: string, tag: string): TemplateResult {
  const at = tag === '' ? -1 : message.indexOf(tag);
  return at < 0 ? html`${message}` : html`${message.slice(0, at)}<b>${tag}</b>${message.slice(at + tag.length)}`;
}

/**
 * The findings of one severity under a heading with their number.
 * @param shown how many are listed; the rest is a button's press away.
 * @param more called to list more of them.
 */
export function findingGroup(
  severity: Severity, findings: readonly Finding[], shown: number, more: () => void,
): TemplateResult {
  const rest = findings.length - shown;
  return html`<details open id="findings-${severity}">
    <summary class=${severity}>${markShape(severity)}${SEVERITY_TITLES[severity]} <span class="count">${findings.length}</span></summary>
    <ul>${findings.slice(0, shown).map(findingLine)}</ul>
    ${rest > 0 ? html`<button type="button" class="link more" @click=${more}>Show ${Math.min(rest, 100)} more of ${findings.length}</button>` : nothing}
  </details>`;
}

export const findingListStyles = css`
  .finding {
    align-items: baseline;
    inline-size: 100%;
    gap: 0.6em;
    padding: 4px 14px;
    border-radius: 0;
    text-align: start;
    white-space: normal;
  }
  .finding b { font-weight: 600; }
  .finding .mark { position: relative; inset-block-start: 1px; }
  .finding:focus-visible { outline-offset: -3px; }
  .more { margin: 2px 14px 6px; }
`;
