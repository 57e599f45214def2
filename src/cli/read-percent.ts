import { Refusal } from './refusal.ts';

/**
 * Reads a percentage behind an option as a share.
 * @throws Refusal for what is none from 0 to 1000.
 */
export function readPercent(option: string, text: string): number {
  const percent = text.trim() === '' ? NaN : Number(text);
  if (percent >= 0 && percent <= 1000) return percent / 100;
  throw new Refusal([`--${option} ${text} is no percentage. Give one from 0 to 1000, as in --${option} 20.`]);
}
