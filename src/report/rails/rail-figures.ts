import type { Standing } from '../../findings/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import type { MountedPart, PanelRail, PanelRails } from '../../mounting/index.ts';
import { SCHEMA, tagOf } from '../../schedule/index.ts';

/** Heat of the supplies on a mounting rail [W]. */
export interface RailHeat {
  readonly watts: number;
  /** That of one of them is not wholly known: it is at least as much. */
  readonly isPartial: boolean;
}

/**
 * Heat of the supplies on a rail; `undefined` where there is none. What else gives off heat is known for the enclosure
 * as a whole alone.
 */
export function railHeat(schedule: LoadSchedule, { parts }: PanelRail): RailHeat | undefined {
  const supplies = parts.filter(({ sheet }) => sheet === 'supplies');
  if (supplies.length === 0) return undefined;
  let [watts, isPartial] = [0, false];
  for (const { ids: [id], piece } of supplies) {
    const loss = schedule.value('supplies', id!, 'loss');
    if (typeof loss === 'number') watts += loss / (piece?.of ?? 1);
    if (typeof loss !== 'number' || schedule.isPartial('supplies', id!, 'loss')) isPartial = true;
  }
  return { watts, isPartial };
}

/** The heat of a rail in words: `≥ 12.4 W`; empty where there is no supply on it. */
export function heatText(schedule: LoadSchedule, rail: PanelRail): string {
  const heat = railHeat(schedule, rail);
  return heat === undefined ? '' : `${heat.isPartial ? '≥\u00a0' : ''}${schedule.words.number(heat.watts, 1)}\u00a0W`;
}

/** What a part is called: its tag, or the number of its row, with which of several alike it is. */
export function partName({ document, words }: LoadSchedule, { sheet, ids: [id], tag, piece }: MountedPart): string {
  const row = document.row(sheet, id!)!;
  const name = tag !== '' ? tag : tagOf(sheet, row) !== '' ? tagOf(sheet, row)
    : words.say('{sheet}, row {row}', { sheet: words.text(SCHEMA[sheet].title), row: document.position(sheet, id!) + 1 });
  return piece === undefined ? name : `${name}\u00a0${piece.number}/${piece.of}`;
}

/** How a rail stands: parts without a width may have to come on it yet. */
export const standingOfRail = ({ lacking }: PanelRails, { isOver }: PanelRail): Standing =>
  isOver ? 'over' : lacking > 0 ? 'incomplete' : 'ok';

/** A width [mm] as it is shown, to a tenth; `side` rounds what is left to the safe side. */
export function shownWidth(width: number, side?: 'down'): number {
  return (side === 'down' ? Math.floor(width * 10 + 1e-6) : Math.round(width * 10)) / 10;
}

/** A width in words: `62 mm`, with a decimal where it has one; `side` rounds what is left to the safe side. */
export const widthText = ({ words }: LoadSchedule, width: number, side?: 'down'): string =>
  `${words.number(shownWidth(width, side))}\u00a0mm`;
