import { html, nothing, type TemplateResult } from 'lit';
import type { Finding } from '../../src/findings/finding.ts';

/** By whom a finding was accepted, when and why; that it has grown worse since, where it has. */
export function acceptedLine({ accepted, reopened }: Finding): TemplateResult | typeof nothing {
  const by = accepted ?? reopened;
  if (by === undefined) return nothing;
  return html` <span class="quiet acceptance">${accepted === undefined ? 'Worse than when it was accepted by' : 'Accepted by'}
    ${by.name} on ${by.date}: ${by.reason}</span>`;
}
