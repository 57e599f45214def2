import type { LoadSchedule } from '../../load-schedule.ts';
import { columnOf, grouped, SCHEMA, tagOf, titleWithUnit } from '../../schedule/index.ts';
import {
  cableSchedule, holdsNothing, insideWires, progressOf, stripLines, tickState, wiredTerminals, type CableLine,
  type TickName, type WiredTerminal,
} from '../../terminals/index.ts';
import { numberCell, stateCell, textCell, textColumns } from './cells.ts';
import { progressSentence } from './progress-sentence.ts';
import type { ReportCell, ReportSection } from './report.ts';
import { filledRows } from './sheet-section.ts';

/** The wiring list: every terminal by strip with both of its conductors; `undefined` where there are no terminals. */
export function wiringSection(schedule: LoadSchedule): ReportSection | undefined {
  const { words } = schedule;
  const terminals = shownTerminals(schedule);
  if (terminals.length === 0) return undefined;
  const title = (key: string) => titleWithUnit(columnOf('terminals', key), words);
  const rowOf = (each: WiredTerminal): ReportCell[] => {
    const standing = schedule.standing('terminals', each.row.id);
    return [
      textCell(lastPart(each.terminal, each.strip)), textCell(each.inside), textCell(each.potential),
      textCell(inRanges(each.bridgedWith.map((other) => lastPart(other, each.strip)))), textCell(each.outside),
      textCell(each.core), numberCell(figure(schedule, each, 'size')), textCell(each.to),
      standing === null ? textCell('') : stateCell(standing, words), tickCell(each, 'wired'), tickCell(each, 'checked'),
    ];
  };
  const tickCell = ({ row: { cells } }: WiredTerminal, name: TickName): ReportCell => {
    switch (tickState(cells, name)) {
      case 'done': return textCell('☑');
      case 'otherwise': return textCell(words.say('changed'));
      // On paper it is ticked by hand; a spare terminal has nothing to tick.
      case 'open': return textCell(holdsNothing(cells) ? '' : '☐');
    }
  };
  const progress = (those: readonly WiredTerminal[]) =>
    progressSentence(progressOf(those.map(({ row }) => row.cells)), words);
  const panels = [...grouped(terminals, ({ enclosure }) => enclosure)];
  return {
    name: 'wiring', title: words.say('Wiring list'),
    sentences: [words.say(
      'Each line is a terminal: on its left the conductor inside the panel, on its right the core of the cable. Terminals of one potential are bridged with those named; a part is named with its connection behind a colon.'
    ), ...panels.map(([enclosure, those]) =>
      words.say('{panel}: {progress}.', { panel: enclosure === '' ? words.say('In no panel') : enclosure, progress: progress(those) })),
    ...withoutTerminals(schedule)],
    tables: [...grouped(terminals, ({ strip }) => strip)].map(([strip, those]) => ({
      title: words.say('Strip {strip}', { strip: strip === '' ? '–' : strip }), sentence: progress(those), heads: 1,
      columns: [
        ...textColumns(title('terminal'), title('inside'), title('potential'), words.say('Bridged with'), title('outside'), title('core')),
        { title: title('size'), kind: 'number' as const }, ...textColumns(words.say('Goes to'), title('status'), title('wired'), title('checked')),
      ],
      rows: those.map((each) => ({ cells: rowOf(each) })),
    })),
  };
}

/** The cables that the list lacks, in a sentence. */
function withoutTerminals(schedule: LoadSchedule): string[] {
  const { words } = schedule;
  const cables = schedule.findings.filter(({ rule }) => rule.endsWith('-without-terminals')).map(({ tag }) => tag);
  return cables.length === 0 ? [] : [words.say(
    '{n, plural, one {One cable is} other {# cables are}} not, or not wholly, on terminals and missing here: {cables}. Lay the terminals out before wiring.',
    { n: cables.length, cables: cables.join(', ') },
  )];
}

