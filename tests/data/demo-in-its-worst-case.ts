import type { InputSchedule } from '../support/independent.ts';

/**
 * The demo as a schedule without cases whose blinds are all on, as in the wind alarm: the case in which rail P1 is
 * asked most. By the diversity of their rows alone the other rails are asked most.
 */
export const inItsWorstCase = (demo: InputSchedule): InputSchedule => ({
  sheets: {
    ...demo.sheets, cases: [], factors: [],
    devices: demo.sheets.devices!.map((row) => row.type === 'Blind motor' && row.group === undefined ? { ...row, diversity: 1 } : row),
  },
});
