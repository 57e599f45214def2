import { exceeds, isGiven, number, type Cell, type InputRow, type Known } from './known-number.ts';

/**
 * What stands on the mounting rails of an enclosure and whether it can, worked out a second time. Nothing of the
 * product is imported.
 */
export interface RailFigures {
  /** Width of all parts with two end brackets of 10 mm for each piece of a strip [mm]. */
  readonly used: number;
  /** Whether all parts without a rail find one; `null` where that was not decided. */
  readonly fits: boolean | null;
  /** A rail is given more by hand than it is long, or a part a rail that is not there. */
  readonly isOver: boolean;
}

interface Fill { readonly width: number; readonly band: number }

interface Part { readonly width: number; readonly band: number; readonly rail: Known }

type Sheet = (name: string) => readonly InputRow[];

const [MAINS, ELV] = [1, 2];
const BRACKETS = 2 * 10;
const PLATE = 3;
const ENDS: Readonly<Record<'inside' | 'outside', readonly string[]>> = {
  inside: ['ways', 'supplies', 'branches', 'modules', 'outputs', 'feeds', 'terminals'],
  outside: ['runs', 'outputs', 'branches', 'feeds'],
};
const TAGS: Readonly<Record<string, string>> = {
  ways: 'way', supplies: 'rail', branches: 'branch', modules: 'module', outputs: 'output', feeds: 'feed', terminals: 'terminal', runs: 'run',
};

/** @returns `undefined` where number or length of the rails are not known. */
export function railsOf(sheet: Sheet, enclosure: InputRow): RailFigures | undefined {
  const [count, length] = [number(enclosure, 'rails'), number(enclosure, 'railLength')];
  if (count === null || length === null) return undefined;
  const parts = [...rowParts(sheet, enclosure.enclosure), ...stripParts(sheet, enclosure.enclosure, length)];
  const rails = Array.from({ length: count }, () => ({ width: 0, band: 0 }));
  for (const { width, band, rail } of parts) {
    if (rail === null || rail > count) continue;
    rails[rail - 1]!.width += width;
    rails[rail - 1]!.band |= band;
  }
  const room = ({ width, band }: { width: number; band: number }) => width + (band === (MAINS | ELV) ? PLATE : 0);
  return {
    used: parts.reduce((sum, { width }) => sum + width, 0),
    fits: fits(parts.filter(({ rail }) => rail === null), rails, length),
    isOver: parts.some(({ rail }) => rail !== null && rail > count)
      || rails.some((each) => exceeds(room(each), length)),
  };
}

/** Tries every rail for every part, and no fill of the rails twice. */
function fits(parts: readonly Part[], rails: readonly Fill[], length: number): boolean | null {
  const sorted = [...parts].sort((one, other) => other.width - one.width);
  const failed = new Set<string>();
  const visit = (at: number, filled: readonly Fill[]): boolean => {
    const part = sorted[at];
    if (part === undefined) return true;
    const free = filled.reduce((sum, { width }) => sum + Math.max(0, length - width), 0);
    if (exceeds(sorted.slice(at).reduce((sum, { width }) => sum + width, 0), free)) return false;
    const key = `${at} ${filled.map(({ width, band }) => `${width.toFixed(6)}/${band}`).sort().join(' ')}`;
    if (failed.has(key) || failed.size > 20_000) return false;
    for (const [place, { width, band }] of filled.entries()) {
      const both = band | part.band;
      if (exceeds(width + part.width + (both === (MAINS | ELV) ? PLATE : 0), length)) continue;
      const next = { width: width + part.width, band: both };
      if (visit(at + 1, filled.map((each, other) => other === place ? next : each))) return true;
    }
    failed.add(key);
    return false;
  };
  return visit(0, rails) ? true : failed.size > 20_000 ? null : false;
}

function rowParts(sheet: Sheet, enclosure: Cell): Part[] {
  return ['feeds', 'supplies', 'ways', 'branches', 'modules'].flatMap((name) => sheet(name).flatMap((row): Part[] => {
    const place = row.enclosure ?? (name === 'ways' ? first(sheet, 'supplies', row.rail)?.enclosure : null);
    const [width, units] = [number(row, 'width'), name === 'supplies' ? number(row, 'units', 1) : 1];
    if (place !== enclosure || width === null || units === null || !isGiven(place)) return [];
    const part = { width, band: bandOfRow(sheet, name, row), rail: number(row, 'mountedOn') };
    return Array.from({ length: units }, () => part);
  }));
}

function bandOfRow(sheet: Sheet, name: string, row: InputRow): number {
  if (name === 'supplies') return 0;
  if (name === 'feeds') return bandOf(number(row, 'voltage', 230), false) || MAINS;
  if (name !== 'modules') return ELV;
  const outputs = sheet('outputs').filter(({ module }) => isGiven(module) && module === row.module);
  const isMeant = first(sheet, 'modules', row.module) !== undefined;
  return isMeant && outputs.length > 0 && outputs.every((output) => bandOfOutput(sheet, output) === ELV) ? ELV : MAINS;
}

