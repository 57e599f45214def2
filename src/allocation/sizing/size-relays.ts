import type { Steps, Stop } from '../packing/index.ts';
import { textOf } from '../sharing/device-reader.ts';
import { isBlank } from '../../schedule/index.ts';
import { rowNames } from '../row-names.ts';
import { leastSet } from './least-set.ts';
import type { SizedSchedule, SizingRow } from './sizing.ts';

/**
 * The relay modules that the outputs need, by kind of contact: the least number, then the fewest ways in all.
 * @param ways of the modules to choose from
 */
export function* sizeRelays(schedule: SizedSchedule, ways: readonly number[], stop: Stop): Steps<SizingRow[]> {
  const { words } = schedule;
  const outputs = schedule.rows('outputs').flatMap((row, index) => isBlank(row) ? [] : [{
    row: index, ref: textOf(schedule, 'outputs', row.id, 'output'), contact: textOf(
      schedule, 'outputs', row.id, 'contact'
    ),
  }]);
  const result: SizingRow[] = [];
  for (const contact of new Set(outputs.map((output) => output.contact))) {
    const members = outputs.filter((output) => output.contact === contact);
    if (contact === null) continue;
    const { chosen } = yield* leastSet({ sizes: [1], counts: [members.length] }, ways, stop);
    const total = chosen.reduce((sum, place) => sum + ways[place]!, 0);
    for (const place of new Set(chosen)) {
      result.push({
        item: words.say(
          'Relay module, {contact}, {ways, plural, one {# way} other {# ways}}', { contact, ways: ways[place]! }
        ), quantity: chosen.filter((each) => each === place).length,
        why: words.say('{outputs, plural, one {# output} other {# outputs}} with this contact; {total} ways in {modules} is the least number of modules and, with it, the fewest ways of those kept.', {
          outputs: members.length, total, modules: chosen.length,
        }),
      });
    }
  }
  const without = outputs.filter(({ contact }) => contact === null);
  if (without.length > 0) {
    result.push({
      item: words.say('Relay outputs without a contact'), quantity: without.length,
      why: words.say('Not counted above: {rows}. Choose their contact.', { rows: rowNames(without, words) }),
    });
  }
  return result;
}
