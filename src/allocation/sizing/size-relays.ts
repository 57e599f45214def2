import type { Steps, Stop } from '../packing/index.ts';
import { textOf } from '../sharing/device-reader.ts';
import type { Figures } from '../sharing/read-sharing.ts';
import { isBlank } from '../../schedule/index.ts';
import { leastSet } from './least-set.ts';
import type { SizingRow } from './sizing.ts';
import { listed } from './wording.ts';

/**
 * The relay modules that the outputs need, by kind of contact: the least number, then the fewest ways in all.
 * @param ways of the modules to choose from
 */
export function* sizeRelays(schedule: Figures, ways: readonly number[], stop: Stop): Steps<SizingRow[]> {
  const outputs = schedule.rows('outputs').flatMap((row, index) => isBlank(row) ? [] : [{
    row: index, ref: textOf(schedule, 'outputs', row.id, 'output'), contact: textOf(schedule, 'outputs', row.id, 'contact'),
  }]);
  const result: SizingRow[] = [];
  for (const contact of new Set(outputs.map((output) => output.contact))) {
    const members = outputs.filter((output) => output.contact === contact);
    if (contact === null) continue;
    const { chosen } = yield* leastSet({ sizes: [1], counts: [members.length] }, ways, stop);
    const total = chosen.reduce((sum, place) => sum + ways[place]!, 0);
    for (const place of new Set(chosen)) {
      result.push({
        item: `Relay module, ${contact}, ${ways[place]!} ways`, quantity: chosen.filter((each) => each === place).length,
        why: `${members.length} ${members.length === 1 ? 'output' : 'outputs'} with this contact; ${total} ways in ${chosen.length} is the least number of modules and, with it, the fewest ways of those kept.`,
      });
    }
  }
  const without = outputs.filter(({ contact }) => contact === null);
  if (without.length > 0) {
    result.push({
      item: 'Relay outputs without a contact', quantity: without.length,
      why: `Not counted above: ${listed(without)}. Choose their contact.`,
    });
  }
  return result;
}
