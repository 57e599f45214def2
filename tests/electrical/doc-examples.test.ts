import { readdirSync, readFileSync } from 'node:fs';
import { runInNewContext } from 'node:vm';
import { describe, expect, test } from 'vitest';
import * as electrical from '../../src/electrical/index.ts';
import { closeTo } from '../support/close-to.ts';

/** Figures in doc comments are written to seven digits or in full. */
const TOLERANCE = { absolute: 1e-9, relative: 5e-7 };

const folder = new URL('../../src/electrical/', import.meta.url);
const names = Object.keys(electrical);

/** Value of an expression in which the exports of the folder can be called. */
function evaluate(expression: string): unknown {
  return runInNewContext(`(${expression})`, { ...electrical });
}

function near(expected: unknown): unknown {
  if (typeof expected === 'number') return closeTo(expected, TOLERANCE);
  if (Array.isArray(expected)) return expected.map(near);
  if (typeof expected !== 'object' || expected === null) return expected;
  return Object.fromEntries(Object.entries(expected).map(([key, value]) => [key, near(value)]));
}

const files = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts') && !file.endsWith('index.ts'))
  .map((file) => ({ file, text: readFileSync(new URL(file.replaceAll('\\', '/'), folder), 'utf8') }));

const examples = files.flatMap(({ file, text }) =>
  [...text.matchAll(/@example ([\s\S]+?) \/\/ (.+)$/gm)].map(([, call = '', value = '']) =>
    // An example may go on over several lines of its comment.
    ({ file, call: call.replaceAll(/\s*\n \*\s*/g, ' '), value })));

describe('examples in the doc comments hold', () => {
  test.each(examples)('$file: $call is $value', ({ call, value }) => {
    expect(evaluate(call)).toEqual(near(evaluate(value)));
  });
});

test('every function of the folder has an example', () => {
  const shown = new Set(examples.flatMap(({ call }) => (/\w+/.exec(call))?.[0] ?? []));
  const functions = names.filter((name) => typeof electrical[name as keyof typeof electrical] === 'function');
  expect(functions.filter((name) => !shown.has(name))).toEqual([]);
});
