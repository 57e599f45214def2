import { html, type TemplateResult } from 'lit';
import { icon, zoomOf } from '../look/index.ts';
import type { Words } from '../../src/words/index.ts';
import { keyHelp } from './key-help.ts';

/** The button that shows the keys, and the sheet of them: it is no dialog, and goes when something else is clicked. */
export function keyPopover(words: Words): TemplateResult {
  return html`<button type="button" popovertarget="keys" title=${words.say('Every key (Ctrl+/)')}>${icon('keys')}<span class="word">${words.say('Keys')}</span></button>
    <div popover id="keys" class="keys" role="region" aria-label=${words.say('Keys')} tabindex="0" @beforetoggle=${placeBelow}>${keyHelp(words)}</div>`;
}

/** Puts a popover below its button, as far as the window has room. */
function placeBelow(event: Event): void {
  const popover = event.currentTarget as HTMLElement;
  const button = popover.previousElementSibling!;
  const zoom = zoomOf(button);
  const { bottom, right } = button.getBoundingClientRect();
  popover.style.setProperty('top', `${bottom / zoom + 6}px`);
  const end = (document.documentElement.clientWidth - right) / zoom;
  popover.style.setProperty('right', `clamp(8px, ${end}px, 100vi - 8px - min(30rem, 100vi - 16px))`);
}
