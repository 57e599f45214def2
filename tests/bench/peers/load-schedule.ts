import '../../../src/engine/engine-at-once.define.ts';
import { LoadSchedule } from '../../../src/load-schedule.ts';
import {
  insertRows, moveRows, pasteCells, removeRows, setCells, type Change,
} from '../../../src/schedule/index.ts';
import { COMPARED, PASTE_KEYS, type Candidate, type Operation, type Results } from '../operation.ts';
import type { Workload } from '../workload.ts';

/** The schedule as the element and the terminal use it: document, engine, findings, undo. */
export class ScheduleCandidate implements Candidate {
  readonly schedule: LoadSchedule;

  constructor(sheets: Workload) {
    this.schedule = new LoadSchedule({ details: {}, sheets });
  }

  prepare(): void {
    this.schedule.startFormulas();
  }

  apply(operation: Operation): void {
    this.schedule.act(operation.op, this.#changes(operation));
  }

  typeFormula(): void {
    const read = this.schedule.checkFormula(
      'supplies', 'fuse', `=SUM(devices!D1:D${this.schedule.rows('devices').length})`
    );
    if (!read.ok) throw new Error(read.problem);
    const { id } = this.schedule.rows('supplies')[0]!;
    this.schedule.act(
      'formula', setCells(this.schedule.document, [{ sheet: 'supplies', id, key: 'fuse', value: read.value }])
    );
  }

  undo(): void {
    this.schedule.undo();
  }

  results(): Results {
    const of = (sheet: keyof Results) => this.schedule.rows(sheet)
      .map(({ id }) => COMPARED[sheet].map((key) => this.schedule.value(sheet, id, key)));
    return { devices: of('devices'), supplies: of('supplies'), branches: of('branches') };
  }

  listFindings(): number {
    return this.schedule.findings.length;
  }

  #changes(operation: Operation): Change[] {
    const { document } = this.schedule;
    const idAt = (place: number) => document.rows('devices')[place]!.id;
    switch (operation.op) {
      case 'set': {
        const { sheet, at, key, value } = operation;
        return setCells(document, [{ sheet, id: document.rows(sheet)[at]!.id, key, value }]);
      }
      case 'paste': return pasteCells(document, 'devices', operation.at, PASTE_KEYS, operation.lines);
      case 'insert': return insertRows(document, 'devices', operation.at, [operation.cells]);
      case 'remove': return removeRows(document, 'devices', [idAt(operation.at)]);
      case 'move': return moveRows(document, 'devices', [idAt(operation.from)], operation.to);
    }
  }
}
