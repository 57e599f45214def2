import { html, type TemplateResult } from 'lit';
import { icon, placeBelow } from '../look/index.ts';
import type { Words } from '../../src/words/index.ts';
import { keyHelp } from './key-help.ts';

/** The button that shows the keys, and the sheet of them: it is no dialog, and goes when something else is clicked. */
export function keyPopover(words: Words): TemplateResult {
  return html`<button type="button" popovertarget="keys" title=${words.say('Every key (Ctrl+/)')}>${icon('keys')}<span class="word">${words.say('Keys')}</span></button>
    <div popover id="keys" class="floating" role="region" aria-label=${words.say('Keys')} tabindex="0" @beforetoggle=${placeBelow}>${keyHelp(words)}</div>`;
}
