import type { Place } from '../look/index.ts';

/** Asks, inside the element, to show and select a cell. */
export class GoToEvent extends Event {
  static readonly type = 'elv-go-to';

  readonly place: Place;

  constructor(place: Place) {
    super(GoToEvent.type, { bubbles: true, composed: true });
    this.place = place;
  }
}
