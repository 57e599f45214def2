import { plainKey } from './plain-words.ts';
import type { LineDraft, TakeoffLine } from './line.ts';
import type { NameList, TakeoffName } from './names/name-list.ts';
import { isPerMetre } from './per-metre.ts';
import { lineKey } from './source.ts';
import type { Cells } from '../../schedule/index.ts';
import type { Words } from '../../words/index.ts';

/** The lines of a takeoff with what becomes of each, and the device rows that they give. */
export interface SettledLines {
  readonly lines: readonly TakeoffLine[];
  readonly rows: readonly Cells[];
}

/**
 * Decides what becomes of each line. Lines with the same ref, area, type, rail and branch give one device row, whose
 * quantity is the sum of theirs.
 * @param types those that there are.
 */
export function settleLines(
  drafts: readonly LineDraft[], names: NameList, types: readonly Cells[], words: Words,
): SettledLines {
  const byMetre = new Set(types.filter(isPerMetre).map(({ type }) => type));
  const rows = new Map<string, { readonly place: number; readonly line: number; readonly cells: Cells; qty: number }>();
  const lines = drafts.map((draft): TakeoffLine => {
    const { source, fields, qty, facts, flag, proposal } = draft;
    const { line } = source;
    const name = draft.names.length === 0 ? undefined : names.find(draft.names);
    const type = name?.type ?? null;
    const area = typeof draft.cells.area === 'string' ? draft.cells.area : null;
    const shared = { key: lineKey(source), source, line, fields, qty, type, area, facts,
      ...(flag === undefined ? {} : { flag }), ...(proposal === undefined ? {} : { proposal }),
      ...(draft.isTotal ? { isTotal: true as const } : {}),
      ...(name === undefined ? {} : { nameKey: name.key }) };
    const { outcome, reasons } = settle(draft, name, byMetre, words);
    if (outcome !== 'taken') return { ...shared, outcome, reason: reasons.join(' ') };

    const key = rowKey(draft, type);
    const before = rows.get(key);
    if (before === undefined) {
      rows.set(key, { place: rows.size, line, cells: { ...draft.cells, type }, qty: qty! });
      return { ...shared, outcome, reason: reasons.join(' '), row: rows.size - 1 };
    }
    // Quantities have three decimals at most.
    before.qty = Math.round((before.qty + qty!) * 1000) / 1000;
    before.cells.note = joined(before.cells.note, draft.cells.note);
    const added = words.say(
      'The same type in the same place as on line {line}, to which it is added.', { line: before.line }
    );
    return { ...shared, outcome: 'merged', reason: [added, ...reasons].join(' '), mergedInto: before.line, row: before.place };
  });
  return { lines, rows: [...rows.values()].map(({ cells, qty }) => withoutEmpty({ ...cells, qty })) };
}

function settle(
  draft: LineDraft, name: TakeoffName | undefined, byMetre: ReadonlySet<unknown>, words: Words,
): { readonly outcome: 'taken' | 'left-out' | 'undecided'; readonly reasons: readonly string[] } {
  const { kind, remarks, isLength } = draft;
  if (name === undefined) return { outcome: kind === 'undecided' ? 'undecided' : 'left-out', reasons: remarks };
  if (name.state === 'left-out') return { outcome: 'left-out', reasons: [name.reason] };
  if (kind === 'left-out') return { outcome: 'left-out', reasons: remarks };
  const reasons = name.state === 'undecided' || kind === 'undecided'
    ? [...remarks, name.reason] : [name.reason, ...remarks];
  if (name.state === 'undecided' || kind === 'undecided') return { outcome: 'undecided', reasons };
  if (isLength && !byMetre.has(name.type) && !isPerMetre({ type: name.type })) {
    const remark = draft.lengthDoubt ?? words.say(
      'It is a length, and {type} is not counted by the metre. Say how many there are.', { type: name.type! }
    );
    return { outcome: 'undecided', reasons: [remark, ...reasons] };
  }
  return { outcome: 'taken', reasons };
}

function rowKey({ source: { file, sheet }, cells, below }: LineDraft, type: string | null): string {
  const { ref, area, rail, branch } = cells;
  // The same room on two sheets, or below two storeys, is two rooms.
  return JSON.stringify([type, file, sheet, below, ...[ref, area, rail, branch].map(plainKey)]);
}

function joined(one: Cells[string] | undefined, other: Cells[string] | undefined): Cells[string] {
  const texts = [one, other].filter((text): text is string => typeof text === 'string');
  return texts.length === 0 ? null : [...new Set(texts)].join('; ');
}

function withoutEmpty(cells: Cells): Cells {
  return Object.fromEntries(Object.entries(cells).filter(([, value]) => value !== null));
}
