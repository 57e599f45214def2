import { html, type TemplateResult } from 'lit';

/** The cautions that stand wherever results are shown: the gist at all times, the rest on demand. */
export function cautions(): TemplateResult {
  return html`<details class="cautions">
    <summary>These figures support the design of a competent person and never replace it. <span class="link">Cautions</span></summary>
    <p>Local wiring rules, the makers’ instructions and licensed practice decide. Mains work is for licensed electricians, with the
      circuit isolated and proved dead. Measure before energising.</p>
  </details>`;
}
