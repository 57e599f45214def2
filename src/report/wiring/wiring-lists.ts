import type { LoadSchedule } from '../../load-schedule.ts';
import { isBlank, SCHEMA, tagOf, type SheetName } from '../../schedule/index.ts';
import { cableSchedule, insideWires, wiredTerminals } from '../../terminals/index.ts';

/** The lists that a panel is wired from. */
export const WIRING_LISTS = ['wiring', 'inside', 'cables', 'labels'] as const;
export type WiringListName = (typeof WIRING_LISTS)[number];

/** A list whose columns have plain English keys, for programs and printers; `null` is what is not known. */
export interface WiringList {
  readonly keys: readonly string[];
  readonly rows: readonly (readonly (string | number | boolean | null)[])[];
}

/** One of the lists of a schedule. */
export function wiringList(schedule: LoadSchedule, name: WiringListName): WiringList {
  return LISTS[name](schedule);
}

const LISTS: Readonly<Record<WiringListName, (schedule: LoadSchedule) => WiringList>> = {
  wiring: ({ document, figures }) => ({
    keys: ['terminal', 'strip', 'enclosure', 'inside', 'potential', 'bridgedWith', 'outside', 'core', 'size', 'to', 'wired', 'checked'],
    rows: wiredTerminals(document, figures).map((each) => [
      each.terminal, each.strip, each.enclosure, each.inside, each.potential, each.bridgedWith.join(' '), each.outside,
      each.core, numberOf(each.row.cells.size), each.to, each.row.cells.wired === true, each.row.cells.checked === true,
    ]),
  }),
  inside: ({ document, figures }) => ({
    keys: ['from', 'to', 'potential', 'enclosure', 'current'],
    rows: [
      ...insideWires(document, figures)
        .map(({ from, to, potential, enclosure, amps }) => [from, to, potential, enclosure, amps]),
      ...wiredTerminals(document, figures).filter(({ inside }) => inside !== '')
        .map(({ inside, terminal, potential, enclosure }) => [inside, terminal, potential, enclosure, null]),
    ],
  }),
  cables: ({ document, figures }) => ({
    keys: ['cable', 'kind', 'type', 'cores', 'used', 'spare', 'from', 'to', 'length', 'current', 'gland'],
    rows: cableSchedule(document, figures).map(({ tag, sheet, type, cores, used, from, to, length, amps, gland }) => [
      tag, SCHEMA[sheet].rowName, type, cores, used, cores === null ? null : cores - used, from.join(' '), to, length,
      amps ?? null, gland,
    ]),
  }),
  labels: (schedule) => ({ keys: ['kind', 'text', 'count'], rows: labels(schedule) }),
};

const numberOf = (value: unknown): number | null => typeof value === 'number' ? value : null;

/** Sheets of which each row is a part with a label of its own. */
const LABELLED: readonly SheetName[] = ['supplies', 'ways', 'branches', 'modules', 'outputs', 'feeds', 'devices'];

/** A label: what it is for, its text, and how many of it. */
type Label = [kind: string, text: string, count: number];

/** Labels: one at both ends of each cable, one for each terminal, each part and each device row. */
function labels({ document, figures }: LoadSchedule): Label[] {
  return [
    ...cableSchedule(document, figures).map(({ tag }): Label => ['cable', tag, 2]),
    ...wiredTerminals(document, figures).filter(({ terminal }) => terminal !== '')
      .map(({ terminal }): Label => ['terminal', terminal, 1]),
    ...LABELLED.flatMap((sheet) => document.rows(sheet).filter((row) => !isBlank(row))
      .map((row): Label => [SCHEMA[sheet].rowName, tagOf(sheet, row), 1]).filter(([, text]) => text !== '')),
  ];
}
