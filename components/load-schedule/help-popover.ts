import { html, render, type TemplateResult } from 'lit';
import { icon, placeBelow, type Place } from '../look/index.ts';
import type { Words } from '../../src/words/index.ts';

/** The button of the help, and the help, which is fetched when it is asked for first. */
export function helpPopover(words: Words, here: () => Place): TemplateResult {
  const open = (event: ToggleEvent) => {
    const popover = event.currentTarget as HTMLElement;
    if (event.newState !== 'open') return;
    placeBelow(event);
    import('../help/help-pane.define.ts').then(() => {
      render(html`<elv-help .words=${words} .place=${here()}></elv-help>`, popover);
      return popover.querySelector('elv-help')!.begin();
    }).catch(reportError);
  };
  return html`<button type="button" class="small" data-command="help" popovertarget="help" title=${words.say('What columns and words mean (F1)')}>${icon('help')}<span class="unseen">${words.say('Help')}</span></button>
    <div popover id="help" class="floating" role="region" aria-label=${words.say('Help')} @beforetoggle=${open}></div>`;
}
