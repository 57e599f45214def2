import type { Cells, CellValue } from '../../src/schedule/index.ts';
import { COMPARED, PASTE_KEYS, type Candidate, type Operation, type Results, type WorkSheet } from './operation.ts';
import type { Workload } from './workload.ts';

type Rows = Record<WorkSheet, readonly Cells[]>;
type Figures = Record<string, number | string>;

const number = (cells: Cells | undefined, key: string): number | undefined => {
  const value = cells?.[key];
  return typeof value === 'number' ? value : undefined;
};

/**
 * The figures of the workload, worked out afresh from plain rows by the rules as the design writes them; what every
 * candidate is held against. Rows are replaced and never changed, so an earlier state is a list of the same rows.
 */
export class Reference implements Candidate {
  #rows: Rows;
  readonly #before: Rows[] = [];

  constructor(rows: Workload) {
    this.#rows = { ...rows };
  }

  apply(operation: Operation): void {
    this.#before.push(this.#rows);
    const sheet = operation.op === 'set' ? operation.sheet : 'devices';
    const rows = [...this.#rows[sheet]];
    switch (operation.op) {
      case 'set': rows[operation.at] = { ...rows[operation.at], [operation.key]: operation.value }; break;
      case 'paste':
        operation.lines.forEach((line, index) => {
          const pasted = Object.fromEntries(PASTE_KEYS.map((key, place) => [key, line[place]!]));
          rows[operation.at + index] = { ...rows[operation.at + index], ...pasted };
        });
        break;
      case 'insert': rows.splice(operation.at, 0, operation.cells); break;
      case 'remove': rows.splice(operation.at, 1); break;
      case 'move': rows.splice(operation.to, 0, ...rows.splice(operation.from, 1)); break;
    }
    this.#rows = { ...this.#rows, [sheet]: rows };
  }

  undo(): void {
    this.#rows = this.#before.pop()!;
  }

  results(): Results {
    const types = new Map(this.#rows.types.map((cells) => [cells.type, cells]));
    const supplies = new Map(this.#rows.supplies.map((cells) => [cells.rail, cells]));
    const usableOf = (rail: Cells) => number(rail, 'rated')! * number(rail, 'units')! * number(rail, 'derating')!;
    const devices = this.#rows.devices.map((cells): Figures => {
      const type = types.get(cells.type ?? null);
      const rail = supplies.get(cells.rail ?? null)!;
      const unitDraw = number(cells, 'unitDraw') ?? number(type, 'draw')
        ?? number(type, 'power')! / number(rail, 'voltage')! * 1000;
      const diversity = number(cells, 'diversity') ?? number(type, 'diversity') ?? 1;
      const connected = number(cells, 'qty')! * unitDraw / 1000;
      const demand = connected * diversity;
      return {
        unitDraw, diversity, connected, demand, share: demand / usableOf(rail),
        nodes: number(cells, 'qty')! * number(type, 'nodes')!,
      };
    });
    const total = (by: string, key: string) => {
      const sums = new Map<CellValue, number>();
      devices.forEach((figures, index) => {
        const tag = this.#rows.devices[index]![by]!;
        sums.set(tag, (sums.get(tag) ?? 0) + (figures[key] as number));
      });
      return (tag: CellValue | undefined) => sums.get(tag ?? null) ?? 0;
    };
    const connectedOf = total('rail', 'connected');
    const demandOf = total('rail', 'demand');
    const nodesOf = total('branch', 'nodes');
    return picked({
      devices,
      supplies: this.#rows.supplies.map((cells) =>
        supplyFigures(cells, usableOf(cells), connectedOf(cells.rail), demandOf(cells.rail))),
      branches: this.#rows.branches.map((cells) => branchFigures(cells, nodesOf(cells.branch))),
    });
  }
}

function supplyFigures(cells: Cells, usable: number, connected: number, demand: number): Figures {
  const target = number(cells, 'target')!;
  const fuse = number(cells, 'fuse')!;
  const loading = demand / usable;
  return {
    usable, connected, demand, loading, spare: usable * target - demand, limitDiversity: usable * target / connected,
    fuseLoading: demand / fuse, loss: number(cells, 'voltage')! * demand * (1 / number(cells, 'efficiency')! - 1),
    status: demand > usable || demand > fuse ? 'over'
      : loading > target || connected > usable || connected > fuse ? 'near' : 'ok',
  };
}

function branchFigures(cells: Cells, nodes: number): Figures {
  const limit = number(cells, 'limit')!;
  const free = Math.floor(limit * (1 - number(cells, 'reserve')!) + 1e-9) - nodes;
  return { nodes, free, used: nodes / limit, status: nodes > limit ? 'over' : free < 0 ? 'near' : 'ok' };
}

function picked(figures: Record<keyof Results, readonly Figures[]>): Results {
  const of = (sheet: keyof Results) => figures[sheet].map((row) => COMPARED[sheet].map((key) => row[key]!));
  return { devices: of('devices'), supplies: of('supplies'), branches: of('branches') };
}
