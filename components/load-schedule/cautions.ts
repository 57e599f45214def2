import { html, type TemplateResult } from 'lit';
import { CAUTIONS } from '../../src/report/cautions.ts';
import type { Words } from '../../src/words/index.ts';

/** The cautions that stand wherever results are shown: the gist at all times, the rest on demand. */
export function cautions(words: Words): TemplateResult {
  const [gist, ...others] = CAUTIONS;
  return html`<details class="cautions">
    <summary>${words.say(gist)} <span class="link">${words.say('Cautions')}</span></summary>
    <p>${others.map((caution) => words.say(caution)).join(' ')}</p>
  </details>`;
}
