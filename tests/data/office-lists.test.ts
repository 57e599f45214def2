import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const read = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../data/${name}`, import.meta.url), 'utf8')) as Record<string, unknown>;

test.each([['supply-ratings.json', 'ratings'], ['relay-modules.json', 'ways']])(
  '%s lists different values in ascending order and says where they come from', (name, key) => {
    const list = read(name)[key] as number[];
    expect(list.length).toBeGreaterThan(0);
    expect(list.every((value) => Number.isFinite(value) && value > 0)).toBe(true);
    expect([...new Set(list)].sort((a, b) => a - b)).toEqual(list);
    expect(read(name).source).toMatch(/common practice, no source|from memory/);
  },
);
