/** How the device rows are shown: as they were entered, or gathered under headings. */
export type Grouping = 'entered' | 'rail' | 'branch' | 'way' | 'run' | 'area' | 'type';

/** Asks, inside the element, to show the device rows in another way. */
export class GroupingEvent extends Event {
  static readonly type = 'elv-grouping';

  readonly grouping: Grouping;

  constructor(grouping: Grouping) {
    super(GroupingEvent.type, { bubbles: true, composed: true });
    this.grouping = grouping;
  }
}
