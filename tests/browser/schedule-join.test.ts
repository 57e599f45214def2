import { afterEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { ScheduleJoin } from '../../components/schedule-join/schedule-join.ts';
import type { Content } from '../../src/schedule/index.ts';
import { writeSchedule } from '../../src/exchange/index.ts';
import { dropFiles, mountElement, part, parts, removeElements, said, sample, textOf } from './element-mount.ts';

afterEach(removeElements);

const changed = (rated: number, ref: string): Content => {
  const { sheets, details } = sample();
  return {
    details,
    sheets: {
      ...sheets, supplies: [{ ...sheets.supplies![0], rated }, ...sheets.supplies!.slice(1)],
      devices: [...sheets.devices!, { ref, type: 'Lamp', qty: 1, rail: 'L3' }],
    },
  };
};
const area = (element: Element) => part(element, 'elv-schedule-join') as ScheduleJoin;

test('another schedule is joined against what both began with: conflicts are decided by a person, and one undo takes it back', async () => {
  const element = await mountElement({ content: changed(2, 'D4') });
  const before = element.value;
  part(element, '[data-sheet]')!.focus();
  await userEvent.keyboard('{Control>}j{/Control}');
  await expect.poll(() => area(element)).not.toBe(null);
  expect((part(element, 'elv-schedule-join [data-do=join]') as HTMLButtonElement).disabled).toBe(true);
  dropFiles(element, new File([writeSchedule(changed(3, 'D5'))], 'their.schedule.json'), new File(['{}'], 'another.schedule.json'));
  await expect.poll(() => said(element)).toContain('One schedule is taken at a time: their.schedule.json. Not read: another.schedule.json.');
  await expect.poll(() => textOf(element, 'elv-schedule-join [role=status]')).toBe(
    'From theirs: 1 row added, 0 changed, 0 removed; 0 other entries.Nothing says what both began with: every difference of a row that both have is asked, and rows that only one has all stay.One conflict is open: yours stands until it is decided.');
  // Without what both began with, it may be two rails under one tag.
  expect(parts(element, 'elv-schedule-join [data-choice]').map(({ dataset }) => dataset.choice)).toEqual(['mine', 'theirs', 'both']);
  await area(element).open(new File([writeSchedule(sample())], 'base.schedule.json'), 'base');
  await expect.poll(() => textOf(element, 'elv-schedule-join tbody')).toBe(
    'Supplies, L1, RatedBoth changed it, each in a way of their own. 1.00 A2.00 A3.00 A YoursTheirs');
  expect(element.value).toBe(before);
  part(element, 'elv-schedule-join [data-choice=theirs]')!.click();
  await expect.poll(() => textOf(element, 'elv-schedule-join [role=status]')).not.toContain('open');
  part(element, 'elv-schedule-join [data-do=join]')!.click();
  await expect.poll(() => element.schedule.rows('devices').map(({ cells }) => cells.ref)).toEqual(['D1', 'D2', 'D3', 'D5', 'D4']);
  expect(element.schedule.rows('supplies')[0]!.cells.rated).toBe(3);
  await expect.poll(() => said(element)).toContain('their.schedule.json joined. From theirs: 1 row added');
  expect(area(element).hidden).toBe(true);
  element.undo();
  expect(element.value).toBe(before);
});

test('all that is open is decided at once, and what is no schedule is said', async () => {
  const element = await mountElement({ content: changed(2, 'D4') });
  part(element, '[data-command=join]')!.click();
  await expect.poll(() => area(element)).not.toBe(null);
  await area(element).open(new File(['Ref,Qty\nD1,2\n'], 'list.csv'));
  await expect.poll(() => textOf(element, 'elv-schedule-join .problems')).toBe(
    'list.csv cannot be joined.It holds one sheet or none. Choose a schedule (.json) or a load table (.html, .xlsx).');
  await area(element).open(new File([writeSchedule(changed(3, 'D4'))], 'their.schedule.json'));
  await expect.poll(() => part(element, 'elv-schedule-join [data-do=allTheirs]')).not.toBe(null);
  part(element, 'elv-schedule-join [data-do=allTheirs]')!.click();
  await expect.poll(() => part(element, 'elv-schedule-join [data-choice=theirs]')!.ariaPressed).toBe('true');
  part(element, 'elv-schedule-join [data-do=no-theirs]')!.click();
  await expect.poll(() => part(element, 'elv-schedule-join table')).toBe(null);
});
