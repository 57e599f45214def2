import { isInSight, type PanelChoice } from '../engine/panel-of.ts';
import type { LoadSchedule } from '../load-schedule.ts';
import type { SheetName } from '../schedule/index.ts';

/**
 * A schedule as it is seen in one panel: rows and findings of sheets whose rows belong to panels are those of this
 * panel; lists, as of types, and every figure are as they are, and so is its content. It is for reading.
 * @param panel tag of an enclosure, see `panelOf`; `null` for what is in none; without it it is the schedule itself
 */
export function panelView(schedule: LoadSchedule, panel: PanelChoice): LoadSchedule {
  if (panel === undefined) return schedule;
  return new Proxy(schedule, {
    get(target, key) {
      if (key === 'rows') {
        return (sheet: SheetName) => target.rows(sheet).filter(({ id }) => isInSight(target, sheet, id, panel));
      }
      if (key === 'findings') return target.findings.filter(({ sheet, id }) => isInSight(target, sheet, id, panel));
      const value: unknown = Reflect.get(target, key, target);
      return typeof value === 'function' ? (value as (...values: unknown[]) => unknown).bind(target) : value;
    },
  });
}
