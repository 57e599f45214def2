import type { Column } from '../schema/index.ts';

/** For each unit of a column, the units understood there and the power of ten that leads from them to it. */
const SHIFTS: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  A: { A: 0, mA: -3, kA: 3 },
  mA: { mA: 0, A: 3 },
  W: { W: 0, kW: 3, mW: -3 },
  V: { V: 0, mV: -3, kV: 3 },
  m: { m: 0, cm: -2, mm: -3, km: 3 },
  mm: { mm: 0, cm: 1, m: 3 },
  'mm²': { 'mm²': 0 },
  'm²': { 'm²': 0 },
  'Ω/km': { 'Ω/km': 0, 'Ω/m': 3, 'mΩ/m': 0 },
  '°C': { '°C': 0 },
  K: { K: 0 },
  'W/(m²K)': { 'W/(m²K)': 0 },
};
const RATIO: Readonly<Record<string, number>> = { '%': -2 };
const MULTIPLE: Readonly<Record<string, number>> = { x: 0, '×': 0 };
const COUNT: Readonly<Record<string, number>> = {
  'no.': 0, no: 0, nos: 0, 'nos.': 0, pcs: 0, 'pcs.': 0, pc: 0, off: 0, ea: 0, x: 0, '×': 0, stk: 0, 'stk.': 0,
};
const COUNT_OR_METRES: Readonly<Record<string, number>> = { ...COUNT, m: 0 };
/** Spellings that come from keyboards without the proper letters. */
const SPELLINGS: Readonly<Record<string, string>> = {
  a: 'A', amp: 'A', amps: 'A', ma: 'mA', w: 'W', kw: 'kW', v: 'V', C: '°C', degC: '°C', '°c': '°C', percent: '%',
};

/** One form for the many ways of writing a unit: `mm2`, `mm^2` and `mm²` are the same. */
function unitForm(text: string): string {
  const form = text.normalize('NFKC').replace(/[\s^·⋅*()]/g, '').replace(/ohms?/i, 'Ω').replace(/^KW$/, 'kW');
  return Object.hasOwn(SPELLINGS, form) ? SPELLINGS[form]! : form;
}

function shiftsOf(column: Column): Readonly<Record<string, number>> {
  if (column.unit !== undefined) return SHIFTS[column.unit] ?? { [column.unit]: 0 };
  if (column.kind === 'ratio') return RATIO;
  if (column.kind !== 'integer') return MULTIPLE;
  return column.role === 'input' && column.metres === true ? COUNT_OR_METRES : COUNT;
}

function findShift(shifts: Readonly<Record<string, number>>, unit: string): number | undefined {
  const form = unitForm(unit);
  const lower = shifts === COUNT || shifts === COUNT_OR_METRES ? form.toLowerCase() : form;
  const name = Object.keys(shifts).find((each) => unitForm(each) === form || each === lower);
  return name === undefined ? undefined : shifts[name];
}

/**
 * The power of ten that leads from a unit, as somebody wrote it, to the unit of a column.
 * @returns 3 for `A` in a column in mA; `undefined` for a unit that the column does not understand.
 */
export function unitShift(column: Column, unit: string): number | undefined {
  return findShift(shiftsOf(column), unit);
}

/** The power of ten that leads from a unit of power to watts; `undefined` for other units. */
export function wattShift(unit: string): number | undefined {
  return findShift(SHIFTS.W!, unit);
}

/** Whether a column understands a unit. */
export function understandsUnit(column: Column, unit: string): boolean {
  return unitShift(column, unit) !== undefined || (column.unit === 'mA' && wattShift(unit) !== undefined);
}

/** The units that may be typed in a column, for a sentence. Empty for a plain number. */
export function unitsAllowed(column: Column): string[] {
  if (column.unit === undefined) return column.kind === 'ratio' ? ['%'] : [];
  const units = Object.keys(shiftsOf(column));
  return column.unit === 'mA' ? [...units, 'W'] : units;
}

/** Whether a text is a unit that some column understands. */
export function isUnit(text: string): boolean {
  return [...Object.values(SHIFTS), RATIO, COUNT].some((shifts) => findShift(shifts, text) !== undefined);
}
