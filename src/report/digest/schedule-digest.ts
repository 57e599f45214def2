import { writeSchedule } from '../../exchange/index.ts';
import type { Content } from '../../schedule/index.ts';
import { sha256 } from './sha-256.ts';

/**
 * The SHA-256 of a schedule, for matching paper and file. It is that of the file as `writeSchedule` writes it on one
 * line, in UTF-8, so that line breaks, indents and the order of keys in a file do not matter, nor how it is looked at
 * and which variants are kept beside it, and every value does.
 * @returns 64 hexadecimal digits in small letters.
 */
export function scheduleDigest(content: Content): string {
  return fileDigest(withoutVariants(content));
}

/** The same of a schedule with the variants that are kept beside it. */
export function fileDigest(content: Content): string {
  return sha256(new TextEncoder().encode(writeSchedule({ ...content, view: undefined })));
}

/** What is handed over: variants are no part of it. */
export function withoutVariants(content: Content): Content {
  return { ...content, variants: undefined };
}
