/** Fraction bits of the square or cube root of the first primes (FIPS 180-4, 4.2.2 and 5.3.3). */
function rootBits(power: number, count: number): Uint32Array {
  const bits: number[] = [];
  for (let number = 2; bits.length < count; number += 1) {
    let isPrime = true;
    for (let divisor = 2; divisor * divisor <= number; divisor += 1) isPrime &&= number % divisor !== 0;
    if (isPrime) bits.push(Math.floor((number ** power % 1) * 2 ** 32));
  }
  return Uint32Array.from(bits);
}

const START = rootBits(1 / 2, 8);
const ROUND = rootBits(1 / 3, 64);

const turned = (word: number, by: number) => (word >>> by) | (word << (32 - by));

/**
 * SHA-256. Written here because pages that are not served securely have none, and printing needs it at once.
 * @param bytes what is digested, at most 2^32 bytes.
 * @returns 64 hexadecimal digits in small letters.
 *
 * Source: FIPS 180-4, 6.2.
 *
 * @example sha256(new TextEncoder().encode('abc')).slice(0, 8) // 'ba7816bf'
 */
export function sha256(bytes: Uint8Array): string {
  const padded = new Uint8Array((Math.ceil((bytes.length + 9) / 64)) * 64);
  padded.set(bytes);
  padded[bytes.length] = 0x80;
  const view = new DataView(padded.buffer);
  view.setUint32(padded.length - 8, Math.floor(bytes.length / 2 ** 29));
  view.setUint32(padded.length - 4, (bytes.length * 8) >>> 0);
  const hash = START.slice();
  const words = new Uint32Array(64);
  for (let offset = 0; offset < padded.length; offset += 64) {
    for (let index = 0; index < 16; index += 1) words[index] = view.getUint32(offset + index * 4);
    extend(words);
    compress(hash, words);
  }
  return [...hash].map((word) => word.toString(16).padStart(8, '0')).join('');
}

function extend(words: Uint32Array): void {
  for (let index = 16; index < 64; index += 1) {
    const [early, late] = [words[index - 15]!, words[index - 2]!];
    const small0 = turned(early, 7) ^ turned(early, 18) ^ (early >>> 3);
    const small1 = turned(late, 17) ^ turned(late, 19) ^ (late >>> 10);
    words[index] = words[index - 16]! + small0 + words[index - 7]! + small1;
  }
}

function compress(hash: Uint32Array, words: Uint32Array): void {
  let [a, b, c, d, e, f, g, h] = hash as unknown as [number, number, number, number, number, number, number, number];
  for (let index = 0; index < 64; index += 1) {
    const big1 = turned(e, 6) ^ turned(e, 11) ^ turned(e, 25);
    const first = (h + big1 + ((e & f) ^ (~e & g)) + ROUND[index]! + words[index]!) | 0;
    const big0 = turned(a, 2) ^ turned(a, 13) ^ turned(a, 22);
    const second = (big0 + ((a & b) ^ (a & c) ^ (b & c))) | 0;
    [h, g, f, e, d, c, b, a] = [g, f, e, (d + first) | 0, c, b, a, (first + second) | 0];
  }
  [a, b, c, d, e, f, g, h].forEach((word, index) => { hash[index]! += word; });
}
