import type { Takeoff } from '../read-takeoff.ts';
import { deviceName } from './device-name.ts';

/** Keys of the names of a takeoff that are so called: as a whole, or by what stands as type or description. */
export function nameKeysOf({ names }: Takeoff, text: string): string[] {
  const { key } = deviceName(text);
  const meant = names.filter(({ texts }) => [texts.join(', '), ...texts].some((each) => deviceName(each).key === key));
  return meant.map((name) => name.key);
}
