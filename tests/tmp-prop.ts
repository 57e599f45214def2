import fc from 'fast-check';
import { expect, test } from '/tmp/i10b-out/fake.ts';
import { outOfRange } from '/work/i10b/src/engine/index.ts';
import { ENGLISH } from '/work/i10b/src/words/index.ts';
import { LoadSchedule } from '/work/i10b/src/load-schedule.ts';
import {
  columnOf, inputColumns, isBlank, isFormula, isNumeric, SHEET_NAMES, type Cells, type CellValue, type Content,
  type InputColumn, type SheetName,
} from '/work/i10b/src/schedule/index.ts';
import { readData } from '/work/i10b/tests/data/read-data.ts';
import { evaluateArithmetic } from '/work/i10b/tests/support/arithmetic.ts';
import { closeTo } from '/work/i10b/tests/support/close-to.ts';
import { runGaps } from '/work/i10b/tests/support/independent-run-checks.ts';
import { recalculateRuns, type RunFault } from '/work/i10b/tests/support/independent-runs.ts';
import { recalculate } from '/work/i10b/tests/support/independent.ts';
import { someAction, someContent } from '/work/i10b/tests/engine/random-actions.ts';
import { someWarmEdit, someWarmSchedule } from '/work/i10b/tests/engine/random-warmth.ts';

/** A run is within limits only where each of its checks was made, and waits only where one was not. */
function expectGaps(schedule: LoadSchedule, gaps: readonly (readonly string[])[]): void {
  schedule.rows('runs').forEach((row, at) => {
    if (isBlank(row)) return;
    const status = schedule.value('runs', row.id, 'status');
    if (status === 'ok') expect([at, status, gaps[at]]).toEqual([at, 'ok', []]);
    if (gaps[at]!.length === 0) expect([at, status]).not.toEqual([at, 'incomplete']);
  });
}

/**
 * Whether the independent calculation knows a cell: formulas of plain arithmetic, with results that the column allows.
 */
function isPlain(sheet: SheetName, key: string, value: CellValue): boolean {
  if (!isFormula(value)) return true;
  if (!/^=[\d.+*/() -]+$/.test(value)) return false;
  const result = evaluateArithmetic(value);
  return result === null || outOfRange(columnOf(sheet, key) as InputColumn, result, ENGLISH) === undefined;
}

function isAllPlain(content: Content): boolean {
  return SHEET_NAMES.every((sheet) => (content.sheets[sheet] ?? [])
    .every((cells) => Object.entries(cells).every(([key, value]) => isPlain(sheet, key, value))));
}


const seen:any={};
test('wild',()=>{fc.assert(fc.property(someContent, fc.array(someAction, { minLength: 1, maxLength: 8 }), (content, actions) => {
    const schedule = new LoadSchedule(content);
    for (const action of actions) {
      action(schedule);
      const after = schedule.content();
      if (isAllPlain(after)) { expectGaps(schedule, runGaps(after)); for (const {id} of schedule.rows('runs')) { const k=String(schedule.value('runs',id,'status')); seen[k]=(seen[k]??0)+1; } }
    }
    schedule.dispose();
  }), { numRuns: 150 }); console.log(seen)});
test('warm',()=>{fc.assert(fc.property(someWarmSchedule, fc.array(someWarmEdit, { maxLength: 4 }), (content, edits) => {
    const schedule = new LoadSchedule(content);
    for (const edit of [undefined, ...edits]) { edit?.(schedule); expectGaps(schedule, runGaps(schedule.content())); }
  }), { numRuns: 60 })});
import { someRunSchedule } from '/work/i10b/tests/engine/random-runs.ts';
test('random runs',()=>{const seen:any={};fc.assert(fc.property(someRunSchedule, (content) => {
    const schedule = new LoadSchedule(content); expectGaps(schedule, runGaps(schedule.content()));
    for (const {id} of schedule.rows('runs')) { const k=String(schedule.value('runs',id,'status')); seen[k]=(seen[k]??0)+1; }
  }), { numRuns: 400 }); console.log(seen)});
