import { expect, test } from 'vitest';
import { sample } from '../element-mount.ts';
import { frameOf, open } from '../support/load-table.ts';
import { savedFiles } from '../support/saved-files.ts';
import { press } from '../work-support.ts';

test('a strict security policy of the page has nothing to report', async () => {
  const reports: string[] = [];
  const hear = (document: Document) => {
    document.addEventListener(
      'securitypolicyviolation',
      ({ violatedDirective, sample: text }) => { reports.push(`${violatedDirective} ${text}`); }
    );
  };
  hear(document);
  const policy = document.createElement('meta');
  policy.httpEquiv = 'Content-Security-Policy';
  policy.content =
    "style-src 'self'; img-src 'self'; font-src 'self'; frame-src 'none'; require-trusted-types-for 'script'";
  document.head.append(policy);
  const element = await open(sample());
  await expect.poll(() => frameOf(element).contentDocument!.body.innerText).toContain('Boat house');
  hear(frameOf(element).contentDocument!);
  element.schedule.act('Project changed', [{ op: 'details', details: { project: 'Lock house' } }]);
  const { contentDocument } = frameOf(element);
  await expect.poll(() => contentDocument!.body.innerText).toContain('Lock house');
  expect(getComputedStyle(contentDocument!.querySelector('table')!).borderCollapse).toBe('collapse');
  const files = savedFiles();
  await press(element, '[data-do=html]');
  await press(element, '[data-do=xlsx]');
  await expect.poll(() => files.length).toBe(2);
  await press(element, '[data-view=revisions]');
  await press(element, '[data-do=addRevision]');
  expect(reports).toEqual([]);

  // The policy is in force: what breaks it is reported.
  const style = document.createElement('style');
  style.textContent = 'body { color: red }';
  document.head.append(style);
  await expect.poll(() => reports.length).toBe(1);
  style.remove();
});
