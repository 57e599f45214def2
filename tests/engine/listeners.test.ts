import { afterEach, expect, test, vi } from 'vitest';
import { LoadSchedule, setCells } from '../../src/index.ts';

afterEach(() => { vi.restoreAllMocks(); });

test('a listener that throws keeps no other from hearing, nor the action from being done, and its error is not lost',
  () => {
  const later = vi.spyOn(globalThis, 'queueMicrotask').mockImplementation(() => undefined);
  const schedule = new LoadSchedule({ details: {}, sheets: { devices: [{ ref: 'D1', qty: 1 }] } });
  const heard: string[] = [];
  const fault = new Error('out of order');
  schedule.subscribe(() => { throw fault; });
  schedule.subscribe(({ label }) => { heard.push(label); });
  const { id } = schedule.rows('devices')[0]!;
  schedule.act('Quantity', setCells(schedule.document, [{ sheet: 'devices', id, key: 'qty', value: 5 }]));
  expect(schedule.value('devices', id, 'qty')).toBe(5);
  expect(schedule.undo()).toBe('Quantity');
  expect(heard).toEqual(['Quantity', 'Quantity']);
  // Whoever looks after errors of the page or the process is told of each, as of errors of listeners of the platform.
  expect(later).toHaveBeenCalledTimes(2);
  for (const [report] of later.mock.calls) expect(report).toThrow(fault);
  schedule.dispose();
});
