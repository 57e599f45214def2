import { LANGUAGES } from '../words/index.ts';
import { calledAs } from './called-as.ts';

/** What every command takes that reads a schedule. */
export const INPUT = 'a schedule (.schedule.json, or a load table in HTML or XLSX), or sheets in CSV, each known by '
  + 'its headings; a sheet in CSV takes the place of that sheet of the schedule';

/** What figures of a schedule are not. */
export const CAUTION = 'The figures support design by a competent person and never replace it. Local wiring rules, the '
  + "makers' instructions and licensed practice decide.";

/** Where a text of the terminal is broken [signs], and where meanings begin. */
const [WIDEST, INDENT] = [110, 18];

/** What a command is for, for whoever asks it for help. */
export interface Help {
  /** Name of its script: `table`. */
  readonly name: string;
  /** What it does, in a sentence. */
  readonly does: string;
  /** The words that it takes, form by form. */
  readonly forms: readonly string[];
  /** What each word means. */
  readonly words: Readonly<Record<string, string>>;
  /** What is said in the language of `--lang`, beside what is read in it. */
  readonly said: string;
  /** What `--output` writes; by default all that would go to the terminal. */
  readonly output?: string;
  /** What it prints and what it takes for granted, in paragraphs. */
  readonly about?: readonly string[];
  /** What an exit code of 1 says; without it there is none. */
  readonly one?: string;
  /** What its figures are not. */
  readonly caution?: string;
}

/** Where all of a command is listed. */
export function hintOf(name: string): string {
  return `${calledAs(name)} --help says what there is.`;
}

export function helpText({ name, does, forms, words, said, output, about = [], one, caution }: Help): string {
  const all = {
    ...words,
    '--lang TAG': `language of ${said}, and of files that are read beside English: ${LANGUAGES.join(', ')}`,
    '--output FILE': output ?? 'write to a file instead of the terminal', '--help': 'this text',
  };
  const exit = `Exit code: 0; ${one === undefined ? '' : `1 ${one}; `}2 for bad input, which is named by file, line and column.`;
  return [
    does, forms.map((form) => `  ${wrapped(`${calledAs(name)} ${form}`, '    ', WIDEST - 2)}`).join('\n'),
    Object.entries(all).map(([word, meaning]) => meaningText(word, meaning)).join('\n'),
    ...[...about, exit, ...(caution === undefined ? [] : [caution])].map((text) => wrapped(text)),
  ].join('\n\n').concat('\n');
}

function meaningText(word: string, meaning: string): string {
  const lines = wrapped(meaning, '', WIDEST - INDENT).split('\n');
  const first = word.length < INDENT ? `${word.padEnd(INDENT)}${lines.shift()!}` : word;
  return [first, ...lines.map((line) => ' '.repeat(INDENT) + line)].join('\n');
}

function wrapped(text: string, indent = '', width = WIDEST): string {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    if (line !== '' && line.length + 1 + word.length > width) {
      lines.push(line);
      line = indent + word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, line].join('\n');
}
