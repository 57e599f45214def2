import { MessageChannel } from 'node:worker_threads';
import { describe, expect, test } from 'vitest';
import {
  answerSharing, readSharing, shareOut, type SharingAnswer, type SharingPort,
} from '../../src/allocation/index.ts';
import { scheduleOf } from '../support/schedules.ts';

/** Both ends of a line: what is posted is copied as plain data, as between a page and its worker. */
function line() {
  const { port1, port2 } = new MessageChannel();
  answerSharing(port1 as unknown as SharingPort);
  const answers: SharingAnswer[] = [];
  const ended = new Promise<SharingAnswer>((resolve) => {
    port2.on('message', (answer: SharingAnswer) => {
      answers.push(answer);
      if (answer.is === 'progress') return;
      port1.close();
      resolve(answer);
    });
  });
  return { port: port2, answers, ended };
}

/** Rows of many unlike sizes, for which the least number takes long to find. */
function hardProblem() {
  const schedule = scheduleOf({
    types: [{ type: 'T', purpose: 'lighting' }], supplies: [{ rail: 'L1', purpose: 'lighting', rated: 10, target: 1 }],
    devices: Array.from({ length: 500 }, (_, row) =>
      ({ type: 'T', qty: 1, unitDraw: 1500 + Math.round(((row * 0.61803398875) % 1) * 5_000_000) / 1000 })),
  });
  return readSharing(schedule, { over: 'supplies', wholeRows: true });
}

describe('a worker that shares out', () => {
  test('answers with the same sharing as a call', async () => {
    const problem = readSharing(scheduleOf({
      types: [{ type: 'Sensor', nodes: 1 }], branches: [{ branch: 'B1', limit: 50 }], devices: [
        { type: 'Sensor', qty: 120, area: 'Hall' },
      ],
    }), { over: 'branches' });
    const { port, ended } = line();
    port.postMessage({ do: 'share', job: 7, problem });
    const sharing = await shareOut(problem);
    expect(sharing.used).toBe(3);
    expect(await ended).toEqual({ is: 'shared', job: 7, sharing });
  });

  test('tells how far it is, and gives the best so far when it is to stop', async () => {
    const problem = hardProblem();
    const { port, answers, ended } = line();
    const asked = performance.now();
    port.postMessage({ do: 'share', job: 1, problem, milliseconds: 60_000 });
    port.once('message', () => port.postMessage({ do: 'stop', job: 1 }));
    const answer = await ended;
    expect(answers[0]).toMatchObject({ is: 'progress', job: 1, progress: { done: 0, groups: 1 } });
    const { time } = (answers[0] as Extract<SharingAnswer, { is: 'progress' }>).progress;
    expect(time * 60_000).toBeGreaterThanOrEqual(0);
    expect(time * 60_000).toBeLessThanOrEqual(performance.now() - asked);
    if (answer.is !== 'shared') throw new Error(`The answer is ${answer.is}.`);
    expect(answer.sharing.placements).toHaveLength(500);
    expect(answer.sharing.fillings.filter(({ capacity, placed }) => placed > capacity! * (1 + 1e-9))).toEqual([]);
    expect(answer.sharing.lowerBound).toBeLessThanOrEqual(answer.sharing.used);
  });

  test('says that it failed instead of staying silent', async () => {
    const { port, ended } = line();
    port.postMessage({ do: 'share', job: 2, problem: { over: 'branches' } });
    expect(await ended).toMatchObject({ is: 'failed', job: 2 });
  });
});
