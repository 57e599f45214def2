/** What an element is just busy with. */
export type Task = 'file' | 'sharing';

/** Says, inside the element, that a task begins or ends. */
export class BusyEvent extends Event {
  static readonly type = 'elv-busy';

  readonly task: Task;
  readonly isRunning: boolean;

  constructor(task: Task, isRunning: boolean) {
    super(BusyEvent.type, { bubbles: true, composed: true });
    this.task = task;
    this.isRunning = isRunning;
  }
}
