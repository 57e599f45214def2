import { billCsv, billXlsx, compareBills, makeBill } from '../report/index.ts';
import { calledAs } from './called-as.ts';
import { writeBytes, writeText } from './files.ts';
import { spokenWords } from './lang-option.ts';
import { openSchedule } from './open-schedule.ts';
import { parseWords } from './parse-words.ts';
import { refuseUnknownPanel } from './known-panel.ts';
import { readPercent } from './read-percent.ts';
import { Refusal, refusing } from './refusal.ts';
import type { Streams } from './streams.ts';

export const BILL_HELP = `Counts what a schedule lists, ready to be priced and ordered, by panel.

  ${calledAs('bill')} INPUT… [--format json|csv|xlsx] [--panel NAME] [--allowance PERCENT] [--since OLD] [--output FILE]

INPUT          a schedule (.schedule.json, or a load table in HTML or XLSX), or sheets in CSV, each known
               by its headings; a sheet in CSV takes the place of that sheet of the schedule
--format       json (default): items, each with panel, kind, item, quantity, unit and why, part number,
               price and amount where they are entered; the same of all panels; sums
               csv: the items by panel; xlsx: by panel and in all; needs --output
--panel NAME   only what belongs to this enclosure
--allowance PERCENT  cables are longer than on drawings by this; 0 without it
--since OLD    add what is more and less than in an older schedule
--lang TAG     language of items and reasons, and of files that are read beside English: en (default), de, fr
--output FILE  write to a file instead of the terminal
--help         this text

Devices count by type, supplies by their units (spare ones too), ways, relay modules and enclosures as they are
listed, cables in metres of one pair of a conductor: length × pairs of each run, rounded up to a decimetre. A row
belongs to the enclosure that it is mounted in, or is fed from. What is not known is not counted, and named.
Terminals, mains ways, wire within panels and fixings are not in it.

Exit code: 0; 2 for bad input, which is named by file, line and column.
`;

const OPTIONS = {
  format: { type: 'string', default: 'json' }, panel: { type: 'string' }, allowance: { type: 'string', default: '0' },
  since: { type: 'string' }, output: { type: 'string' }, lang: { type: 'string' }, help: { type: 'boolean' },
} as const;

const HINT = `${calledAs('bill')} --help says what there is.`;

/**
 * The command `bill`: reads a schedule and writes its bill of quantities.
 * @returns the exit code: 0; 2 for bad input, of which nothing is written to `out`
 */
export async function runBill(words: readonly string[], { out, warn }: Streams): Promise<0 | 1 | 2> {
  return refusing(warn, async () => {
    const { values, positionals } = parseWords(words, OPTIONS, HINT);
    const { format, panel, since, output, lang } = values;
    if (values.help === true) {
      out(BILL_HELP);
      return 0;
    }
    if (positionals.length === 0) throw new Refusal([`No input is named. Name a schedule or sheets in CSV; ${HINT}`]);
    if (format !== 'json' && format !== 'csv' && format !== 'xlsx') {
      throw new Refusal([`--format ${format} is not known. Give one of json, csv, xlsx.`]);
    }
    if (format === 'xlsx' && output === undefined) {
      throw new Refusal(['--format xlsx is no text for the terminal. Name a file with --output, as in --output bill.xlsx.']);
    }
    const allowance = readPercent('allowance', values.allowance);
    const spoken = await spokenWords(lang);
    const schedule = await openSchedule(positionals, warn, spoken);
    refuseUnknownPanel(schedule, panel);
    const bill = makeBill(schedule, { allowance, panel });
    const older = since === undefined ? undefined : await openSchedule([since], warn, spoken);
    const changes = older && compareBills(makeBill(older, { allowance, panel }), bill);
    for (const { item, unknownRows: rows } of bill.inAll) {
      if (rows > 0) {
        warn(spoken.say(
          '{item}: {rows, plural, one {# row is} other {# rows are}} not counted, as the quantity is not known.',
          { item, rows }
        ));
      }
    }
    if (format === 'xlsx') await writeBytes(await billXlsx(bill, changes, spoken), output!);
    else if (format === 'csv') await writeText(billCsv(bill, changes, spoken), output, out);
    else await writeText(`${JSON.stringify({ ...bill, ...(changes === undefined ? {} : { changes }) }, null, 2)}\n`, output, out);
    return 0;
  });
}
