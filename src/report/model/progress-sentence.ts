import type { Progress } from '../../terminals/index.ts';
import type { Words } from '../../words/index.ts';

/** How far wiring is: «23 of 104 wired, 7 checked», with what was changed since it was ticked. */
export function progressSentence({ terminals, wired, checked, otherwise }: Progress, words: Words): string {
  return otherwise === 0 ? words.say('{wired} of {terminals} wired, {checked} checked', { terminals, wired, checked })
    : words.say('{wired} of {terminals} wired, {checked} checked; {otherwise, plural, one {# changed since it was ticked} other {# changed since they were ticked}}',
      { terminals, wired, checked, otherwise });
}
