import { printParseErrorCode, visit } from 'jsonc-parser';
import { ProblemList, tooLarge, unreadable, type Unreadable } from '../problem.ts';

/** Deepest nesting that is read; a schedule needs five levels. */
const DEEPEST = 100;

/** What is wrong and what to do, by the name that the parser gives the fault. */
const SYNTAX: Readonly<Record<string, string>> = {
  InvalidSymbol: 'a word that JSON does not know; texts stand in double quotes',
  InvalidNumberFormat: 'a number that JSON does not know; write it as 12.5',
  PropertyNameExpected: 'no key where one is expected; keys stand in double quotes, and no comma behind the last one',
  ValueExpected: 'no value where one is expected; write one, and no comma after the last one',
  ColonExpected: 'no colon between key and value; write one',
  CommaExpected: 'no comma between two values; write one',
  CloseBraceExpected: 'no closing brace; the file may be cut short',
  CloseBracketExpected: 'no closing bracket; the file may be cut short',
  EndOfFileExpected: 'more text after the end of the schedule; delete it',
  InvalidCommentToken: 'a comment, which JSON does not allow; delete it',
  UnexpectedEndOfComment: 'a comment, which JSON does not allow; delete it',
  UnexpectedEndOfString: 'a text without its closing quote; write it on the same line',
  UnexpectedEndOfNumber: 'a number that breaks off; complete it',
  InvalidUnicode: 'a character code that is not one; write \\u and four digits',
  InvalidEscapeCharacter: 'a backslash before a character that needs none; write two backslashes for one',
  InvalidCharacter: 'a control character inside a text; write \\n for a line break, \\t for a tab',
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
export function parseJson(source: string): Parsed | Unreadable {
  const text = source.replace(/^\ufeff/, '');
  const refused = tooLarge(text.length) ?? tooDeep(text);
  if (refused !== undefined) return refused;
  const twice = duplicateKeys(text);
  if (!twice.ok) return twice;
  try {
    return { ok: true, value: JSON.parse(text) as unknown, text };
  } catch (error) {
    // The two parsers agree on what JSON is; should they ever differ, the file is refused all the same.
    return unreadable('json-syntax', '', `The file is not JSON: ${(error as Error).message}. Put that right.`);
  }
}

function tooDeep(text: string): Unreadable | undefined {
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
        `The file nests brackets more than ${DEEPEST} deep; a schedule needs 5. Check what made it.`);
    }
  }
  return undefined;
}

function duplicateKeys(text: string): { readonly ok: true } | Unreadable {
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
          `The key “${key}” stands twice in one object; each may stand once. Delete one of them.`,
          { line: line + 1, column: character + 1, received: key });
      }
      own.add(key);
    },
    onError: (code, _offset, _length, line, character) => {
      const what = SYNTAX[printParseErrorCode(code)] ?? 'something that is not JSON; put it right';
      fault ??= unreadable('json-syntax', '', `There is ${what}.`, { line: line + 1, column: character + 1 });
    },
  }, { disallowComments: true });
  return fault ?? (list.total > 0 ? list.unreadable : { ok: true });
}
