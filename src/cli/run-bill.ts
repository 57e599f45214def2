import { ALLOWANCE, billCsv, billXlsx, compareBills, makeBill } from '../report/index.ts';
import { command, oneOf, refuseNoFile, refuseNone } from './command.ts';
import { writeBytes, writeText } from './files.ts';
import { INPUT, type Help } from './help-text.ts';
import { refuseUnknownPanel } from './known-panel.ts';
import { openSchedule } from './open-schedule.ts';
import { readPercent } from './read-numbers.ts';

const HELP: Help = {
  name: 'bill', does: 'Counts what a schedule lists, ready to be priced and ordered, by panel.',
  forms: ['INPUT… [--format json|csv|xlsx] [--panel NAME] [--allowance PERCENT] [--since OLD] [--output FILE]'],
  words: {
    INPUT,
    '--format': 'json (default): items, each with its key (the same in every bill), panel, kind, item, quantity, unit and why, part number, price and '
      + 'amount where they are entered; the same of all panels; sums. csv: the items by panel. xlsx: by panel and in '
      + 'all; needs --output',
    '--panel NAME': 'only what belongs to this enclosure',
    '--allowance PERCENT': `cables are longer than on drawings by this; ${ALLOWANCE * 100} unless said`,
    '--since OLD': 'add what is more and less than in an older schedule, by panel and in all, with amounts',
  },
  said: 'items and reasons',
  about: [
    'Devices count by type, in metres where the type is counted by the metre; supplies by their units (spare ones too), '
      + 'ways, relay modules and enclosures as they are listed, cables in metres of one pair of a conductor: length × '
      + 'pairs of each run, rounded up to a decimetre. A row belongs to the enclosure that it is mounted in, or is fed '
      + 'from. What is not known is not counted, and named. Terminals, mains ways, wire within panels and fixings are '
      + 'not in it.',
  ],
};

const OPTIONS = {
  format: { type: 'string', default: 'json' }, panel: { type: 'string' }, allowance: { type: 'string', default: String(ALLOWANCE * 100) },
  since: { type: 'string' },
} as const;

/** The command `bill`: reads a schedule and writes its bill of quantities. */
export const runBill = command(HELP, OPTIONS, async ({ values, positionals, words }, { out, warn }) => {
  refuseNone(positionals, HELP.name);
  const { panel, since, output } = values;
  const format = oneOf('format', values.format, ['json', 'csv', 'xlsx']);
  if (format === 'xlsx') refuseNoFile(format, output, 'bill');
  const allowance = readPercent('allowance', values.allowance);
  const schedule = await openSchedule(positionals, warn, words);
  refuseUnknownPanel(schedule, panel);
  const bill = makeBill(schedule, { allowance, panel });
  const older = since === undefined ? undefined
    : makeBill(await openSchedule([since], warn, words), { allowance, panel });
  for (const { item, unknownRows: rows } of bill.inAll) {
    if (rows > 0) {
      warn(words.say(
        '{item}: {rows, plural, one {# row is} other {# rows are}} not counted, as the quantity is not known.',
        { item, rows }
      ));
    }
  }
  if (format === 'xlsx') await writeBytes(await billXlsx(bill, older, words), output!);
  else if (format === 'csv') await writeText(billCsv(bill, older, words), output, out);
  else {
    const changes = older === undefined ? {}
      : { changes: compareBills(older, bill), changesInAll: compareBills(older, bill, 'inAll') };
    await writeText(`${JSON.stringify({ ...bill, ...changes }, null, 2)}\n`, output, out);
  }
  return 0;
});
