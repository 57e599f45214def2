import { html, type TemplateResult } from 'lit';
import type { Words } from '../../src/words/index.ts';

const ATTRIBUTE = 'license-key';
const FREE_KEY = 'non-commercial-and-evaluation';

/** What is needed where no key for the grid was given. */
export function keyNeeded(words: Words): TemplateResult {
  const needed = words.say('The rows of a schedule are shown in Handsontable, a grid that comes under a licence of its own. Give its key in the attribute {attribute}: the one that was bought with a licence or, free of charge and only for evaluation and non-commercial use, {key}. Its licence page says which of them applies.',
    { attribute: ATTRIBUTE, key: FREE_KEY });
  return html`<div class="card" role="note">
    <h3>${words.say('The rows need a key')}</h3>
    <p>${needed.split(new RegExp(`(${ATTRIBUTE}|${FREE_KEY})`)).map((part, index) => index % 2 === 0 ? part : html`<code>${part}</code>`)}</p>
    <p>${words.say('Everything else works without it: open and save files, read the loadings and the findings.')}</p>
  </div>`;
}
