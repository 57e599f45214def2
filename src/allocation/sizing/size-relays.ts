import { textOf } from '../../engine/index.ts';
import type { Steps } from '../packing/index.ts';
import { isBlank } from '../../schedule/index.ts';
import { rowNames } from '../row-names.ts';
import { leastSet } from './least-set.ts';
import type { SizedModule, SizedSchedule, SizingRow, SizingRules } from './sizing.ts';

/** Cells of a module that are true of that one alone. */
const OWN_KEYS: readonly string[] = ['module', 'note', 'enclosure'];

/**
 * The relay modules that the outputs need, by panel and kind of contact: the least number, then the fewest ways in
 * all.
 */
export function* sizeRelays(
  schedule: SizedSchedule, rules: SizingRules,
): Steps<{ rows: SizingRow[]; modules: SizedModule[] }> {
  const { words } = schedule;
  const { lists: { ways }, extension } = rules;
  const outputs = schedule.rows('outputs').flatMap((row, index) => {
    const isLeft = rules.unplaced && schedule.target('outputs', row.id, 'module') >= 0;
    return isBlank(row) || isLeft ? [] : [{
      row: index, id: row.id, ref: textOf(schedule, 'outputs', row.id, 'output'),
      contact: textOf(schedule, 'outputs', row.id, 'contact'), panel: rules.panelOf('outputs', row.id),
    }];
  });
  const rows: SizingRow[] = [];
  const modules: SizedModule[] = [];
  const panels = [...new Set(outputs.map(({ panel }) => panel))];
  for (const panel of panels) {
    const inPanel = outputs.filter((output) => output.panel === panel);
    for (const contact of new Set(inPanel.map((output) => output.contact))) {
      if (contact === null) continue;
      const members = inPanel.filter((output) => output.contact === contact);
      const count = Math.ceil(members.length * (1 + extension) - 1e-9);
      const { chosen } = yield* leastSet({ sizes: [1], counts: [count] }, ways, false, rules.stop);
      const total = chosen.reduce((sum, place) => sum + ways[place]!, 0);
      let at = 0;
      for (const place of chosen) {
        const held = members.slice(at, at += ways[place]!);
        modules.push({ panel, cells: cellsOf(schedule, ways[place]!, panel), outputs: held.map(({ id }) => id) });
      }
      for (const place of new Set(chosen)) {
        rows.push({
          panel, item: words.say(
            'Relay module, {contact}, {ways, plural, one {# way} other {# ways}}', { contact, ways: ways[place]! }
          ), quantity: chosen.filter((each) => each === place).length,
          why: words.say('{outputs, plural, one {# output} other {# outputs}} with this contact{extension, select, none {} other {, for extension {count}}}; {total} ways in {modules} is the least number of modules and, with it, the fewest ways of those kept.', {
            outputs: members.length, extension: extension === 0 ? 'none' : 'some', count, total, modules: chosen.length,
          }),
        });
      }
    }
    const without = inPanel.filter(({ contact }) => contact === null);
    if (without.length > 0) {
      rows.push({
        panel, item: words.say('Relay outputs without a contact'), quantity: without.length,
        why: words.say('Not counted above: {rows}. Choose their contact.', { rows: rowNames(without, words) }),
      });
    }
  }
  return { rows, modules };
}

/** Cells of a module with so many outputs: those of the last one that has as many, where there is one. */
function cellsOf(schedule: SizedSchedule, outputs: number, panel: string | null): SizedModule['cells'] {
  const like = schedule.rows('modules').findLast(({ cells }) => cells.outputs === outputs);
  const cells = Object.entries(like?.cells ?? {}).filter(([key]) => !OWN_KEYS.includes(key));
  return { ...Object.fromEntries(cells), outputs, ...(panel === null ? {} : { enclosure: panel }) };
}
