import { joinVariant, makeVariant, withoutVariant } from '../../src/exchange/variants/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { compareOutcomes } from '../../src/report/index.ts';
import { setCells } from '../../src/schedule/index.ts';
import { processorTime } from '../support/processor-time.ts';
import {
  CASE_EDITS, FACTOR_EDIT, OPENING, TRIED_EDIT, VARIANT, type CaseEdit, type CaseTask,
} from './case-kinds.ts';
import { withCases, withRuns } from './case-workload.ts';
import type { Report } from './sample.ts';
import { SIZES, workload } from './workload.ts';

/** Processor time that some work takes [ms], to which whatever else the machine does adds nothing. */
function timed(work: () => void): number {
  const time = processorTime();
  work();
  return time();
}

const report = (kind: string, times: readonly number[]) => {
  const line: Report = { kind, times, undoTimes: [] };
  process.stdout.write(`${JSON.stringify(line)}\n`);
};

/** Does an edit in rows spread over its sheet. @returns milliseconds of each call. */
function times(schedule: LoadSchedule, { sheet, key, kind, value }: CaseEdit, calls: number): number[] {
  const rows = schedule.rows(sheet);
  return Array.from({ length: calls }, (_, call) => {
    // Types that give a power have no draw: every fourth of them.
    const place = sheet === 'types' ? call * 4 : Math.floor(rows.length / 2) + call * 7919;
    const { id } = rows[place % rows.length]!;
    const changes = setCells(schedule.document, [{ sheet, id, key, value: value(call) }]);
    return timed(() => { schedule.act(kind, changes); });
  });
}

/** Figures that are held. */
const HELD = [
  ['supplies', 'demand'], ['supplies', 'worstCase'], ['runs', 'endVoltage'], ['runs', 'maxLength'],
] as const;

/** @throws Error where figures that followed edits are not those of a schedule built afresh. */
function check(schedule: LoadSchedule): void {
  const afresh = new LoadSchedule(schedule.content());
  for (const [sheet, key] of HELD) {
    afresh.rows(sheet).forEach(({ id }, at) => {
      const found = schedule.value(sheet, schedule.rows(sheet)[at]!.id, key);
      const expected = afresh.value(sheet, id, key);
      const isSame = typeof expected === 'number' && typeof found === 'number'
        ? Math.abs(expected - found) <= 1e-9 * Math.abs(expected) : expected === found;
      if (!isSame) throw new Error(`${sheet} ${at + 1}, ${key}: ${String(found)}, and afresh ${String(expected)}`);
    });
  }
  afresh.dispose();
}

const { rows, runs, cases, calls } = JSON.parse(process.argv[2]!) as CaseTask;
const sheets = withCases(withRuns(workload(SIZES.find((size) => size.rows === rows)!), runs), cases);
let schedule!: LoadSchedule;
report(OPENING, [timed(() => { schedule = new LoadSchedule({ details: {}, sheets }); })]);
for (const edit of [...CASE_EDITS, ...cases === 0 ? [] : [FACTOR_EDIT]]) {
  report(edit.kind, times(schedule, edit, calls));
}
check(schedule);

// As a trial does it, without a page.
let tried!: LoadSchedule;
const base = schedule.content();
report(VARIANT[0], [timed(() => {
  const session = { base: schedule.document.snapshot(), actions: [] };
  tried = new LoadSchedule(undefined, { session, words: schedule.words });
})]);
report(VARIANT[1], times(tried, TRIED_EDIT, calls));
report(VARIANT[2], Array.from({ length: 5 }, () => timed(() => { compareOutcomes(schedule, tried); })));
report(VARIANT[3], [timed(() => {
  const variant = makeVariant(base, tried.content(), { name: 'V', date: '2026-01-01' });
  schedule.load(withoutVariant(joinVariant(schedule.content(), variant).content, 'V'), 'taken over');
})]);
check(schedule);
