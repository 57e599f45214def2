import type { JoinConflict } from '../../src/exchange/join/index.ts';
import { message, type Words } from '../../src/words/index.ts';
import type { ConflictWords } from '../schedule-join/conflict-table.ts';

/** How what schedule and variant both changed is asked. */
export const VARIANT_CONFLICTS: ConflictWords = {
  caption: message('What schedule and variant both changed'),
  titles: [message('Where'), message('When it was kept'), message('Schedule'), message('Variant'), message('What counts')],
  choices: {
    mine: message('Schedule'), theirs: message('Variant'), both: message('Both, that of the variant with a tag of its own'),
  },
  sentence: ({ kind, mine, choices }: JoinConflict, words: Words): string => {
    switch (kind) {
      case 'removed': return mine === null
        ? words.say('The schedule has the row no longer; the variant changed it, or names it in another one.')
        : words.say('The variant has the row no longer; the schedule changed it since, or names it in another one.');
      case 'tag': return words.say('The variant has a new row with a tag that another row of the schedule has by now.');
      case 'parts': return words.say(
        'It is shared out over rows, and both changed their quantities: those of one of them count together.');
      default: return choices.includes('both')
        ? words.say('Both have a new row of this kind, with other values: is it one thing, or are these two?')
        : words.say('Both changed it since the variant was kept, each in a way of its own.');
    }
  },
};
