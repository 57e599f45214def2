import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runJoin } from '../../src/cli/run-join.ts';

let folder: string;
const file = (supplies: unknown[], devices: unknown[] = []) =>
  JSON.stringify({ format: 'elv-load-schedule', version: 2, sheets: { supplies, devices } });
const FILES = {
  'base.json': file([{ rail: 'L1', rated: 5 }, { rail: 'L2', rated: 10 }]),
  'mine.json': file([{ rail: 'L1', rated: 10 }, { rail: 'L2', rated: 10 }, { rail: 'L3', rated: 5 }], [{ ref: 'D1', rail: 'L3' }]),
  'theirs.json': file([{ rail: 'L1', rated: 20 }, { rail: 'L3', rated: 20 }], [{ ref: 'E1', rail: 'L3' }]),
};

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'join-'));
  for (const [name, text] of Object.entries(FILES)) await writeFile(join(folder, name), text);
});
afterAll(async () => { await rm(folder, { recursive: true }); });

async function run(...words: string[]) {
  let out = '';
  const warnings: string[] = [];
  const code = await runJoin(words.map((word) => word.endsWith('.json') ? join(folder, word) : word), {
    out: (text) => { out += text; }, warn: (line) => { warnings.push(line.replaceAll(`${folder}/`, '')); },
  });
  const written = async () => JSON.parse(await readFile(join(folder, 'out.json'), 'utf8')) as { readonly sheets: unknown };
  return { code, out, warnings, written, json: () => JSON.parse(out) as unknown };
}

const WITH_BASE = ['mine.json', 'theirs.json', '--base', 'base.json', '--output', 'out.json'];

describe('the command join', () => {
  it('joins against the base, says what came and what is in conflict, and exits with 1 while that stands', async () => {
    const { code, json, warnings, written } = await run(...WITH_BASE);
    expect(code).toBe(1);
    expect(json()).toMatchObject({
      added: [{ sheet: 'devices', tag: 'E1' }], changed: [], removed: [{ sheet: 'supplies', tag: 'L2' }],
      conflicts: [
        { name: 'supplies/L1/rated', base: 5, mine: 10, theirs: 20, choice: null, about: 'Both changed it, each in a way of their own.' },
        { name: 'supplies/L3/rated', choices: ['mine', 'theirs', 'both'], about: 'Both have a row of this tag, with other values: is it one thing, or are these two?' },
      ],
    });
    expect(warnings).toEqual([
      'From theirs: 1 row added, 0 changed, 1 removed; 0 other entries.',
      '2 conflicts are open: yours stand until they are decided.',
    ]);
    expect((await written()).sheets).toMatchObject({
      supplies: [{ rail: 'L1', rated: 10 }, { rail: 'L3', rated: 5 }], devices: [{ ref: 'D1', rail: 'L3' }, { ref: 'E1', rail: 'L3' }],
    });
  });

  it('takes what a person decides', async () => {
    const { code, warnings, written } =
      await run(...WITH_BASE, '--choose', 'supplies/L1/rated=theirs', '--choose', 'supplies/L3/rated=both');
    expect([code, warnings.length]).toEqual([0, 1]);
    expect((await written()).sheets).toMatchObject({
      supplies: [{ rail: 'L1', rated: 20 }, { rail: 'L3', rated: 5 }, { rail: 'L4', rated: 20 }],
      devices: [{ ref: 'D1', rail: 'L3' }, { ref: 'E1', rail: 'L4' }],
    });
  });

  it('decides all at once, but for what is decided by name', async () => {
    const { code, written } = await run(...WITH_BASE, '--all', 'theirs', '--choose', 'supplies/L1/rated=mine');
    expect(code).toBe(0);
    expect((await written()).sheets)
      .toMatchObject({ supplies: [{ rail: 'L1', rated: 10 }, { rail: 'L3', rated: 20 }] });
  });

  it('keeps all rows of both where there is no base', async () => {
    const { code, written } = await run('mine.json', 'theirs.json', '--output', 'out.json');
    expect(code).toBe(1);
    expect((await written()).sheets).toMatchObject({ supplies: [{ rail: 'L1' }, { rail: 'L2' }, { rail: 'L3' }] });
    expect(await run('mine.json', 'mine.json')).toMatchObject({ code: 0 });
  });

  it.each([
    [['mine.json'], 'Two schedules are joined; 1 named.'],
    [['mine.json', 'theirs.json', '--all', 'both'], '--all both is not known. Give one of mine, theirs.'],
    [['mine.json', 'theirs.json', '--choose', 'supplies/L1/rated'], '--choose supplies/L1/rated is not understood.'],
    [['mine.json', 'theirs.json', '--choose', 'supplies/L9=mine'], '--choose supplies/L9=mine: there is no conflict of that name.'],
    [[...WITH_BASE, '--choose', 'supplies/L1/rated=both'], '--choose supplies/L1/rated=both: it takes one of mine, theirs.'],
    [['mine.json', 'none.json'], 'none.json: there is no such file.'],
  ])('refuses %j', async (words, reason) => {
    const { code, out, warnings } = await run(...words);
    expect([code, out]).toEqual([2, '']);
    expect(warnings[0]).toContain(reason);
  });

  it('explains itself', async () => {
    expect(await run('--help')).toMatchObject({ code: 0, out: expect.stringContaining('elv-join MINE THEIRS') as string });
  });
});
