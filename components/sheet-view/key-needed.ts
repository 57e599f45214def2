import { html, type TemplateResult } from 'lit';

/** What is needed where no key for the grid was given. */
export function keyNeeded(): TemplateResult {
  return html`<div class="card" role="note">
    <h3>The rows need a key</h3>
    <p>The rows of a schedule are shown in Handsontable, a grid that comes under a licence of its own. Give its key in the attribute
      <code>license-key</code>: the one that was bought with a licence or, free of charge and only for evaluation and
      non-commercial use, <code>non-commercial-and-evaluation</code>. Its licence page says which of them applies.</p>
    <p>Everything else works without it: open and save files, read the loadings and the findings.</p>
  </div>`;
}
