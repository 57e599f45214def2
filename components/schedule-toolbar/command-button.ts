import { html, nothing, type TemplateResult } from 'lit';
import { CommandEvent } from '../events/index.ts';
import { icon } from '../look/index.ts';
import type { Words } from '../../src/words/index.ts';
import { COMMANDS, type CommandName } from './commands.ts';

export interface CommandButtonOptions {
  readonly disabled?: boolean;
  /** What the command would act on, for the title: the action that would be taken back. */
  readonly about?: string | undefined;
  /** Shows the drawing alone; the words are the button's name. */
  readonly small?: boolean;
  /** Whether what it opens is open. */
  readonly pressed?: boolean;
}

/** The button of a command. */
export function commandButton(
  name: CommandName, words: Words,
  { disabled = false, about, small = false, pressed = false }: CommandButtonOptions = {},
): TemplateResult {
  const { title, help, icon: drawing, keys } = COMMANDS[name];
  const hint = about === undefined ? words.say('{help} ({keys})', { help: words.say(help), keys: words.say(keys) })
    : words.say('{title}: {about} ({keys})', { title: words.say(title), about, keys: words.say(keys) });
  const press = (event: Event) => event.currentTarget!.dispatchEvent(new CommandEvent(name));
  return html`<button type="button" data-command=${name} class=${small ? 'small' : ''} ?disabled=${disabled}
    aria-pressed=${pressed ? 'true' : nothing} title=${hint} @click=${press}>
    ${icon(drawing)}<span class=${small ? 'unseen' : 'word'}>${words.say(title)}</span>
  </button>`;
}
