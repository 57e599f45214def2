import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TakeoffTable } from '../../src/exchange/takeoff/index.ts';
import { listIssue } from '../../src/exchange/takeoff/list-issue.ts';
import { ISSUES, issuesOf } from '../support/independent-issues.ts';
import { read } from './support.ts';

const list = (...rows: readonly string[]) => ['Room;Device;Qty', ...rows].join('\n');
const EG = list('R1;Presence detector;2', 'R1;Room thermostat;1', 'R2;Presence detector;3', 'R3;Router;4');
const OG = list('R11;Presence detector;5', 'R12;Room thermostat;6', 'R13;Router;4');

/** Quantities that are taken, and those that are asked about, by list. */
function counted(
  tables: readonly TakeoffTable[],
): { taken: Record<string, number>; asked: Record<string, number>; notes: readonly string[] } {
  const { lines, notes } = read(tables);
  const of = (...outcomes: string[]) => {
    const sums: Record<string, number> = {};
    for (const { source: { file, sheet }, qty } of lines.filter((line) => outcomes.includes(line.outcome))) {
      const name = [file, sheet].filter((each) => each !== undefined).join('/');
      sums[name] = (sums[name] ?? 0) + (qty ?? 0);
    }
    return sums;
  };
  return { taken: of('taken', 'merged'), asked: of('undecided'), notes };
}

describe('a line', () => {
  const asked = (source: string) => read(source).lines.filter(({ outcome }) => outcome === 'undecided').map(({ line, qty, reason }) => `${line}: ${qty} ${reason}`);

  it('with a ref that stands there twice is asked about, and without one is another device', () => {
    expect(asked('Ref;Device;Qty\nDP-1;Router;1\nDP-2;Router;1\nDP-2;Router;1\nDP-2;Router;2')).toEqual([
      '4: 1 It is the same as line 3, ref included. Take it if it counts besides, or leave it out. It has the name of its type.',
    ]);
    expect(read('Device;Qty\nRouter;1\nRouter;1').sums).toMatchObject({ taken: 2, undecided: 0 });
  });

  it('whose ref names several is asked about where its quantity is another', () => {
    // 1 to 4 are four; 3 to 6 are four.
    expect(asked('Ref;Device;Qty\nBM-01 to BM-04;Router;1\nBM-05;Router;1\nD3..D6;Router;4\nL1-004;Router;2')).toEqual([
      '2: 4 Its ref “BM-01 to BM-04” names 4, and its quantity is 1. Confirm it, or say how many there are. It has the name of its type.',
    ]);
  });

  it.each(['Summary', 'Totals', 'Zusammenfassung', 'Récapitulatif'])('below “%s” may count once more what stands above', (title) => {
    const { lines, sums } = read(`Device;Qty;Room\nRouter;2;A\nRouter;3;B\n;;\n${title};;\nRouter;5;`);
    expect(sums).toMatchObject({ taken: 5, undecided: 5 });
    expect(lines.at(-1)).toMatchObject({ flag: 'sum' });
    expect(read(`${title};;\nDevice;Qty;Room\nRouter;2;A`).sums.taken).toBe(2);
  });
});

