import { html, nothing, type TemplateResult } from 'lit';
import type { PanelChoice } from '../../src/engine/panel-of.ts';
import type { Words } from '../../src/words/index.ts';

/** Chooses the panel that is looked at; there is nothing to choose where the schedule has fewer than two. */
export function panelChoice(
  names: readonly string[], chosen: PanelChoice, words: Words, choose: (panel: PanelChoice) => void,
): TemplateResult | typeof nothing {
  if (names.length < 2) return nothing;
  const choices: readonly PanelChoice[] = [undefined, ...names, null];
  const title = (panel: PanelChoice) =>
    panel === undefined ? words.say('All panels') : panel ?? words.say('In no panel');
  return html`<select class=${chosen === undefined ? 'panels' : 'panels narrowed'} aria-label=${words.say('Panel that is looked at')}
    title=${words.say('Only the rows, sums and findings of one panel')}
    @change=${({ currentTarget }: Event) => { choose(choices[(currentTarget as HTMLSelectElement).selectedIndex]); }}>
    ${choices.map((panel) => html`<option ?selected=${panel === chosen}>${title(panel)}</option>`)}</select>`;
}
