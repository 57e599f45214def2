import { Inflate } from 'fflate';
import type { ZipEntry } from './zip-entries.ts';

/** Largest workbook that is read [bytes]. */
export const MOST_PACKED = 20 * 1024 * 1024;
/** How large the parts of a workbook that are read may become together [bytes]. */
export const MOST_UNPACKED = 64 * 1024 * 1024;
/** How much is unpacked at once [bytes]; a byte becomes at most 1032, so that this becomes 8 MB. */
const STEP = 8 * 1024;

/** Unpacks files until they become too large together; what a file says of its own size counts for nothing. */
export class Unpacker {
  #size = 0;

  /**
   * Unpacks a file.
   * @returns its bytes; `undefined` when it makes the sum too large.
   * @throws Error for a file that is damaged or packed in another way than deflated.
   */
  unpack({ method, packed }: ZipEntry): Uint8Array | undefined {
    if (method !== 0 && method !== 8) throw new Error('a part of it is packed in an unknown way');
    const chunks: Uint8Array[] = [];
    const keep = (chunk: Uint8Array) => {
      this.#size += chunk.length;
      chunks.push(chunk);
    };
    if (method === 0) keep(packed);
    else this.#inflateInSteps(packed, keep);
    return this.#size > MOST_UNPACKED ? undefined : joined(chunks);
  }

  #inflateInSteps(packed: Uint8Array, keep: (chunk: Uint8Array) => void): void {
    const inflate = new Inflate(keep);
    for (let at = 0; at < packed.length && this.#size <= MOST_UNPACKED; at += STEP) {
      inflate.push(packed.subarray(at, at + STEP), at + STEP >= packed.length);
    }
  }
}

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(chunks.reduce((size, chunk) => size + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}