describe('a list that stands there twice is asked about', () => {
  it('as two issues, each of them, and counts once by decision', () => {
    const tables = [{ cells: EG, sheet: 'Rev A' }, { cells: EG.replace('R2;Presence detector;3', 'R2;Presence detector;4'), sheet: 'Rev B' }];
    expect(counted(tables)).toMatchObject({ taken: {}, asked: { 'Rev A': 10, 'Rev B': 11 } });
    const { lines } = read(tables);
    expect(lines[1]).toMatchObject({ flag: 'sum' });
    expect(lines[1]!.reason).toContain('“Rev B” and “Rev A” are called like two issues of one list. Take the lines of the one that counts, and leave the others out.');
    const decided = Object.fromEntries(lines.map(({ key, source }) => [key, source.sheet === 'Rev B' ? 'take' as const : 'leave-out' as const]));
    expect(read(tables, { decisions: { lines: decided } }).sums).toMatchObject({ taken: 11, undecided: 0 });
  });

  it.each(['EG (2)', 'EG alt', 'EG old', 'EG - Kopie', 'Copy of EG', 'EG Copie (3)'])('as the sheet “%s” beside “EG”', (sheet) => {
    const tables = [{ cells: EG, sheet: 'EG' }, { cells: OG, sheet: 'OG' }, { cells: EG, sheet }];
    expect(counted(tables)).toEqual({ taken: { EG: 10, OG: 15 }, asked: { [sheet]: 10 }, notes: [] });
  });

  it('as a file that is given twice, whose lines are decided on by themselves', () => {
    const tables = [{ cells: EG, file: 'A.csv' }, { cells: EG, file: 'A.csv' }];
    expect(counted(tables)).toMatchObject({ taken: { 'A.csv': 10 }, asked: { 'A.csv (2)': 10 } });
    expect(read(tables, { decisions: { lines: { 'A.csv (2)!2': 'take' } } }).sums).toMatchObject({ taken: 12, undecided: 8 });
    expect(counted([{ cells: EG, file: 'A.csv' }, { cells: EG, file: 'A (1).csv' }]))
      .toMatchObject({ taken: { 'A.csv': 10 }, asked: { 'A (1).csv': 10 } });
    expect(counted([{ cells: EG, file: 'list 2026-03-01.csv' }, { cells: EG, file: 'list 2026-04-12.csv' }]))
      .toMatchObject({ taken: {}, asked: { 'list 2026-03-01.csv': 10, 'list 2026-04-12.csv': 10 } });
  });

  it('under another name, the later one', () => {
    expect(counted([{ cells: EG, file: 'march.csv' }, { cells: EG.replace('R3;Router;4', 'R3;Router;9'), file: 'office.csv' }]))
      .toMatchObject({ taken: { 'march.csv': 10 }, asked: { 'office.csv': 15 } });
  });
});

describe('lists that are alike and both count', () => {
  it('are told where their names are those of places', () => {
    for (const [one, other] of [['Flat 1', 'Flat 2'], ['EG', 'OG'], ['Haus A', 'Haus B']] as const) {
      expect(counted([{ cells: EG, sheet: one }, { cells: EG, sheet: other }])).toEqual({
        taken: { [one]: 10, [other]: 10 }, asked: {}, notes: [`“${other}” and “${one}” have most rows in common, and both count.`],
      });
    }
  });

  it('are taken without a word where few rows are the same, or no rooms are named', () => {
    const other = list('R1;Router;1', 'R2;Presence detector;1', 'R7;Router;2', 'R8;Router;1');
    expect(counted([{ cells: EG, sheet: 'Wing' }, { cells: other, sheet: 'Plan' }])).toMatchObject({ asked: {}, notes: [] });
    expect(counted([{ cells: EG, sheet: 'School old' }, { cells: OG, sheet: 'School new' }])).toMatchObject({ asked: {}, notes: [] });
    const roomless = 'Device;Qty\nRouter;1\nPresence detector;2\nRoom thermostat;4';
    expect(counted([{ cells: roomless, sheet: 'Plan' }, { cells: roomless, sheet: 'Hotel' }])).toMatchObject({ asked: {}, notes: [] });
  });
});

it.each([
  ['EG alt', 'eg', true, true], ['EG (2)', 'eg', true, true], ['A (1).csv', 'a', true, true], ['A.csv (2)', 'a', true, true],
  ['list rev B.xlsx', 'list', false, true], ['list_v2.csv', 'list', false, true], ['Stand 12.03.2026', '', false, true],
  ['Index C', '', false, true], ['20260301 list', 'list', false, true], ['Altbau EG', 'altbau eg', false, false], ['Neubau', 'neubau', false, false],
  ['Level 2.csv', 'level 2', false, false], ['1. OG', '1 og', false, false],
])('%s is the issue of a list of “%s”', (name, bare, isAside, isIssue) => {
  expect(listIssue(name)).toEqual({ bare, isAside, isIssue });
});

it('however a list is given once more, its quantities are read and never taken twice in silence', () => {
  const room = fc.record({
    rooms: fc.integer({ min: 3, max: 8 }), qty: fc.integer({ min: 1, max: 20 }),
    changed: fc.integer({ min: 0, max: 2 }),
  });
  fc.assert(fc.property(room, fc.constantFrom(...ISSUES), (drawn, issue) => {
    const { tables, first, second, isAside } = issuesOf(drawn, issue);
    const { sums } = read(tables);
    expect(sums.read).toBe(first + second);
    expect(sums.taken).toBe(isAside ? first : 0);
    expect(sums.undecided).toBe(isAside ? second : first + second);
  }), { numRuns: 100 });
});
