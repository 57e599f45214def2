import { embeddedSchedule, isHtml } from '../../src/exchange/index.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import type { Words } from '../../src/words/index.ts';

/** A file by its name and text. */
export interface NamedText {
  readonly name: string;
  readonly text: string;
}

/** A text as a part of the name of a file; empty where nothing of it may stand there. */
export const inFileName = (text: string): string =>
  text.normalize('NFC').replace(/[^\p{L}\p{N}._-]+/gu, '-').replace(/^[-.]+|[-.]+$/g, '');

/**
 * Name for a file of this schedule, made of its panel or project.
 * @param ending what the file holds, as its name ends: that of a schedule unless said otherwise.
 */
export function fileName(schedule: LoadSchedule, ending = '.schedule.json'): string {
  const { panel, project } = schedule.document.details;
  const base = inFileName(panel ?? project ?? 'load');
  return `${base === '' ? 'load' : base}${ending}`;
}

/** Hands a text to the person as a file. */
export function saveFile({ name, text }: NamedText, type: string): void {
  saveBlob(name, new Blob([text], { type }));
}

/** Hands what a blob holds to the person as a file. */
export function saveBlob(name: string, blob: Blob): void {
  const address = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The download has taken hold of it by the next task.
  setTimeout(() => { URL.revokeObjectURL(address); }, 0);
}

/** The text that an address gave, or a sentence that says why there is none. */
export type FetchedText =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly problem: string };

/** Fetches the text at an address. */
export async function fetchText(address: string, signal: AbortSignal, words: Words): Promise<FetchedText> {
  try {
    const answer = await fetch(address, { signal });
    if (answer.ok) return fetched(await answer.text(), words);
    const status = `${answer.status} ${answer.statusText}`.trim();
    return {
      ok: false,
      problem: words.say('The server answered {status}. Check the address, or open a file instead.', { status }),
    };
  } catch (error) {
    if (signal.aborted) throw error;
    return {
      ok: false,
      problem: words.say('It could not be reached. Check the address and the connection, or open a file instead.'),
    };
  }
}

/** Servers that want a person to sign in answer with a page that asks for it, as if it were the file. */
function fetched(text: string, words: Words): FetchedText {
  if (!isHtml(text) || embeddedSchedule(text) !== undefined) return { ok: true, text };
  return {
    ok: false,
    problem: words.say(
      'The server answered with a web page in the place of a schedule, as it does where one must sign in first. Sign in and load the page again, or check the address.'
    ),
  };
}
