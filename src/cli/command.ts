import type { ParseArgsConfig } from 'node:util';
import '../engine/engine-at-once.define.ts';
import type { Words } from '../words/index.ts';
import { helpText, hintOf, type Help } from './help-text.ts';
import { spokenWords } from './lang-option.ts';
import { parseWords } from './parse-words.ts';
import { Refusal, refusing } from './refusal.ts';
import type { Streams } from './streams.ts';

const COMMON = { output: { type: 'string' }, lang: { type: 'string' }, help: { type: 'boolean' } } as const;

type Options = NonNullable<ParseArgsConfig['options']>;

/** What a person gave a command. */
export type Given<Own extends Options> = ReturnType<typeof parseWords<Own & typeof COMMON>> & {
  /** The language of what is said. */
  readonly words: Words;
};

/** Carries a command out on the words behind it. @returns its exit code. */
export type Command = (args: readonly string[], streams: Streams) => Promise<0 | 1 | 2>;

/**
 * A command of the terminal: it gives its help, and refuses words that it does not know.
 * @param options its own words, as `parseArgs` of Node takes them, beside `--output`, `--lang` and `--help`.
 * @param run does its work. Its refusals are said, and end it with 2.
 */
export function command<const Own extends Options>(
  help: Help, options: Own, run: (given: Given<Own>, streams: Streams) => Promise<0 | 1>,
): Command {
  return (args, streams) => refusing(streams.warn, async () => {
    const given = parseWords(args, { ...COMMON, ...options }, hintOf(help.name));
    const { lang, help: asked } = given.values as { readonly lang?: string; readonly help?: boolean };
    if (asked === true) {
      streams.out(helpText(help));
      return 0;
    }
    return run({ ...given, words: await spokenWords(lang) }, streams);
  });
}

/**
 * The word of an option that takes one of some.
 * @throws Refusal for another one.
 */
export function oneOf<Word extends string>(option: string, given: string, words: readonly Word[]): Word {
  const word = words.find((each) => each === given);
  if (word === undefined) throw new Refusal([`--${option} ${given} is not known. Give one of ${words.join(', ')}.`]);
  return word;
}

/** The same where the option may be left out. */
export function oneOrNone<Word extends string>(
  option: string, given: string | undefined, words: readonly Word[],
): Word | undefined {
  return given === undefined ? undefined : oneOf(option, given, words);
}

/** @throws Refusal where no input is named. */
export function refuseNone(inputs: readonly string[], name: string): void {
  if (inputs.length === 0) throw new Refusal([`No input is named. Name a schedule or sheets in CSV; ${hintOf(name)}`]);
}

/**
 * The names of two schedules.
 * @param done what is done with them: `compared`.
 * @throws Refusal where other than two are named.
 */
export function twoNames(names: readonly string[], done: string, name: string): [string, string] {
  const [one, other, ...others] = names;
  if (one !== undefined && other !== undefined && others.length === 0) return [one, other];
  throw new Refusal([`Two schedules are ${done}; ${names.length} named. ${hintOf(name)}`]);
}

/** @throws Refusal where a format that is no text has no file to go to. @param example a name for it. */
export function refuseNoFile(format: string, output: string | undefined, example: string): void {
  if (output !== undefined) return;
  throw new Refusal([
    `--format ${format} is no text for the terminal. Name a file with --output, as in --output ${example}.${format}.`,
  ]);
}
