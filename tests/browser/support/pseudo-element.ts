import { LoadScheduleElement } from '../../../components/load-schedule/load-schedule.ts';
import { PSEUDO } from '../../support/pseudo-words.ts';

/** An element that speaks the pseudo language from the start. */
export class PseudoElement extends LoadScheduleElement {
  constructor() {
    super();
    this.spoken.words = PSEUDO;
    this.holder.speak(PSEUDO);
  }
}

export const PSEUDO_TAG = 'pseudo-load-schedule';

customElements.define(PSEUDO_TAG, PseudoElement);
