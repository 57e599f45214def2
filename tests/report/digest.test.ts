import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readSchedule, writeSchedule } from '../../src/exchange/index.ts';
import { matchesDigest, scheduleDigest, sha256 } from '../../src/report/digest/index.ts';
import { SOFTWARE } from '../../src/report/software.ts';
import type { Content } from '../../src/schedule/index.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const other = (data: Uint8Array) => createHash('sha256').update(data).digest('hex');

test.each([
  // Examples published with FIPS 180-4 (one block, two blocks, none).
  ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
  [
    'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
    '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
  ],
  ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
])('SHA-256 of “%s”', (text, digest) => {
  expect(sha256(bytes(text))).toBe(digest);
});

test('it agrees with another implementation, around every edge of a block and on random bytes', () => {
  for (let length = 0; length <= 200; length += 1) {
    const data = Uint8Array.from({ length }, (_byte, index) => (index * 37 + length) & 255);
    expect([length, sha256(data)]).toEqual([length, other(data)]);
  }
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 5000 }), (data) => { expect(sha256(data)).toBe(other(data)); }),
    { numRuns: 100 },
  );
});

const content: Content = { details: { project: 'Mill' }, sheets: { supplies: [{ rail: 'L1', rated: 10 }] } };

test('the digest of a schedule is that of its file on one line, however the file is laid out', () => {
  const digest = scheduleDigest(content);
  expect(digest).toBe(other(bytes(writeSchedule(content))));
  for (const text of [writeSchedule(content, { pretty: true }), writeSchedule(content)]) {
    const read = readSchedule(text);
    expect(read.ok && scheduleDigest(read.content)).toBe(digest);
  }
  expect(scheduleDigest({ ...content, sheets: { supplies: [{ rated: 10, rail: 'L1' }] } })).toBe(digest);
  expect(scheduleDigest({ ...content, sheets: { supplies: [{ rail: 'L1', rated: 10.5 }] } })).not.toBe(digest);
});

test('digits from paper match in parts of 16 or more, with spaces and in any case', () => {
  const digest = scheduleDigest(content);
  expect(matchesDigest(content, digest)).toBe(true);
  expect(matchesDigest(content, digest.slice(0, 20).toUpperCase().replace(/(.{4})/g, '$1 '))).toBe(true);
  expect(matchesDigest(content, 'f'.repeat(64))).toBe(false);
  for (const text of [digest.slice(0, 15), `${digest}0`, 'no digits at all', '']) expect(matchesDigest(content, text))
    .toBeUndefined();
});

test('the software says its version', () => {
  const { name, version } = JSON.parse(
    readFileSync(new URL('../../package.json', import.meta.url), 'utf8')
  ) as { name: string; version: string };
  expect(SOFTWARE).toBe(`${name} ${version}`);
});