/** Conductors inside that touch no terminal, and the connections of each part; `undefined` without terminals. */
export function insideSection(schedule: LoadSchedule): ReportSection | undefined {
  const { words } = schedule;
  const terminals = shownTerminals(schedule);
  if (terminals.length === 0) return undefined;
  const enclosures = new Set(terminals.map(({ enclosure }) => enclosure));
  const wires = insideWires(schedule.document, schedule.figures).filter(({ enclosure }) => enclosures.has(enclosure));
  const parts = terminals.filter(({ inside }) => inside !== '');
  return {
    name: 'inside', title: words.say('Conductors inside'),
    sentences: [words.say(
      'Conductors from part to part are looped: each link carries what all behind it draw. Sizes are not known here; each has to carry what the protection before it lets through.'
    ), ...connectionsSaid(schedule), ...notListed(schedule)],
    tables: [
      ...wires.length === 0 ? [] : [{
        title: words.say('From part to part'), heads: 2,
        columns: [
          ...textColumns(words.say('From connection'), words.say('To connection'), words.say('Potential'), words.say('Enclosure')),
          { title: words.say('Current (A)'), kind: 'number' as const },
        ],
        rows: wires.map(({ from, to, potential, enclosure, amps }) => ({
          cells: [
            textCell(from), textCell(to), textCell(potential), textCell(enclosure),
            numberCell(amps === null ? words.say('not known') : words.number(amps, 2)),
          ],
        })),
      }],
      {
        title: words.say('From part to terminal'), heads: 2,
        columns: textColumns(words.say('Connection'), words.say('Terminal'), words.say('Potential')),
        rows: [...parts].sort((one, other) => one.inside.localeCompare(other.inside, 'en', { numeric: true }))
          .map(({ inside, terminal, potential }) => ({ cells: [inside, terminal, potential].map(textCell) })),
      },
    ],
  };
}

/** How the connections of fuses and further units are named, where there are some. */
function connectionsSaid(schedule: LoadSchedule): string[] {
  const { words } = schedule;
  const supplies = filledRows(schedule, 'supplies').map((row) => ({
    rail: tagOf('supplies', row), fuse: schedule.value('supplies', row.id, 'fuse'), units: schedule.value('supplies', row.id, 'units'),
  })).filter(({ rail }) => rail !== '');
  const fused = supplies.find(({ fuse }) => typeof fuse === 'number');
  const several = supplies.find(({ units }) => typeof units === 'number' && units > 1);
  return [
    ...fused === undefined ? [] : [words.say('{in} and {out} are the fuse at the output of supply {rail}.', { in: `${fused.rail}:F/1`, out: `${fused.rail}:F/2`, rail: fused.rail })],
    ...several === undefined ? [] : [words.say('{plus} is the plus of the second unit of supply {rail}.', { plus: `${several.rail}:2/+`, rail: several.rail })],
  ];
}

/** What a panel has besides that no column of the schedule tells. */
function notListed(schedule: LoadSchedule): string[] {
  const { words } = schedule;
  const isRedundant = filledRows(schedule, 'supplies').some(({ id }) => schedule.value('supplies', id, 'redundant') === true);
  const hasElectronics = filledRows(schedule, 'modules').length + filledRows(schedule, 'branches').length > 0;
  return [
    ...isRedundant ? [words.say('Not listed: what decouples redundant units, between the plus of each and the fuse or the ways.')] : [],
    ...hasElectronics ? [words.say('Not listed: what modules and couplers are supplied with.')] : [],
    words.say('Not listed: what joins the minus of supplies, or leads it to earth.'),
  ];
}

/** The cable schedule: each cable with its ends, cores, length and largest current; `undefined` where there is none. */
export function cablesSection(schedule: LoadSchedule): ReportSection | undefined {
  const { words } = schedule;
  if (filledRows(schedule, 'terminals').length === 0) return undefined;
  const number = (value: number | null, decimals?: number) => numberCell(value === null ? '' : words.number(value, decimals));
  const landed = grouped(shownTerminals(schedule), ({ outside }) => outside);
  const cables = shownCables(schedule, landed);
  return {
    name: 'cables', title: words.say('Cable schedule'),
    sentences: [words.say('Cores used are those on a terminal. What is empty is not known; lengths and currents are those of the runs.')],
    tables: [{
      heads: 1,
      columns: [
        ...textColumns(words.say('Cable'), words.say('Belongs to'), words.say('Type of cable')),
        ...[words.say('Cores'), words.say('Cores used'), words.say('Spare cores')].map((title) => ({ title, kind: 'number' as const })),
        ...textColumns(words.say('Cores on terminals'), words.say('Goes to')),
        ...[words.say('Length (m)'), words.say('Current (A)')].map((title) => ({ title, kind: 'number' as const })),
        ...textColumns(words.say('Gland')),
      ],
      rows: cables.map((cable) => ({
        cells: [
          textCell(cable.tag), textCell(words.text(SCHEMA[cable.sheet].rowName)), textCell(cable.type),
          number(cable.cores), number(cable.used), number(cable.cores === null ? null : cable.cores - cable.used),
          textCell((landed.get(cable.tag) ?? []).map(({ core, terminal }) => `${core} → ${terminal}`).join(', ')), textCell(cable.to),
          number(cable.length, 1), number(cable.amps ?? null, 2), textCell(cable.gland),
        ],
      })),
    }],
  };
}

