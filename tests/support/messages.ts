import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import typescript from 'typescript';
import { SCHEMA } from '../../src/schedule/index.ts';

const ROOT = join(import.meta.dirname, '../..');

/** A message as it stands in the code. */
export interface SaidMessage {
  readonly text: string;
  /** File and line that say it, or the place in the schema. */
  readonly place: string;
  /** Whether its braces are those of ICU MessageFormat, which texts of the schema do not follow. */
  readonly formatted: boolean;
}

/** A first argument of `say` that is put together while the program runs, which no catalogue can hold. */
export interface Unreadable {
  readonly place: string;
  readonly code: string;
}

/** Every message that the code says: those given to `say`, those that `message` marks, and the texts of the schema. */
export function saidMessages(): { messages: SaidMessage[]; unreadable: Unreadable[] } {
  const messages = schemaTexts();
  const unreadable: Unreadable[] = [];
  for (const folder of ['src', 'components']) {
    for (const entry of readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })) {
      const file = `${folder}/${entry.replaceAll('\\', '/')}`;
      if (!file.endsWith('.ts') || file.startsWith('src/words/')) continue;
      scan(file, readFileSync(join(ROOT, file), 'utf8'), messages, unreadable);
    }
  }
  return { messages, unreadable };
}

/** The messages that the files whose paths begin so say, as `src/findings/`. */
export function messagesSaidIn(...places: readonly string[]): string[] {
  const said = saidMessages().messages.filter(({ place }) => places.some((each) => place.startsWith(each)));
  return [...new Set(said.map(({ text }) => text))];
}

function scan(file: string, code: string, messages: SaidMessage[], unreadable: Unreadable[]): void {
  const source = typescript.createSourceFile(file, code, typescript.ScriptTarget.ES2022, true);
  const visit = (node: typescript.Node): void => {
    if (typescript.isCallExpression(node) && node.arguments[0] !== undefined) {
      const name = calledName(node.expression);
      if (name === 'say' || name === 'message') {
        const place = `${file}:${source.getLineAndCharacterOfPosition(node.getStart()).line + 1}`;
        for (const part of choicesOf(node.arguments[0])) {
          if (typescript.isStringLiteralLike(part)) {
            messages.push({ text: part.text, place, formatted: !file.startsWith('src/schedule/schema/') });
          }
          else if (typescript.isTemplateExpression(part) || typescript.isBinaryExpression(part)) {
            unreadable.push({ place, code: part.getText().slice(0, 80) });
          }
        }
      }
    }
    typescript.forEachChild(node, visit);
  };
  visit(source);
}

function calledName(called: typescript.Expression): string | undefined {
  if (typescript.isIdentifier(called)) return called.text;
  return typescript.isPropertyAccessExpression(called) ? called.name.text : undefined;
}

/** What a first argument may be: both sides of a condition. */
function choicesOf(node: typescript.Expression): typescript.Expression[] {
  if (typescript.isParenthesizedExpression(node)) return choicesOf(node.expression);
  return typescript.isConditionalExpression(node)
    ? [...choicesOf(node.whenTrue), ...choicesOf(node.whenFalse)] : [node];
}

/** Keys of the schema whose values a person reads; their words stand anywhere below a sheet. */
const READ_KEYS = new Set(['title', 'help', 'rowName', 'words', 'source', 'label', 'choices']);

function schemaTexts(): SaidMessage[] {
  const found: SaidMessage[] = [];
  const visit = (value: unknown, place: string, read: boolean): void => {
    if (typeof value === 'string') {
      if (read && hasWords(value)) found.push({ text: value, place, formatted: false });
    } else if (typeof value === 'object' && value !== null) {
      for (const [key, each] of Object.entries(value)) {
        visit(each, `${place}.${key}`, READ_KEYS.has(key) || (read && Array.isArray(value)));
      }
    }
  };
  for (const [sheet, schema] of Object.entries(SCHEMA)) visit(schema, sheet, false);
  return found;
}

/** Whether a text holds a word outside its braces; formulas, symbols and numbers of standards need no translation. */
function hasWords(text: string): boolean {
  return /\p{Ll}{2,}/u.test(text.replace(/\{[^}]*\}/g, ''));
}
