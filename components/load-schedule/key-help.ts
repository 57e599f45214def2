import { html, type TemplateResult } from 'lit';
import { KEY_HELP } from '../grid/keys.ts';
import { COMMANDS } from '../schedule-toolbar/commands.ts';
import { message, type Words } from '../../src/words/index.ts';

/** Keys of the element itself, beside those of the grid. */
const OWN_KEYS: readonly { readonly keys: string; readonly does: string }[] = [
  ...(['open', 'save', 'csvIn', 'csvOut', 'join', 'takeoff', 'shareOut', 'sizing', 'cases', 'variants', 'wiring', 'bill', 'measure', 'loadTable', 'moreColumns', 'find', 'replace', 'goTo', 'help', 'firstSteps'] as const)
    .map((name) => ({ keys: COMMANDS[name].keys, does: COMMANDS[name].help })),
  { keys: message('Ctrl+Enter'), does: message('Carries out what an open area offers: takes devices, shares them out') },
  { keys: message('F3, Shift+F3'), does: message('Next and previous cell of what was looked for') },
  { keys: message('Alt+Left, Alt+Right'), does: message('Back to where you were before the last jump, and forth again') },
  { keys: message('Alt+Page Down, Alt+Page Up'), does: message('Next sheet, previous sheet') },
  { keys: message('Ctrl+/'), does: message('Shows these keys') },
];

/** Every key, for the help of the element. */
export function keyHelp(words: Words): TemplateResult {
  const line = ({ keys, does }: { readonly keys: string; readonly does: string }) =>
    html`<dt>${words.say(keys)}</dt><dd>${words.say(does)}</dd>`;
  return html`<h3>${words.say('Keys')}</h3><dl>${OWN_KEYS.map(line)}${KEY_HELP.map(line)}</dl>`;
}
