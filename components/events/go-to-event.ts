import type { Place } from '../look/index.ts';

/** Asks, inside the element, to show and select a cell. */
export class GoToEvent extends Event {
  static readonly type = 'elv-go-to';

  readonly place: Place;
  /** The focus stays where it is, as in a field in which a person goes from find to find. */
  readonly keepsFocus: boolean;

  constructor(place: Place, keepsFocus = false) {
    super(GoToEvent.type, { bubbles: true, composed: true });
    this.place = place;
    this.keepsFocus = keepsFocus;
  }
}
