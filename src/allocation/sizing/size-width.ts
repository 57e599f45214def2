import { numberOf } from '../../engine/index.ts';
import type { SizedBin, SizedFeed, SizedModule, SizedSchedule, SizingRow, SizingRules } from './sizing.ts';

/** Mounting rail that the parts of each panel take [mm], as far as their widths are known; nothing where none is. */
export function sizeWidth(
  schedule: SizedSchedule, bins: readonly SizedBin[], others: readonly (SizedFeed | SizedModule)[],
  { extension }: SizingRules,
): SizingRow[] {
  const { words } = schedule;
  return [...new Set([...bins, ...others].map(({ panel }) => panel))].flatMap((panel): SizingRow[] => {
    const parts = [
      ...bins.filter((bin) => bin.panel === panel).flatMap(({ over, like, cells, ways }) => {
        const own = 'width' in cells || like === null ? null : numberOf(schedule, over, like, 'width');
        const units = typeof cells.units === 'number' ? cells.units : 1;
        return [own === null ? null : own * units, ...ways.map((way) => numeric(way.cells.width))];
      }),
      ...others.filter((other) => other.panel === panel).map(({ cells }) => numeric(cells.width)),
    ];
    const known = parts.filter((width) => width !== null);
    if (known.length === 0) return [];
    const sum = known.reduce((total, width) => total + width, 0);
    return [{
      panel, item: words.say('Mounting rail [mm]'), quantity: Math.ceil(sum * (1 + extension) - 1e-9),
      why: words.say('Widths of {known, plural, one {# part} other {# parts}} above{extension, select, none {} other {, and {percent} % more for extension}}{missing, plural, =0 {} one {; the width of one part is not known, so it is at least that} other {; the widths of # parts are not known, so it is at least that}}.', {
        known: known.length, missing: parts.length - known.length, extension: extension === 0 ? 'none' : 'some',
        percent: Math.round(extension * 1000) / 10,
      }),
    }];
  });
}

function numeric(value: unknown): number | null {
  return typeof value === 'number' ? value : null;
}
