import { isInSight, type PanelChoice } from '../engine/panel-of.ts';
import type { Finding } from '../findings/index.ts';
import type { LoadSchedule } from '../load-schedule.ts';
import type { SheetName } from '../schedule/index.ts';

/**
 * The findings of a panel. What puts a run of it over its limits is among them where it is told in another panel: at a
 * device, or at the supply that feeds both.
 */
function findingsIn(schedule: LoadSchedule, panel: PanelChoice): readonly Finding[] {
  const runs = new Set(schedule.rows('runs').map(({ id }) => id)
    .filter((id) => isInSight(schedule, 'runs', id, panel) && schedule.value('runs', id, 'status') === 'over'));
  const rails = new Set([...runs].map((id) => schedule.target('runs', id, 'rail')));
  return schedule.findings.filter(({ sheet, id, severity }) => isInSight(schedule, sheet, id, panel)
    || (severity === 'over' && (sheet === 'devices' ? runs.has(schedule.target('devices', id, 'run'))
      : sheet === 'supplies' && rails.has(id))));
}

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
      if (key === 'findings') return findingsIn(target, panel);
      const value: unknown = Reflect.get(target, key, target);
      return typeof value === 'function' ? (value as (...values: unknown[]) => unknown).bind(target) : value;
    },
  });
}
