import { expect } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { part } from './element-mount.ts';

const TAGS = {
  join: 'elv-schedule-join', takeoff: 'elv-takeoff-reader', shareOut: 'elv-share-out', sizing: 'elv-sizing-table', cases: 'elv-case-area',
  variants: 'elv-variants', wiring: 'elv-wiring', bill: 'elv-bill-table', measure: 'elv-measured-values', loadTable: 'elv-load-table',
} as const;

/** Presses the button of a work area and waits until it is there. */
export async function openWork(element: LoadScheduleElement, name: keyof typeof TAGS): Promise<void> {
  const button = part(element, `[data-command=${name}]`)!;
  // Where there is little room, another button unfolds it.
  if (!button.checkVisibility()) await userEvent.click(part(element, '#unfold')!);
  await userEvent.click(button);
  await expect.poll(() => part(element, TAGS[name])?.hidden, { timeout: 10_000 }).toBe(false);
  await element.updateComplete;
}

/** Presses a button in the work area that is shown, once it can be pressed: until then it may be named otherwise. */
export async function press(element: LoadScheduleElement, selector: string): Promise<void> {
  await expect.poll(() => part(element, `.work:not([hidden]) ${selector}`)?.matches(':disabled')).toBe(false);
  await userEvent.click(part(element, `.work:not([hidden]) ${selector}`)!);
  await element.updateComplete;
}

/** Pastes a text in the field of the takeoff. */
export function paste(element: LoadScheduleElement, text: string): void {
  const clipboardData = new DataTransfer();
  clipboardData.setData('text/plain', text);
  part(element, 'elv-takeoff-reader textarea')!
    .dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
}
