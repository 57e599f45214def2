import { expect, test } from 'vitest';
import { makeWorkbook } from '../../support/make-workbook.ts';
import { drop, mountElement, sample, textOf } from '../element-mount.ts';
import { openWork } from '../work-support.ts';

test('a large workbook is dropped where the page forbids workers and scripts made of text', async () => {
  const reports: string[] = [];
  document.addEventListener('securitypolicyviolation', ({ violatedDirective }) => { reports.push(violatedDirective); });
  // A policy that is added binds what the page does from now on.
  const policy = document.createElement('meta');
  policy.httpEquiv = 'Content-Security-Policy';
  policy.content = "worker-src 'none'; require-trusted-types-for 'script'";
  document.head.append(policy);
  const element = await mountElement({ content: sample() });
  await openWork(element, 'takeoff');
  // From half a megabyte on, unpacking is commonly left to workers.
  const text = (row: number) => Array.from({ length: 40 }, (_, at) => (row * 40 + at) * 7919 % 60_013).join(' ');
  const rows = Array.from({ length: 5000 }, (_, row) => ['Lamp', text(row), 1]);
  const bytes = makeWorkbook({ Jetty: { rows: [['Device', 'Room', 'How many'], ...rows] } });
  expect(bytes.length).toBeGreaterThan(512 * 1024);
  drop(element, 'jetty.xlsx', bytes);
  await expect.poll(() => textOf(element, 'elv-takeoff-reader .sum'), { timeout: 25_000 })
    .toBe('Read 5000 = taken 5000 + left out 0 + undecided 0');
  expect(reports).toEqual([]);
});
