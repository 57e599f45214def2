import { html, render, type TemplateResult } from 'lit';
import { icon, placeBelow } from '../look/index.ts';
import type { Words } from '../../src/words/index.ts';

/**
 * The button that shows the keys, and the sheet of them, which is fetched when it is asked for: it is no dialog, and
 * goes when something else is clicked.
 */
export function keyPopover(words: Words): TemplateResult {
  const open = (event: ToggleEvent) => {
    const popover = event.currentTarget as HTMLElement;
    if (event.newState !== 'open') return;
    placeBelow(event);
    import('./key-help.ts').then(({ keyHelp }) => { render(keyHelp(words), popover); }).catch(reportError);
  };
  return html`<button type="button" popovertarget="keys" title=${words.say('Every key (Ctrl+/)')}>${icon('keys')}<span class="word">${words.say('Keys')}</span></button>
    <div popover id="keys" class="floating" role="region" aria-label=${words.say('Keys')} tabindex="0" @beforetoggle=${open}></div>`;
}
