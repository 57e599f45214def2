import { panelKeys, panelOf } from '../engine/index.ts';
import type { LoadSchedule } from '../load-schedule.ts';
import type { SheetName } from '../schedule/index.ts';

/**
 * A schedule as it is seen in one panel: rows and findings of sheets whose rows belong to panels are those of this
 * panel; lists, as of types, and every figure are as they are, and so is its content. It is for reading.
 * @param panel tag of an enclosure, see `panelOf`; without one it is the schedule itself
 */
export function panelView(schedule: LoadSchedule, panel: string | undefined): LoadSchedule {
  if (panel === undefined) return schedule;
  const isShown = (sheet: SheetName, id: number) =>
    panelKeys(sheet).length === 0 || panelOf(schedule, sheet, id) === panel;
  return new Proxy(schedule, {
    get(target, key) {
      if (key === 'rows') return (sheet: SheetName) => target.rows(sheet).filter(({ id }) => isShown(sheet, id));
      if (key === 'findings') return target.findings.filter(({ sheet, id }) => isShown(sheet, id));
      const value: unknown = Reflect.get(target, key, target);
      return typeof value === 'function' ? (value as (...values: unknown[]) => unknown).bind(target) : value;
    },
  });
}
