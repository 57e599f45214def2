import { afterEach, expect, test, vi } from 'vitest';
import { userEvent } from 'vitest/browser';
import { SharingRun } from '../../components/share-out/sharing-run.ts';
import { readSharing, type Sharing } from '../../src/allocation/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import type { Content } from '../../src/schedule/index.ts';
import { mountElement, part, parts, removeElements, sample, textOf } from './element-mount.ts';
import { openWork, press } from './work-support.ts';

afterEach(() => {
  removeElements();
  vi.unstubAllGlobals();
});

const cellTexts = (element: Element, tag: string) =>
  parts(element, `[data-tag="${tag}"] td`).map((cell) => cell.textContent.replace(/\s+/g, ' ').trim());

test('before and after are shown by tag, and applied as one action', async () => {
  // 12 nodes on B1, which may carry 10; by hand, two branches are the least.
  const content: Content = {
    details: {},
    sheets: {
      types: [{ type: 'Sensor', draw: 10, nodes: 1 }], branches: [{ branch: 'B1', limit: 10 }],
      devices: [
        { ref: 'D1', type: 'Sensor', qty: 8, branch: 'B1' }, { ref: 'D2', type: 'Sensor', qty: 4, branch: 'B1' },
      ],
    },
  };
  const element = await mountElement({ content });
  const before = element.value;
  await openWork(element, 'shareOut');
  await expect.poll(() => textOf(element, 'elv-share-out .over'))
    .toContain('B1: what stays there is more than it may carry.');
  await press(element, '[data-option=keepPlaced]');
  await expect.poll(() => textOf(element, '.verdict .sum')).toBe('2 branches, 1 of them new: proven to be the least.');
  expect(cellTexts(element, 'B1')).toEqual(['B1', '', '12 of 10', '', expect.stringMatching(/^\d+ of 10$/), '1 go']);
  expect(element.value).toBe(before);
  await press(element, '[data-do=share]');
  const nodes = element.schedule.rows('branches')
    .map(({ id }) => element.schedule.value('branches', id, 'nodes') as number);
  expect(nodes).toHaveLength(2);
  expect(nodes[0]! + nodes[1]!).toBe(12);
  expect(Math.max(...nodes)).toBeLessThanOrEqual(10);
  expect(element.undo()).toBe('Sharing out over 2 branches');
  expect(element.value).toBe(before);
});

test('the preview follows an undo, so that nothing out of date is applied', async () => {
  const element = await mountElement({ content: sample() });
  const { schedule } = element;
  const [first] = schedule.rows('devices');
  schedule.act('Quantity', [{ op: 'set', sheet: 'devices', id: first!.id, key: 'qty', value: 20 }]);
  await openWork(element, 'shareOut');
  await press(element, '[data-option=keepPlaced]');
  await expect.poll(() => textOf(element, '.verdict .sum')).toContain('3 branches');
  await userEvent.click(part(element, '[data-command=undo]')!);
  await expect.poll(() => textOf(element, '.verdict .sum')).toContain('2 branches');
});

test('it is said when nothing can be shared out, and why', async () => {
  const element =
    await mountElement({ content: { details: {}, sheets: { devices: [{ ref: 'D1', type: 'Winch', qty: 2 }] } } });
  await openWork(element, 'shareOut');
  await expect.poll(() => textOf(element, '.verdict')).toBe('No device can be given a place.');
  expect(textOf(element, 'elv-share-out ul')).toMatch(/^The nodes of its type are not known\..* D1$/);
  expect(textOf(element, '[data-do=share]')).toBe('Nothing to change');
});

const many = (): LoadSchedule => new LoadSchedule({
  details: {},
  sheets: {
    types: [{ type: 'Sensor', draw: 10, nodes: 1 }], branches: [{ branch: 'B1', limit: 150 }],
    devices: Array.from({ length: 1000 }, (_, row) => ({ type: 'Sensor', qty: 20 + (row * 37) % 81 })),
  },
});

const run = (problem = readSharing(many(), { over: 'branches', wholeRows: true })) => {
  const progress = vi.fn();
  let handle!: SharingRun;
  const sharing = new Promise<Sharing>((resolve, reject) => {
    handle = new SharingRun(
      problem, { progress, shared: resolve, failed: (message) => { reject(new Error(message)); } }
    );
  });
  return { handle, sharing, progress };
};

function isWhole({ placements, fillings }: Sharing): void {
  expect(new Set(placements.map(({ row }) => row)).size).toBe(1000);
  for (const { capacity, placed } of fillings) expect(placed).toBeLessThanOrEqual(capacity!);
}

test('1,000 rows are shared out in a worker while the page answers', async () => {
  const { sharing } = run();
  let longest = 0;
  let last = performance.now();
  const ticking = setInterval(() => {
    longest = Math.max(longest, performance.now() - last);
    last = performance.now();
  }, 5);
  const found = await sharing;
  clearInterval(ticking);
  isWhole(found);
  expect(longest).toBeLessThan(200);
});

test('stopping keeps the best that was found', async () => {
  const { handle, sharing } = run();
  handle.stop();
  isWhole(await sharing);
});

test.each([
  ['throws', function () { throw new DOMException('not here', 'SecurityError'); }],
  ['fails', class extends EventTarget {
    constructor() {
      super();
      queueMicrotask(() => this.dispatchEvent(new Event('error')));
    }

    postMessage(): void { /* a worker that never starts */ }
    terminate(): void { /* nothing runs */ }
  }],
])('where a worker %s, the page shares out itself', async (_, worker) => {
  vi.stubGlobal('Worker', worker);
  isWhole(await run().sharing);
});
