import { writeCsv } from '../exchange/index.ts';
import { LoadSchedule } from '../load-schedule.ts';
import { loadTableHtml, tableJson } from '../report/index.ts';
import { columnOf, SHEET_NAMES, titleWithUnit, type SheetName } from '../schedule/index.ts';
import { writeText } from './files.ts';
import { HELP, readOptions, type TableOptions } from './options.ts';
import { readInputs } from './read-inputs.ts';
import { Refusal, refusing } from './refusal.ts';
import type { Streams } from './streams.ts';

/**
 * The command `table`: reads a schedule, works it out, writes it.
 * @returns the exit code: 0; 1 when `--check` is given and a finding is `over`; 2 for bad input, of which nothing is
 *   written to `out`.
 */
export async function runTable(words: readonly string[], { out, warn }: Streams): Promise<0 | 1 | 2> {
  return refusing(warn, async () => {
    const options = readOptions(words);
    if (options === 'help') {
      out(HELP);
      return 0;
    }
    const { content, notes, nameOf } = await readInputs(options.inputs);
    for (const note of notes) warn(note);
    const schedule = new LoadSchedule(content);
    refuseFormulas(schedule, nameOf);
    await writeText(written(schedule, options), options.output, out);
    return options.check ? check(schedule, warn) : 0;
  });
}

/** A formula may refer to a sheet of another file, so that only the whole schedule shows whether its rows are there. */
function refuseFormulas({ formulaProblems }: LoadSchedule, nameOf: (sheet: SheetName) => string): void {
  if (formulaProblems.length === 0) return;
  throw new Refusal(formulaProblems.map(({ sheet, row, key, problem }) =>
    `${nameOf(sheet)}: ${sheet}, row ${row}, ${titleWithUnit(columnOf(sheet, key))}: ${problem}`));
}

function written(schedule: LoadSchedule, { format, sheet }: TableOptions): string {
  switch (format) {
    case 'json': return `${JSON.stringify(tableJson(schedule, sheet), null, 2)}\n`;
    case 'csv': return writeCsv(schedule, sheet ?? onlySheet(schedule));
    case 'html': return loadTableHtml(schedule, { generated: new Date().toISOString().slice(0, 10), sheet });
  }
}

function onlySheet(schedule: LoadSchedule): SheetName {
  const [first, ...others] = SHEET_NAMES.filter((sheet) => schedule.rows(sheet).length > 0);
  if (first !== undefined && others.length === 0) return first;
  const found = first === undefined ? 'no sheet with rows' : `the sheets ${[first, ...others].join(', ')}`;
  throw new Refusal([`A CSV file holds one sheet; the input has ${found}. Name one with --sheet, as in --sheet devices.`]);
}

function check(schedule: LoadSchedule, warn: Streams['warn']): 0 | 1 {
  const over = schedule.findings.filter(({ severity }) => severity === 'over');
  for (const { sheet, row, tag, message } of over) warn(`over: ${sheet}, row ${row} (${tag}): ${message}`);
  return over.length > 0 ? 1 : 0;
}
