import { parseArgs, type ParseArgsConfig } from 'node:util';
import { Refusal } from './refusal.ts';

/**
 * Reads the words behind a command.
 * @param options what the command knows, as `parseArgs` of Node takes it.
 * @param hint sentence that says where all of it is listed.
 * @throws Refusal for a word that the command does not know.
 */
export function parseWords<const Options extends NonNullable<ParseArgsConfig['options']>>(
  words: readonly string[], options: Options, hint: string,
) {
  try {
    return parseArgs({ args: [...words], allowPositionals: true, options });
  } catch (error) {
    throw new Refusal([`${(error as Error).message.split('. ')[0]}. ${hint}`]);
  }
}
