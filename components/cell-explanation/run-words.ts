import type { LoadSchedule } from '../../src/load-schedule.ts';
import { figureText, numberAt, rowName, type Place } from '../look/index.ts';
import type { Words } from '../../src/words/index.ts';

/** Id of the run that a cell is about: its own row, or the run that its device row is on; -1 for none. */
export function runOf(schedule: LoadSchedule, { sheet, id }: Place): number {
  return sheet === 'runs' ? id : sheet === 'devices' ? schedule.target('devices', id, 'run') : -1;
}

/** How long a run may be with its conductor, and how small its conductor at its length; empty where neither is known. */
export function runWords(schedule: LoadSchedule, run: number, words: Words): string {
  const text = (key: string) => figureText(schedule, { sheet: 'runs', id: run, key }, words);
  const most = numberAt(schedule, { sheet: 'runs', id: run, key: 'maxLength' });
  const smallest = schedule.value('runs', run, 'smallestConductor');
  const length = most === null ? '' : most === 0 ? `with ${text('conductor')} it fails at any length`
    : `with ${text('conductor')} it may be ${text('maxLength')} long`;
  const conductor = typeof smallest === 'string' ? `${smallest} is the smallest conductor that does at ${text('length')}`
    : most === null ? '' : `no conductor of this schedule does at ${text('length')}`;
  const both = [length, conductor].filter((part) => part !== '').join('; ');
  return both === '' ? '' : `Run ${rowName(schedule, { sheet: 'runs', id: run })}: ${both}.`;
}
