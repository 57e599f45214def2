import type { FurtherBins, Served, ShareBin, ShareGroup, ShareRow } from './sharing-problem.ts';

/** A device row with the panel that it stays in; `null` where it may go to any. */
export interface BoundRow {
  readonly row: ShareRow;
  readonly panel: string | null;
}

/**
 * Groups devices that ask for the same by the panel that they stay in. What may go to any panel comes last, beside
 * what is shared out by then; where nothing is bound to a panel there is one group.
 * @param further further branches or supplies in a panel, or in any
 */
export function groupsByPanel(
  serves: Served | null, rows: readonly BoundRow[], bins: readonly ShareBin[],
  further: (panel: string | null) => FurtherBins | undefined,
): Omit<ShareGroup, 'pool'>[] {
  const bound = new Set(rows.flatMap(({ panel }) => panel ?? []));
  if (bound.size > 0) {
    for (const { panel, inUse } of bins) if (inUse && panel !== null) bound.add(panel);
  }
  const free = rows.filter(({ panel }) => panel === null);
  const groups = [...bound].sort().map((panel) => ({
    serves, panel, rows: rows.filter((each) => each.panel === panel).map(({ row }) => row),
    bins: bins.filter((bin) => bin.panel === panel), further: further(panel),
  }));
  const isRest = free.length > 0 || bound.size === 0 || bins.some(({ inUse, panel }) => inUse && panel === null);
  return isRest ? [...groups, { serves, panel: null, rows: free.map(({ row }) => row), bins, further: further(null) }]
    : groups;
}

/** Whether rows are bound to the panel that they belong to: some branch or supply says its own. */
export function panelsBind(bins: readonly { readonly panel: string | null }[], acrossPanels: boolean): boolean {
  return !acrossPanels && bins.some(({ panel }) => panel !== null);
}
