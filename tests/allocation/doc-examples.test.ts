import { readdirSync, readFileSync } from 'node:fs';
import { runInNewContext } from 'node:vm';
import { describe, expect, test } from 'vitest';
import * as packing from '../../src/allocation/packing/index.ts';
import { leastTogether } from '../../src/allocation/sharing/least-together.ts';
import { nextTags } from '../../src/schedule/next-tags.ts';

const folder = new URL('../../src/allocation/', import.meta.url);
const examples = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.ts'))
  .flatMap((file) => {
    const text = readFileSync(new URL(file.replaceAll('\\', '/'), folder), 'utf8');
    return [...text.matchAll(/@example (.+) \/\/ (.+)$/gm)].map(([, call = '', value = '']) => ({ call, value }));
  });

/** Value of an expression in which functions of the folder can be called, as plain data of this realm. */
async function evaluate(expression: string): Promise<unknown> {
  const value = await (runInNewContext(
    `(async () => (${expression}))()`, { ...packing, leastTogether, nextTags, Set }
  ) as Promise<unknown>);
  return JSON.parse(JSON.stringify(value)) as unknown;
}

describe('examples in the doc comments hold', () => {
  test('there are some', () => { expect(examples.length).toBeGreaterThanOrEqual(5); });

  test.each(examples)('$call is $value', async ({ call, value }) => {
    expect(await evaluate(call)).toEqual(await evaluate(value));
  });
});
