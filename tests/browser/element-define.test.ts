import { afterEach, expect, test } from 'vitest';
import { LoadScheduleElement } from '../../components/load-schedule/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { GRID_KEY, sample } from './element-mount.ts';

afterEach(() => { document.body.replaceChildren(); });

test('the class defines the element under a tag of the page, which shows the same', async () => {
  await LoadScheduleElement.define('panel-loads');
  // A second time, and for a tag that is taken, nothing happens.
  await LoadScheduleElement.define('panel-loads');
  await LoadScheduleElement.define('elv-load-schedule');
  const OwnElement = customElements.get('panel-loads') as typeof LoadScheduleElement;
  const element = new OwnElement();
  expect(element).toBeInstanceOf(LoadScheduleElement);
  element.licenseKey = GRID_KEY;
  element.schedule = new LoadSchedule(sample());
  document.body.append(element);
  await expect.poll(() => element.renderRoot.querySelector('elv-sheet-view')?.renderRoot.querySelector('elv-schedule-grid')?.renderRoot
    .querySelector('tbody td')?.textContent).toBe('D1');
  expect(element.type).toBe('panel-loads');
  expect(customElements.get('panel-loads')).not.toBe(customElements.get('elv-load-schedule'));
});
