import type { CommandName, JobCommand } from '../schedule-toolbar/commands.ts';

/** What the parts of the element ask of it: the commands of its buttons, and what only notices offer. */
export type AskedCommand =
  CommandName | JobCommand | 'dismiss' | 'dismissTyped' | 'loadDemo' | 'begin' | 'closeSteps' | 'stepsDone' | 'closeWork' | 'closeFind'
  | 'cancelReading' | 'whatChanged';

/** Asks, inside the element, to carry out a command. */
export class CommandEvent extends Event {
  static readonly type = 'elv-command';

  readonly command: AskedCommand;

  constructor(command: AskedCommand) {
    super(CommandEvent.type, { bubbles: true, composed: true });
    this.command = command;
  }
}
