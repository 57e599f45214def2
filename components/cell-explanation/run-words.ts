import type { LoadSchedule } from '../../src/load-schedule.ts';
import { figureText, numberAt, rowName, type Place } from '../look/index.ts';

/** Id of the run that a cell is about: its own row, or the run that its device row is on; -1 for none. */
export function runOf(schedule: LoadSchedule, { sheet, id }: Place): number {
  return sheet === 'runs' ? id : sheet === 'devices' ? schedule.target('devices', id, 'run') : -1;
}

/**
 * How long a run may be with its conductor, and how small its conductor at its length; empty where neither is known.
 */
export function runWords(schedule: LoadSchedule, run: number): string {
  const { words } = schedule;
  const parts = [longest(schedule, run), smallest(schedule, run)].filter((part) => part !== '');
  if (parts.length === 0) return '';
  const said = parts.reduce((one, other) => words.say('{one}; {other}', { one, other }));
  return words.say('Run {run}: {said}.', { run: rowName(schedule, { sheet: 'runs', id: run }), said });
}

function longest(schedule: LoadSchedule, id: number): string {
  const { words } = schedule;
  const text = (key: string) => figureText(schedule, { sheet: 'runs', id, key });
  const most = numberAt(schedule, { sheet: 'runs', id, key: 'maxLength' });
  if (most === null) return '';
  // What is shown in decimetres, rounded down, would be 0.0 m.
  return most < 0.1 ? words.say('with {conductor} it fails at any length', { conductor: text('conductor') })
    : words.say('with {conductor} it may be {length} long{placed, plural, =0 {} other {, with the distances on it scaled along}}', {
      conductor: text('conductor'), length: text('maxLength'), placed: placedOn(schedule, id),
    });
}

/** How many device rows on it have a distance of their own. */
const placedOn = (schedule: LoadSchedule, id: number): number => schedule.members('devices', 'run', id)
  .filter((device) => schedule.value('devices', device, 'distance') !== null).length;

function smallest(schedule: LoadSchedule, id: number): string {
  const { words } = schedule;
  const length = figureText(schedule, { sheet: 'runs', id, key: 'length' });
  const conductor = schedule.value('runs', id, 'smallestConductor');
  if (typeof conductor === 'string') {
    return words.say('{conductor} is the smallest conductor that does at {length}', { conductor, length });
  }
  return numberAt(schedule, { sheet: 'runs', id, key: 'maxLength' }) === null ? ''
    : words.say('no conductor of this schedule does at {length}', { length });
}
