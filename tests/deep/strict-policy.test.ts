import { expect, test } from 'vitest';
import { useSite } from '../pages/support/site.ts';
import { walkThrough } from '../pages/support/walk.ts';

const site = useSite();

/** Sent by the server, beside the policy of the page, which has trusted types too: each reports for itself. */
const STRICT = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self'";

test('strict policies have nothing to report on a walk through the whole, and nothing is asked for that no attribute names', async () => {
  const { page, address, faults, requests } = await site.open('hardest/policy.html', { policy: STRICT });
  const saved = await walkThrough(page);
  expect(saved).toEqual([
    'KP-1-and-KP-2.schedule.json', expect.stringMatching(/^KP-1-and-KP-2-\w+\.csv$/), 'KP-1-and-KP-2-sizing.csv',
    'KP-1-and-KP-2-bill.csv', 'KP-1-and-KP-2-bill.xlsx',
    'KP-1-and-KP-2-load-table.html', 'KP-1-and-KP-2-load-table.xlsx', 'KP-1-and-KP-2-load-table.csv',
  ]);
  expect(faults).toEqual([]);
  expect(await page.locator('#reports').innerText()).toBe('0');
  const paths = requests.map((each) => each.replace(address, ''));
  // The script of the page, what it loads later from the folder of chunks, its styles, and what the attribute `src`
  // names.
  const own = /^\/(?:elv-load-schedule\.js|examples\/hardest\/policy\.js|(?:chunks|assets)\/[\w.-]+\.(?:js|css))$/;
  expect(paths.filter((path) => !own.test(path)))
    .toEqual(['/examples/hardest/policy.html', '/data/demo.schedule.json']);
  expect(paths.filter((path) => path.includes('sharing-worker')).length).toBeGreaterThan(0);

  // The policies are in force: what breaks them is reported.
  await page.evaluate(() => {
    document.head.append(Object.assign(document.createElement('style'), { textContent: 'body { color: red }' }));
  });
  await expect.poll(() => faults.filter((fault) => fault.startsWith('policy: style-src')).length).toBe(2);
  await page.evaluate(() => {
    try {
      document.body.innerHTML = 'x';
    } catch { /* That is what a page with trusted types says to it. */ }
  });
  await expect.poll(() => faults.join()).toContain('policy: require-trusted-types-for');
}, 120_000);
