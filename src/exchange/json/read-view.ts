import type { View } from '../../schedule/index.ts';
import type { Reading } from './reading.ts';
import { isHarmful } from './unknown-keys.ts';

/** Reads how a schedule is looked at; `undefined` where a file says nothing of it. Keys that are not known are kept. */
export function readView(value: unknown, reading: Reading): View | undefined {
  if (value === undefined) return undefined;
  const name = (text: string) => reading.words.say('“{text}”', { text });
  const { rare, ...others } = reading.object(value, '/view', name('view'));
  const sheets = reading.array(rare, '/view/rare', name('rare')).filter((sheet) => typeof sheet === 'string');
  return { ...Object.fromEntries(Object.entries(others).filter(([key]) => !isHarmful(key))), rare: sheets };
}
