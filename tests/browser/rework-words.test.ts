import { afterEach, beforeEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { CommandEvent } from '../../components/events/index.ts';
import type { JobCommand } from '../../components/schedule-toolbar/commands.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { GRID_KEY, part, textOf } from './element-mount.ts';
import { demoContent } from './support/demo-content.ts';
import { PSEUDO_TAG, PseudoElement } from './support/pseudo-element.ts';
import { untranslated } from './support/untranslated.ts';

beforeEach(() => { localStorage.clear(); });
afterEach(() => { document.querySelector(PSEUDO_TAG)?.remove(); });

test('the jobs on chosen rows are said through the words of the element, with what they ask, refuse and come to', async () => {
  const element = new PseudoElement();
  element.licenseKey = GRID_KEY;
  element.schedule = new LoadSchedule(demoContent());
  element.style.cssText = 'display: block; block-size: 780px';
  document.body.append(element);
  await expect.poll(() => part(element, 'elv-schedule-grid td')).not.toBeNull();
  // Cells of tables hold what a person wrote, and tags that come; what is said of states stands in parts of its own.
  const english = () => untranslated(element).filter((each) => !/^elv-rework (?:td|b)\./.test(each));
  const seen = async (job: JobCommand, ...choices: readonly (readonly [name: string, value: string])[]) => {
    await element.select('devices', 1, 'ref');
    part(element, 'elv-schedule-grid')!.dispatchEvent(new CommandEvent(job));
    await expect.poll(() => part(element, 'elv-rework')?.hidden).toBe(false);
    await element.updateComplete;
    expect(english()).toEqual([]);
    for (const [name, value] of choices) {
      const field = part(element, `elv-rework [data-option=${name}]`)!;
      if (field.matches('select')) await userEvent.selectOptions(field, value);
      else await userEvent.fill(field, value);
      await userEvent.tab();
      await element.updateComplete;
      expect(english()).toEqual([]);
    }
  };
  // The first row is one of three on its run, whose way feeds it alone.
  await seen('moveTo', ['to', 'supplies L2'], [`run-${element.schedule.target('devices', element.schedule.rows('devices')[0]!.id, 'run')}`, 'whole']);
  expect(textOf(element, 'elv-rework .standings')).toContain('L2');
  await seen('moveTo', ['to', 'branches B1']);
  await seen('swapType', ['to', 'Step light']);
  await seen('duplicate', ['tag-0-from', 'L1'], ['tag-0-to', 'L2'], ['what', 'rows']);
  await seen('splitRun', ['way', 'new'], ['tag', 'L1-W99'], ['length', '0'], ['length', '99']);
  await element.updateComplete;
  // What would mend the first of what was found that may be mended, asked for in the list.
  const mending = part(element, 'elv-schedule-panel [data-mend]')!;
  mending.click();
  await expect.poll(() => textOf(element, 'elv-schedule-panel elv-remedy-list span')).not.toBe('');
  expect(english().filter((each) => each.startsWith('elv-remedy-list'))).toEqual([]);
});
