import { describe, expect, test } from 'vitest';
import { readCsv, readSchedule, writeSchedule } from '../../src/exchange/index.ts';
import { compareWithList, updateChanges } from '../../src/exchange/update/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { withRowsReplaced, type Cells, type Content } from '../../src/schedule/index.ts';
import { layOutTerminals, layoutChanges } from '../../src/terminals/index.ts';
import { idAt } from '../support/schedules.ts';

/** A way with two runs, whose terminals come as a list. */
const PANEL: Content = {
  details: {}, sheets: {
    supplies: [{ rail: 'L1', rated: 10 }], ways: [{ way: 'F1', rail: 'L1', rated: 4 }], runs: [{ run: 'R1', way: 'F1' }, { run: 'R2', way: 'F1' }],
  },
};
const HEAD = 'Terminal,Strip,Potential,Inside end,Outside end,Core,Bridge,Wired';

/** The panel with the rows of a list, and the same once it was saved and opened. */
function withList(...lines: string[]): LoadSchedule[] {
  const read = readCsv([HEAD, ...lines].join('\r\n'), 'terminals');
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const { content } = withRowsReplaced(PANEL, 'terminals', read.rows);
  const reopened = readSchedule(writeSchedule(content));
  if (!reopened.ok) throw new Error(JSON.stringify(reopened.problems));
  return [new LoadSchedule(content), new LoadSchedule(reopened.content)];
}
const found = (schedule: LoadSchedule) => schedule.rows('terminals').map(({ id }) =>
  schedule.findingsOf('terminals', id).map(({ rule }) => rule).sort());
const named = (schedule: LoadSchedule) => schedule.findings.filter(({ sheet }) => sheet === 'terminals').map(({ message }) => message).join(' ');
const numbers = (schedule: LoadSchedule) => schedule.rows('terminals').map(({ cells }) => cells.terminal);
const layOut = (schedule: LoadSchedule) => {
  schedule.act('Terminals', layoutChanges(schedule.document, layOutTerminals(schedule.document, schedule.figures)));
};

describe.each<[string, string[], string[][], string]>([
  [
    'a terminal whose cable is gone', ['X2:1,X2,F1 L+,F1:2,R1,1,,', 'X2:2,X2,F2 L+,F1:4,R9,1,,'], [[], ['terminal-outside-lost']],
    'there is no run, output, branch or feed R9',
  ],
  [
    'a number that stands twice', ['X2:1,X2,F1 L+,F1:2,R1,1,a,', 'X2:1,X2,F1 L+,,R2,1,a,'], [['tag-used-twice'], ['tag-used-twice']],
    'X2:1',
  ],
  [
    'a core that is used twice', ['X2:1,X2,F1 L+,F1:2,R1,1,a,', 'X2:2,X2,F1 L+,,R1,1,a,'], [['terminal-core-twice'], ['terminal-core-twice']],
    'holds the core 1 of R1, which X2:2 holds too',
  ],
  [
    'a bridge across strips', ['X2:1,X2,F1 L+,F1:2,R1,1,a,', 'X3:1,X3,F1 L+,F1:4,R2,1,a,'],
    [['terminal-bridge-strips'], ['terminal-apart', 'terminal-bridge-strips']], 'would have to span the strips X2, X3',
  ],
  [
    'a bridge of two potentials', ['X2:1,X2,F1 L+,F1:2,R1,1,a,', 'X2:2,X2,L1 L-,L1:-,R1,2,a,'], [['terminal-bridge-shorts'], ['terminal-bridge-shorts']],
    'is bridged with another potential, L1 L-',
  ],
  [
    'a terminal on no strip', ['X2:1,,F1 L+,F1:2,R1,1,,'], [['terminal-strip-missing']], 'X2:1',
  ],
  [
    'a terminal without a designation', [',X2,F1 L+,F1:2,R1,1,,'], [['tag-missing']], 'without a designation',
  ],
])('%s, in a list and in a file', (_what, lines, rules, said) => {
  test('is found and named', () => {
    for (const schedule of withList(...lines)) {
      expect(found(schedule)).toEqual(rules);
      expect(named(schedule)).toContain(said);
    }
  });

  test('keeps its number when terminals are laid out: none is given another in silence', () => {
    for (const schedule of withList(...lines)) {
      const before = numbers(schedule);
      layOut(schedule);
      // New ones come behind those of their strip.
      expect(numbers(schedule).filter((each) => before.includes(each)).sort()).toEqual([...before].sort());
    }
  });
});

test('a list that comes again and moves a core leaves the tick, and says that it was made for another connection', () => {
  const line = (core: number, wired: string) => `X2:1,X2,F1 L+,F1:2,R1,${core},,${wired}`;
  const [schedule] = withList(line(1, '')) as [LoadSchedule];
  const update = (text: string) => {
    const read = readCsv(`${HEAD}\r\n${text}`, 'terminals');
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    schedule.act('List', updateChanges(schedule.document, compareWithList(schedule.document, read)));
  };
  const cells = (): Cells => schedule.document.row('terminals', idAt(schedule, 'terminals'))!.cells;
  update(line(1, 'yes'));
  expect(cells()).toMatchObject({ wired: true, wiredAs: 'F1:2 · F1 L+ · R1 · 1 · –' });
  expect(found(schedule)).toEqual([[]]);
  update(line(3, ''));
  expect(cells()).toMatchObject({ wired: true, core: '3', wiredAs: 'F1:2 · F1 L+ · R1 · 1 · –' });
  expect(found(schedule)).toEqual([['terminal-wired-otherwise']]);
});
