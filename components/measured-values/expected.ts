import { expectedDrop } from '../../src/electrical/index.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { numberAt } from '../look/index.ts';

/** Sheets whose rows are measured at commissioning. */
export type MeasuredSheet = 'supplies' | 'runs';
export type MeasuredKey = 'measuredCurrent' | 'measuredVoltage';

/**
 * What is to be expected where a current [A] or a voltage [V] is measured, as far as the schedule knows all of it;
 * `null` where it does not. At the far end of a run that is the voltage at its start, as it was measured or else
 * nominal, less what its cable drops at the current that flows.
 */
export function expectedAt(schedule: LoadSchedule, sheet: MeasuredSheet, id: number, key: MeasuredKey): number | null {
  const own = (of: string) => schedule.isPartial(sheet, id, of) ? null : numberAt(schedule, { sheet, id, key: of });
  if (key === 'measuredCurrent') return own(sheet === 'runs' ? 'current' : 'demand');
  if (sheet === 'supplies') return own('voltage');
  const rail = schedule.target(sheet, id, 'rail');
  const ofRail = (of: string) => rail < 0 ? null : numberAt(schedule, { sheet: 'supplies', id: rail, key: of });
  const [nominal, drop, current] = [ofRail('voltage'), own('drop'), own('current')];
  if (nominal === null || drop === null || current === null) return null;
  const start = ofRail('measuredVoltage') ?? nominal - (ofRail('seriesDrop') ?? 0);
  return start - expectedDrop(drop, current, own('measuredCurrent'));
}
