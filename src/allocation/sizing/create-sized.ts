import { LoadSchedule } from '../../load-schedule.ts';
import { insertRows, nextTags, setCells, tagOf, type Cells, type Change } from '../../schedule/index.ts';
import { takenTags } from '../sharing/device-reader.ts';
import { shareChanges } from '../sharing/share-changes.ts';
import type { Placement } from '../sharing/sharing-problem.ts';
import { sizeJob } from './size-panel.ts';
import type { SizedBin, SizedModule, SizingOptions } from './sizing.ts';

/** Rows that a sizing was made, by sheet. */
export type MadeRows = Readonly<Record<
  'enclosures' | 'feeds' | 'supplies' | 'ways' | 'branches' | 'modules', number
>>;

/** The panel that is made where the schedule has none. */
const FIRST_PANEL = 'P1';

/**
 * Changes that turn a sizing of what has no place yet into rows, as one action: supplies with their ways and
 * mains feeds, branches and relay modules, in the panel that they belong to; devices, runs and outputs are put on them,
 * and what is placed stays. Where the schedule has no enclosure at all, one is made for them.
 *
 * @returns the changes, none where everything has its place, and how many rows come
 *
 * Limits: branches are sized once the devices have their supplies, which splits rows; where the search was not proven,
 * it may come to another number than the lines of the sizing.
 */
export async function createSized(
  schedule: LoadSchedule, options: SizingOptions = {},
): Promise<{ readonly changes: readonly Change[]; readonly made: MadeRows }> {
  const session = { base: schedule.document.snapshot(), actions: [] };
  const trial = new LoadSchedule(undefined, { session, words: schedule.words });
  const changes: Change[] = [];
  const act = (more: readonly Change[]) => {
    trial.act('', more);
    changes.push(...more);
  };
  const made = { enclosures: 0, feeds: 0, supplies: 0, ways: 0, branches: 0, modules: 0 };
  const append = (sheet: keyof typeof made, rows: readonly Cells[]) => {
    act(insertRows(trial.document, sheet, trial.rows(sheet).length, rows));
    made[sheet] += rows.length;
  };
  try {
    const isFirst = trial.rows('enclosures').length === 0 && options.panel === undefined;
    const rules = { ...options, unplaced: true, ...(isFirst ? { panel: FIRST_PANEL } : {}) };
    const { bins: sized, feeds, modules } = await sizeJob(trial, rules);
    const feedTags = freshTags(trial, 'feeds', feeds.length);
    const supplies = sized.filter(({ over }) => over === 'supplies').map((bin, index) => {
      const on = feeds.findIndex((feed) => feed.supplies.includes(index));
      return on < 0 ? bin : { ...bin, cells: { ...bin.cells, feed: feedTags[on]! } };
    });
    const there = new Set(trial.rows('enclosures').map((row) => tagOf('enclosures', row)));
    const panels = new Set([...sized, ...modules].flatMap(({ panel }) => panel ?? []));
    append('enclosures', [...panels].filter((panel) => !there.has(panel)).map((enclosure) => ({ enclosure })));

    append('feeds', feeds.map(({ cells }, index) => ({ ...cells, feed: feedTags[index]! })));
    const rails = tagsOf(trial, 'supplies', 'rail', supplies);
    act(putOn(trial, 'supplies', supplies, rails));
    made.supplies = supplies.length;
    const wayTags = new Set(trial.rows('ways').map((row) => tagOf('ways', row)));
    for (const [index, { ways }] of supplies.entries()) {
      const tags = nextTags(`${rails[index]!}-F0`, ways.length, wayTags);
      append('ways', ways.map(({ cells }, place) => ({ ...cells, way: tags[place]!, rail: rails[index]! })));
      act(setCells(trial.document, ways.flatMap(({ runs }, place) =>
        runs.map((id) => ({ sheet: 'runs' as const, id, key: 'way', value: tags[place]! })))));
    }
    const branches = (await sizeJob(trial, rules)).bins.filter(({ over }) => over === 'branches');
    act(putOn(trial, 'branches', branches, tagsOf(trial, 'branches', 'branch', branches)));
    made.branches = branches.length;

    const names = freshTags(trial, 'modules', modules.length);
    append('modules', modules.map(({ cells }, index) => ({ ...cells, module: names[index]! })));
    act(outputsOn(trial, modules, names));
    return { changes, made };
  } finally {
    trial.dispose();
  }
}

/** Tags of supplies or branches to be made, each the next one after that of the row that it is made like. */
function tagsOf(
  schedule: LoadSchedule, sheet: 'supplies' | 'branches', by: 'rail' | 'branch', bins: readonly SizedBin[],
): string[] {
  const taken = new Set(takenTags(schedule, sheet, by));
  return bins.map(({ after }) => {
    const [tag] = nextTags(after, 1, taken) as [string];
    taken.add(tag);
    return tag;
  });
}

/** Makes the rows and puts on each what it holds. */
function putOn(
  { document }: LoadSchedule, over: SizedBin['over'], bins: readonly SizedBin[], tags: readonly string[],
): Change[] {
  const placements = bins.flatMap((bin, index) =>
    bin.placements.map((each): Placement => ({ ...each, tag: tags[index]! })));
  return shareChanges(document, {
    over, leftOut: [], placements: placements.sort((a, b) => a.row - b.row),
    added: bins.map(({ like, cells }, index) => ({ tag: tags[index]!, like, cells })),
  });
}

/** What the first row of a sheet follows, and the cells that name its rows. */
const TAGS = {
  feeds: { first: 'X0', by: [['outputs', 'feed'], ['supplies', 'feed']] },
  modules: { first: 'K0', by: [['outputs', 'module']] },
} as const;

/** Tags that go on from the last row of a sheet, none of which any row has or names. */
function freshTags(schedule: LoadSchedule, sheet: keyof typeof TAGS, count: number): string[] {
  const { first, by } = TAGS[sheet];
  const rows = schedule.rows(sheet).map((row) => tagOf(sheet, row)).filter((tag) => tag !== '');
  const named = by.flatMap(([from, key]) => schedule.rows(from).map(({ cells }) => cells[key]));
  const taken = new Set([...rows, ...named].filter((tag) => typeof tag === 'string'));
  return nextTags(rows.at(-1) ?? first, count, taken);
}

function outputsOn({ document }: LoadSchedule, modules: readonly SizedModule[], names: readonly string[]): Change[] {
  return setCells(document, modules.flatMap(({ outputs }, index) =>
    outputs.map((id) => ({ sheet: 'outputs' as const, id, key: 'module', value: names[index]! }))));
}
