import { afterAll, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { cellAt, frame, mountGrid, unmountAll } from '../support/mount.ts';
import { COLUMN, sample } from '../support/sample-content.ts';

afterAll(unmountAll);

test('a strict security policy of the page has nothing to report', async () => {
  const reports: string[] = [];
  document.addEventListener('securitypolicyviolation', (
    { violatedDirective, sourceFile, lineNumber, sample: text }
  ) => {
    reports.push(`${violatedDirective} ${sourceFile}:${lineNumber} ${text}`);
  });
  // A policy that is added binds what the page does from now on.
  const policy = document.createElement('meta');
  policy.httpEquiv = 'Content-Security-Policy';
  policy.content = "style-src 'self'; img-src 'self'; font-src 'self'; require-trusted-types-for 'script'";
  document.head.append(policy);

  const { grid, schedule } = await mountGrid(sample());
  await userEvent.click(cellAt(grid, 0, COLUMN.qty));
  await userEvent.keyboard('6{Enter}');
  await userEvent.dblClick(cellAt(grid, 0, COLUMN.rail));
  await userEvent.keyboard('l{ArrowDown}{Enter}');
  await userEvent.keyboard('{Alt>}{Enter}{/Alt}{Control>}z{/Control}');
  grid.pasteText('7\t8');
  const data = new DataTransfer();
  data.setData('text/plain', '3');
  data.setData('text/html', '<style>td{color:red}</style><table><tr><td style="color:red">3</td></tr></table>');
  cellAt(grid, 0, COLUMN.qty).dispatchEvent(
    new ClipboardEvent('paste', { clipboardData: data, bubbles: true, composed: true, cancelable: true })
  );
  grid.grouping = 'rail';
  await grid.updateComplete;
  await frame();
  grid.sheet = 'supplies';
  await grid.updateComplete;
  await frame();
  expect(schedule.undoLabel).toBeDefined();
  expect(reports).toEqual([]);

  // The policy is in force: what breaks it is reported.
  const style = document.createElement('style');
  style.textContent = 'body { color: red }';
  document.head.append(style);
  await frame();
  expect(reports).toHaveLength(1);
  style.remove();
});