const bandOf = (volts: Known, isDirect: boolean): number =>
  volts === null ? 0 : volts <= (isDirect ? 120 : 50) ? ELV : MAINS;

function bandOfOutput(sheet: Sheet, row: InputRow): number {
  const [rail, feed] = [first(sheet, 'supplies', row.rail), first(sheet, 'feeds', row.feed)];
  const isDirect = row.kind === 'dc' || row.kind === 'dcCoil';
  const volts = isGiven(row.voltage) ? number(row, 'voltage')
    : isDirect || isGiven(row.rail) ? (rail === undefined ? null : number(rail, 'voltage', 24))
      : feed === undefined ? 230 : number(feed, 'voltage', 230);
  return bandOf(volts, isDirect);
}

function stripParts(sheet: Sheet, enclosure: Cell, length: number): Part[] {
  if (!isGiven(enclosure)) return [];
  const listed = sheet('terminals').filter((row) => ['terminal', 'potential', 'inside', 'outside'].some((key) => isGiven(row[key])));
  const bands = bandsOfPotentials(sheet, listed);
  const here = listed.filter((row) => row.enclosure === enclosure);
  return [...new Set(here.map(({ strip }) => strip ?? ''))].flatMap((strip): Part[] => {
    const numbered = here.filter((row) => (row.strip ?? '') === strip)
      .map((row) => [Number(/:(\d+)$/.exec(String(row.terminal ?? ''))?.[1] ?? Infinity), row] as const);
    const those = numbered.sort(([one], [other]) => one === other ? 0 : one - other).map(([, row]) => row);
    const all = those.map(({ potential }) => bands.get(potential) ?? 0);
    const band = all.includes(MAINS) ? MAINS : all.includes(ELV) ? ELV : 0;
    const pieces: { width: number; rail: Known }[] = [];
    for (const row of those) {
      const [own, rail] = [number(row, 'width'), number(row, 'mountedOn')];
      if (own === null) continue;
      const width = own + (row.partition === true ? PLATE : 0);
      const last = pieces.at(-1);
      const isOther = last === undefined || (rail !== null && last.rail !== null && rail !== last.rail);
      const isLonger = last !== undefined && rail === null && last.rail === null
        && last.width + width + BRACKETS > length;
      if (isOther || isLonger) pieces.push({ width, rail });
      else {
        last.width += width;
        last.rail ??= rail;
      }
    }
    return pieces.map(({ width, rail }) => ({ width: width + BRACKETS, band, rail }));
  });
}

/** Mains where any end of a potential is, else extra-low voltage where one is. */
function bandsOfPotentials(sheet: Sheet, terminals: readonly InputRow[]): Map<Cell, number> {
  const bands = new Map<Cell, number>();
  for (const row of terminals) {
    if (!isGiven(row.potential) || row.potential === 'PE') continue;
    for (const end of ['inside', 'outside'] as const) {
      const found = bandOfEnd(sheet, end, row[end]);
      if (found !== 0 && bands.get(row.potential) !== MAINS) bands.set(row.potential, found);
    }
  }
  return bands;
}

function bandOfEnd(sheet: Sheet, end: 'inside' | 'outside', text: Cell): number {
  if (!isGiven(text)) return 0;
  const colon = String(text).lastIndexOf(':');
  const tags = [text, ...colon > 0 ? [String(text).slice(0, colon)] : []];
  const named = ENDS[end].flatMap((name) => {
    const row = tags.map((tag) => first(sheet, name, tag)).find((each) => each !== undefined);
    return row === undefined ? [] : [{ name, row, behind: first(sheet, name, text) === undefined ? String(text).slice(colon) : '' }];
  });
  if (named.length !== 1) return 0;
  const { name, row, behind } = named[0]!;
  const rail = name === 'ways' ? row.rail : isGiven(row.rail) ? row.rail : first(sheet, 'ways', row.way)?.rail;
  switch (name) {
    case 'feeds': return bandOf(number(row, 'voltage', 230), false);
    case 'outputs': return bandOfOutput(sheet, row);
    case 'supplies': return [':L', ':N'].includes(behind) ? MAINS : bandOf(number(row, 'voltage', 24), true);
    case 'ways': case 'runs': {
      const supply = first(sheet, 'supplies', rail);
      return supply === undefined ? 0 : bandOf(number(supply, 'voltage', 24), true);
    }
    case 'branches': return ELV;
    default: return 0;
  }
}

const first = (sheet: Sheet, name: string, tag: Cell): InputRow | undefined =>
  isGiven(tag) ? sheet(name).find((row) => row[TAGS[name]!] === tag) : undefined;
