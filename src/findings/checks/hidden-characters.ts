import { hiddenCharacters, SHEET_NAMES, inputColumns, type InputColumn, type SheetName } from '../../schedule/index.ts';
import type { Check } from '../check.ts';
import { holdingHidden, namingHidden } from '../only.ts';

/** The rule against characters that cannot be seen. */
export const HIDDEN_CHARACTER = 'hidden-character';

/**
 * Two tags that look alike differ where one of them holds a character that cannot be seen, as texts of web pages do.
 */
function hiddenCharacter(sheet: SheetName, column: InputColumn): Check {
  return {
    rule: HIDDEN_CHARACTER, sheet, key: column.key, severity: 'incomplete', needs: column.key,
    ...(column.to === undefined ? { only: holdingHidden(column.key) }
      : { only: namingHidden(column.key, column.to), inStatus: true as const }),
    find: (row) => {
      const own = row.own(column.key);
      const characters = typeof own === 'string' ? hiddenCharacters(own) : [];
      return characters.length === 0 ? undefined : {
        value: own, limit: null,
        message: row.say('{name}: {column} contains {characters}, which cannot be seen, and so is not the tag that it looks like. Delete it.', {
          column: row.words.text(column.title), characters: characters.join(', '),
        }),
      };
    },
  };
}

export const hiddenCharacterChecks: readonly Check[] = SHEET_NAMES.flatMap((sheet) =>
  inputColumns(sheet).filter(({ tag, to }) => tag === true || to !== undefined)
    .map((column) => hiddenCharacter(sheet, column)));
