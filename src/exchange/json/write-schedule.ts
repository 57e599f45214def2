import {
  DETAIL_KEYS, inputColumns, SCHEMA, SHEET_NAMES, type Cells, type Content, type SheetName, type VariantPart, type View,
} from '../../schedule/index.ts';
import { FORMAT } from './format.ts';
import { VERSION } from './migrations.ts';
import { unknownOf } from './unknown-keys.ts';

/**
 * Writes a schedule as JSON. Keys that were not known on reading are written back.
 * @param options.pretty one line for each row, for reading and for comparing versions; else everything on one line.
 */
export function writeSchedule(content: Content, options: { readonly pretty?: boolean } = {}): string {
  const unknown = unknownOf(content);
  const file: Record<string, unknown> = {
    format: FORMAT,
    version: VERSION,
    details: { ...ordered(content.details, DETAIL_KEYS), ...unknown.details },
    sheets: {
      ...Object.fromEntries(SHEET_NAMES.map((sheet) => [sheet, rowsOf(sheet, content.sheets[sheet] ?? [])])),
      ...unknown.sheets,
    },
    ...filled('accepted', content.accepted),
    ...filled('revisions', content.revisions),
    ...viewOf(content.view),
    ...(content.lists === undefined ? {} : { lists: content.lists }),
    ...filled('variants', content.variants?.map(({ base, tried, ...about }) =>
      ({ ...about, base: partOf(base), tried: partOf(tried) }))),
    ...unknown.file,
  };
  return options.pretty === true ? `${pretty(file, '')}\n` : JSON.stringify(file);
}

/** A list by its name; left out where it is empty. */
function filled(name: string, list: readonly unknown[] | undefined): Record<string, unknown> {
  return list === undefined || list.length === 0 ? {} : { [name]: list };
}

/** How the schedule is looked at; left out where that is as at first. */
function viewOf(view: View | undefined): Record<string, unknown> {
  const { rare, hidden, frozen, wide, loadTable = {}, ...others } = view ?? {};
  const bySheet = Object.entries({ hidden, frozen, wide }).filter(([, sheets = {}]) => Object.keys(sheets).length > 0);
  const { form, without, allPictures, ...more } = loadTable;
  const handover = {
    ...(form === undefined ? {} : { form }), ...filled('without', without), ...(allPictures === true ? { allPictures } : {}), ...more,
  };
  const written = {
    ...filled('rare', rare), ...Object.fromEntries(bySheet),
    ...(Object.keys(handover).length === 0 ? {} : { loadTable: handover }), ...others,
  };
  return Object.keys(written).length === 0 ? {} : { view: written };
}

/** What a variant holds of sheets. */
function partOf({ sheets, accepted, ...others }: VariantPart): Record<string, unknown> {
  const rows = Object.entries(sheets).map(([sheet, cells]) =>
    [sheet, sheet in SCHEMA ? rowsOf(sheet as SheetName, cells) : cells]);
  return { sheets: Object.fromEntries(rows), ...filled('accepted', accepted), ...others };
}

function rowsOf(sheet: SheetName, rows: readonly Cells[]): Cells[] {
  const keys = inputColumns(sheet).map(({ key }) => key);
  return rows.map((cells) => ordered(cells, keys));
}

/** The known entries of an object that are not empty, in the order of `keys`; after them those that are not known. */
function ordered<Value>(object: Readonly<Record<string, Value>>, keys: readonly string[]): Record<string, Value> {
  const filled = keys.filter((key) => object[key] !== undefined && object[key] !== null);
  const unknown = Object.keys(object).filter((key) => !keys.includes(key));
  return Object.fromEntries([...filled, ...unknown].map((key) => [key, object[key]!]));
}

/**
 * JSON with a line for each entry of an object or row of a sheet, but rows themselves on one line. Entries without a
 * value are left out, as JSON.stringify does.
 */
function pretty(value: unknown, indent: string): string {
  const inner = `${indent}  `;
  if (Array.isArray(value)) {
    if (value.length === 0) return '[]';
    return `[\n${value.map((item) => inner + JSON.stringify(item)).join(',\n')}\n${indent}]`;
  }
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const entries = Object.entries(value).filter(([, item]) => item !== undefined)
    .map(([key, item]) => `${inner}${JSON.stringify(key)}: ${pretty(item, inner)}`);
  return entries.length === 0 ? '{}' : `{\n${entries.join(',\n')}\n${indent}}`;
}