/** What is free for later: outputs of modules, nodes of branches, terminals of strips, current of feeds. */
export function spareSection(schedule: LoadSchedule): ReportSection | undefined {
  const { words } = schedule;
  const row = (kind: string, tag: string, text: string) => ({ cells: [textCell(kind), textCell(tag), textCell(text)] });
  const figureOf = (sheet: 'modules' | 'branches' | 'feeds', key: string, say: (value: number, sign: string) => string) =>
    filledRows(schedule, sheet).flatMap(({ id }) => {
      const value = schedule.value(sheet, id, key);
      const tag = schedule.value(sheet, id, SCHEMA[sheet].tag);
      return [row(words.text(SCHEMA[sheet].rowName), String(tag ?? '–'),
        typeof value === 'number' ? say(Math.max(0, value), schedule.partialSign(sheet, id, key)) : words.say('not known'))];
    });
  const rows = [
    ...figureOf('modules', 'free', (n) => words.say('{n, plural, one {# output} other {# outputs}}', { n })),
    ...figureOf('branches', 'free', (n) => words.say('{n, plural, one {# node} other {# nodes}}', { n })),
    ...figureOf('feeds', 'spare', (value, sign) => `${sign}${words.number(Math.floor(value * 100) / 100, 2)} A`),
    ...shownStrips(schedule).map(({ strip, terminals, spare }) => row(words.say('strip'), strip === '' ? '–' : strip,
      words.say('{n, plural, one {# terminal} other {# terminals}} of {all}', { n: spare, all: terminals }))),
  ];
  return rows.length === 0 ? undefined : {
    name: 'spare', title: words.say('Spare ways'), sentences: [],
    tables: [{ columns: textColumns(words.say('What'), words.say('Tag'), words.say('Free')), rows }],
  };
}

/** Terminals of the panels that are in sight. */
export function shownTerminals(schedule: LoadSchedule): WiredTerminal[] {
  const shown = new Set(filledRows(schedule, 'terminals').map(({ id }) => id));
  return wiredTerminals(schedule.document, schedule.figures).filter(({ row: { id } }) => shown.has(id));
}

/** Cables of the panels that are in sight, and those that end on their terminals. */
function shownCables(schedule: LoadSchedule, landed: ReadonlyMap<string, unknown>): CableLine[] {
  const rows = new Set((['runs', 'outputs', 'branches', 'feeds'] as const).flatMap((sheet) => filledRows(schedule, sheet)));
  return cableSchedule(schedule.document, schedule.figures).filter(({ row, tag }) => landed.has(tag) || rows.has(row));
}

function shownStrips(schedule: LoadSchedule) {
  const shown = new Set(shownTerminals(schedule).map(({ strip }) => strip));
  return stripLines(schedule.document).filter(({ strip }) => shown.has(strip));
}

/** Numbers in a list, three and more that follow each other as one range: `3–7, 12`. */
export function inRanges(numbers: readonly string[]): string {
  const ranges: string[][] = [];
  for (const number of numbers) {
    const last = ranges.at(-1);
    if (last !== undefined && Number(number) === Number(last.at(-1)) + 1) last.push(number);
    else ranges.push([number]);
  }
  return ranges.flatMap((each) => each.length < 3 ? each : [`${each[0]!}–${each.at(-1)!}`]).join(', ');
}

/** The number alone where the designation begins with its strip, which stands above. */
export const lastPart = (terminal: string, strip: string): string =>
  terminal.startsWith(`${strip}:`) ? terminal.slice(strip.length + 1) : terminal;

function figure(schedule: LoadSchedule, { row: { id } }: WiredTerminal, key: string): string {
  const value = schedule.value('terminals', id, key);
  return typeof value === 'number' ? schedule.words.number(value) : '';
}
