import { joinVariant, keepVariant, makeVariant } from '../../../src/exchange/variants/index.ts';
import { LoadSchedule } from '../../../src/load-schedule.ts';
import type { Cells, Content, SheetName, Variant } from '../../../src/schedule/index.ts';

/** A panel of one supply with two branches of devices, of our own invention. */
export const PANEL: Content = {
  details: { panel: 'P' },
  sheets: {
    types: [
      { type: 'Blind', purpose: 'field', draw: 500, nodes: 1, group: 'blinds' },
      { type: 'Sensor', purpose: 'field', draw: 20, nodes: 1, group: 'sensors' },
    ],
    supplies: [{ rail: 'P1', voltage: 24, rated: 10, target: 0.8 }],
    branches: [{ branch: 'B1', limit: 60, terminated: true }],
    devices: [
      { ref: 'D1', type: 'Blind', qty: 12, rail: 'P1', branch: 'B1', diversity: 0.5 },
      { ref: 'D2', type: 'Sensor', qty: 40, rail: 'P1', branch: 'B1' },
    ],
  },
};

/** The content with other values in the rows of a tag. */
export function edited(content: Content, sheet: SheetName, tag: string, cells: Cells): Content {
  const rows = content.sheets[sheet]!.map((row) => Object.values(row).includes(tag) ? { ...row, ...cells } : row);
  return { ...content, sheets: { ...content.sheets, [sheet]: rows } };
}

/** A schedule of a content with a variant kept in it, in which something else is tried out. */
export function kept(
  content: Content, tried: Content, name = 'Two supplies',
): { schedule: LoadSchedule; variant: Variant } {
  const schedule = new LoadSchedule(content);
  const variant = makeVariant(schedule.content(), new LoadSchedule(tried).content(), { name });
  schedule.act('Kept', keepVariant(schedule.document, variant));
  return { schedule, variant };
}

/** The schedule that taking a variant over comes to. */
export function taken(schedule: LoadSchedule, variant: Variant): LoadSchedule {
  return new LoadSchedule(joinVariant(schedule.content(), variant).content);
}
