import { isInSight } from '../engine/index.ts';
import { writeCsv, writeSchedule } from '../exchange/index.ts';
import type { LoadSchedule } from '../load-schedule.ts';
import {
  buildReport, handedOver, loadTableCsv, loadTableHtml, loadTableXlsx, matchesDigest, panelView, scheduleDigest,
  tableJson, usualPaper, withoutVariants, type HtmlOptions, type Report,
} from '../report/index.ts';
import { SHEET_NAMES, type SheetName } from '../schedule/index.ts';
import { command } from './command.ts';
import { explainFigures } from './explain-option.ts';
import { readText, writeBytes, writeText } from './files.ts';
import { refuseUnknownPanel } from './known-panel.ts';
import { openSchedule } from './open-schedule.ts';
import { HELP, OPTIONS, readOptions, type TableOptions } from './options.ts';
import { printPdf } from './print-pdf.ts';
import { Refusal } from './refusal.ts';
import { sectionPages } from './section-pages.ts';
import type { Streams } from './streams.ts';
import type { Words } from '../words/index.ts';

/**
 * The command `table`: reads a schedule, works it out, writes it. It ends with 1 when `--check` is given and a finding
 * is `over`, when the digits of `--check-digest` are those of another schedule, or
 * when `--verify` finds that a document does not agree with itself.
 */
export const runTable = command(HELP, OPTIONS, async (given, streams) => {
  const { out, warn } = streams;
  const options = readOptions(given);
  if (options.verify) return verify(options.inputs, given.words, out);
  const schedule = await openSchedule(options.inputs, warn, given.words);
  if (options.checkDigest !== undefined) return checkDigest(schedule, options.checkDigest, out);
  refuseUnknownPanel(schedule, options.panel);
  await write(schedule, options, streams);
  return options.check ? check(panelView(schedule, options.panel), options.passAccepted, warn) : 0;
});

async function write(schedule: LoadSchedule, options: TableOptions, { out, warn }: Streams): Promise<void> {
  const { format, sheet, whole, output, explain } = options;
  switch (format) {
    case 'json': {
      const explained = explain.length === 0 ? undefined : explainFigures(schedule, explain);
      const table = tableJson(panelView(schedule, options.panel), sheet, explained);
      return writeText(`${JSON.stringify(table, null, 2)}\n`, output, out);
    }
    case 'csv': return writeText(
      whole ? loadTableCsv(await reportOf(schedule, options, warn))
        : sheetCsv(schedule, sheet ?? onlySheet(schedule), options.panel),
      output, out
    );
    case 'html': return writeText(await pageOf(schedule, options, warn), output, out);
    case 'xlsx': return writeBytes(await loadTableXlsx(schedule, await reportOf(schedule, options, warn)), output!);
    case 'pdf': {
      const paper = options.paper ?? usualPaper(handed(schedule, options).form);
      return writeBytes(await documentOf(schedule, { ...options, paper }, warn), output!);
    }
  }
}

async function pageOf(schedule: LoadSchedule, options: TableOptions, warn: Streams['warn']): Promise<string> {
  return markupOf(schedule, await reportOf(schedule, options, warn), options);
}

const markupOf = (schedule: LoadSchedule, report: Report, { paper }: TableOptions, pages?: HtmlOptions['pages']) =>
  loadTableHtml(report, { paper, schedule: writeSchedule(withoutVariants(schedule.content())), pages });

/** A document; a long one is printed twice, as only the printer knows the pages that its contents name. */
async function documentOf(
  schedule: LoadSchedule, options: TableOptions, warn: Streams['warn'],
): Promise<Uint8Array> {
  const report = await reportOf(schedule, options, warn);
  if (report.scope.form === 'short') return printPdf(markupOf(schedule, report, options));
  const unknown = report.sections.map(() => undefined);
  const pages = sectionPages(await printPdf(markupOf(schedule, report, options, unknown)), unknown.length);
  return printPdf(markupOf(schedule, report, options, pages));
}

async function reportOf(
  schedule: LoadSchedule, options: TableOptions, warn: Streams['warn']
): Promise<Report> {
  const { sheet, since, panel, paper } = options;
  const older = since === undefined ? undefined : await openSchedule([since], warn, schedule.words);
  return buildReport(schedule, {
    generated: new Date().toISOString().slice(0, 10), sheet, panel, since: older, paper, ...handed(schedule, options),
  });
}

/** What of the load table is asked for; where nothing is, what was chosen on the page. A workbook is whole. */
function handed({ handover }: LoadSchedule, { form, without, allPictures, format }: TableOptions) {
  if (format === 'xlsx') return {};
  const isSaid = form !== undefined || without !== undefined || allPictures;
  return isSaid ? { form, without, allPictures } : handedOver(handover);
}

function sheetCsv(schedule: LoadSchedule, sheet: SheetName, panel: string | undefined): string {
  return writeCsv(schedule, sheet, panel === undefined ? undefined : (id) => isInSight(schedule, sheet, id, panel));
}

function onlySheet(schedule: LoadSchedule): SheetName {
  const [first, ...others] = SHEET_NAMES.filter((sheet) => schedule.rows(sheet).length > 0);
  if (first !== undefined && others.length === 0) return first;
  const found = first === undefined ? 'no sheet with rows' : `the sheets ${[first, ...others].join(', ')}`;
  throw new Refusal([
    `A CSV file holds one sheet; the input has ${found}. Name one with --sheet, as in --sheet devices, or take the whole load table with --whole.`,
  ]);
}

function check(schedule: LoadSchedule, passAccepted: boolean, warn: Streams['warn']): 0 | 1 {
  const over = schedule.findings.filter(({
    severity, accepted,
  }) => severity === 'over' && !(passAccepted && accepted !== undefined));
  for (const { sheet, row, tag, message, accepted } of over) {
    const acceptance = accepted === undefined
      ? '' : ` (accepted by ${accepted.name}, ${schedule.words.date(accepted.date)}: ${accepted.reason})`;
    warn(`over: ${sheet}, row ${row} (${tag}): ${message}${acceptance}`);
  }
  return over.length > 0 ? 1 : 0;
}

function checkDigest(schedule: LoadSchedule, digits: string, out: Streams['out']): 0 | 1 {
  const content = schedule.content();
  const isMatch = matchesDigest(content, digits);
  if (isMatch === undefined) {
    throw new Refusal(
      [
        `--check-digest ${digits}: is no part of a digest. Give the first 16 or more hexadecimal digits, as printed on each page.`,
      ]
    );
  }
  out(isMatch ? 'The digits are those of this schedule.\n'
    : `The digits are those of another schedule, or of another state of it. This one has ${scheduleDigest(content)}.\n`);
  return isMatch ? 0 : 1;
}

async function verify(names: readonly string[], words: Words, out: Streams['out']): Promise<0 | 1> {
  const files = await Promise.all(names.map((name) => readText(name, words)));
  const plain = files.filter(({ isLoadTable }) => !isLoadTable);
  if (plain.length > 0) {
    throw new Refusal(plain.map(({ name }) =>
      `${name}: carries no schedule, or shows nothing beside it, so that there is nothing to compare. Give --verify a load table in html or xlsx; --check-digest holds the digits of a paper against a schedule.`));
  }
  const found = files.flatMap(({ name, edits }) => edits.map((each) => `${name}: ${each}\n`));
  out(found.length > 0 ? found.join('') : files.map(({ name }) =>
    `${name}: what it shows, its digest and the schedule that it carries agree.\n`).join(''));
  return found.length > 0 ? 1 : 0;
}
