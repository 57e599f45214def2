import { printParseErrorCode, visit } from 'jsonc-parser';
import { message, type Words } from '../../words/index.ts';
import { ProblemList, tooLarge, unreadable, type Unreadable } from '../problem.ts';

/** Deepest nesting that is read; a schedule needs five levels. */
const DEEPEST = 100;

/** What is wrong and what to do, by the name that the parser gives the fault. */
const SYNTAX: Readonly<Record<string, string>> = {
  InvalidSymbol: message('There is a word that JSON does not know; texts stand in double quotes.'),
  InvalidNumberFormat: message('There is a number that JSON does not know; write it as 12.5.'),
  PropertyNameExpected: message(
    'There is no key where one is expected; keys stand in double quotes, and no comma behind the last one.'
  ),
  ValueExpected: message('There is no value where one is expected; write one, and no comma after the last one.'),
  ColonExpected: message('There is no colon between key and value; write one.'),
  CommaExpected: message('There is no comma between two values; write one.'),
  CloseBraceExpected: message('There is no closing brace; the file may be cut short.'),
  CloseBracketExpected: message('There is no closing bracket; the file may be cut short.'),
  EndOfFileExpected: message('There is more text after the end of the schedule; delete it.'),
  InvalidCommentToken: message('There is a comment, which JSON does not allow; delete it.'),
  UnexpectedEndOfComment: message('There is a comment, which JSON does not allow; delete it.'),
  UnexpectedEndOfString: message('There is a text without its closing quote; write it on the same line.'),
  UnexpectedEndOfNumber: message('There is a number that breaks off; complete it.'),
  InvalidUnicode: message('There is a character code that is not one; write \\u and four digits.'),
  InvalidEscapeCharacter: message(
    'There is a backslash before a character that needs none; write two backslashes for one.'
  ),
  InvalidCharacter: message('There is a control character inside a text; write \\n for a line break, \\t for a tab.'),
};

/** JSON that was read; `text` is what was read of it, without a byte order mark. */
interface Parsed {
  readonly ok: true;
  readonly value: unknown;
  readonly text: string;
}

/**
 * Reads JSON text, RFC 8259.
 * @returns the value; else what is wrong, with line and character: the first fault of syntax, or every key that stands
 *   twice in one object, as only one of its values could be kept.
 */
export function parseJson(source: string, words: Words): Parsed | Unreadable {
  const text = source.replace(/^\ufeff/, '');
  const refused = tooLarge(text.length, words) ?? tooDeep(text, words);
  if (refused !== undefined) return refused;
  const twice = duplicateKeys(text, words);
  if (!twice.ok) return twice;
  try {
    return { ok: true, value: JSON.parse(text) as unknown, text };
  } catch (error) {
    // The two parsers agree on what JSON is; should they ever differ, the file is refused all the same.
    return unreadable(
      'json-syntax', '',
      words.say('The file is not JSON: {fault}. Put that right.', { fault: (error as Error).message })
    );
  }
}

function tooDeep(text: string, words: Words): Unreadable | undefined {
  let depth = 0;
  let quoted = false;
  for (let index = 0; index < text.length; index += 1) {
    const sign = text[index];
    if (sign === '\\') index += 1;
    else if (sign === '"') quoted = !quoted;
    else if (!quoted && (sign === '[' || sign === '{')) depth += 1;
    else if (!quoted && (sign === ']' || sign === '}')) depth -= 1;
    if (depth > DEEPEST) {
      return unreadable('json-too-deep', '',
        words.say(
          'The file nests brackets more than {most} deep; a schedule needs 5. Check what made it.', { most: DEEPEST }
        ));
    }
  }
  return undefined;
}

function duplicateKeys(text: string, words: Words): { readonly ok: true } | Unreadable {
  const list = new ProblemList();
  let fault: Unreadable | undefined;
  const keys: Set<string>[] = [];
  visit(text, {
    onObjectBegin: () => { keys.push(new Set()); },
    onObjectEnd: () => { keys.pop(); },
    onObjectProperty: (key, _offset, _length, line, character, path) => {
      const own = keys.at(-1)!;
      if (own.has(key)) {
        list.add('json-duplicate-key', `/${[...path(), key].join('/')}`,
          words.say('The key “{key}” stands twice in one object; each may stand once. Delete one of them.', { key }),
          { line: line + 1, column: character + 1, received: key });
      }
      own.add(key);
    },
    onError: (code, _offset, _length, line, character) => {
      const what = SYNTAX[printParseErrorCode(code)] ?? message('There is something that is not JSON; put it right.');
      fault ??= unreadable('json-syntax', '', words.say(what), { line: line + 1, column: character + 1 });
    },
  }, { disallowComments: true });
  return fault ?? (list.total > 0 ? list.unreadable : { ok: true });
}
