import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

/** Lines of the table of habits: what holds, and where the test of it is. */
const LINES = readFileSync('DEVELOPERS.md', 'utf8').split('### What spreadsheets do')[1]!.split('\nNot there: ')[0]!
  .split('\n').filter((line) => /^\| [^-]/.test(line)).slice(1)
  .map((line) => line.split(' | ')).map(([habit, held]) => ({ habit: habit!.slice(2), held: held!.replace(/ \|$/, '') }));

/** Files that a line names, each with the title of the tests meant, if it says one. */
const named = (held: string) => [...held.matchAll(/`([^`]+)`(?:: ([^`,]+))?/g)].map(([, file, title]) => ({ file: file!, title }));

test('at least sixty habits are held', () => {
  expect(LINES.length).toBeGreaterThanOrEqual(60);
});

test.each(LINES)('$habit', ({ held }) => {
  expect(named(held)).not.toEqual([]);
  for (const { file, title } of named(held)) {
    const titles = [...readFileSync(`tests/browser/${file}.test.ts`, 'utf8').matchAll(/(?:test|describe)\('([^']+)'/g)].map(([, each]) => each!);
    expect(titles.filter((each) => each.startsWith(title ?? ''))).not.toEqual([]);
  }
});
