import { unzipSync } from 'fflate';
import Papa from 'papaparse';
import { parse, type DefaultTreeAdapterTypes } from 'parse5';
import { describe, expect, test } from 'vitest';
import { readSchedule, writeSchedule } from '../../src/exchange/index.ts';
import { readLoadTable } from '../../src/report/xlsx/read-load-table.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import {
  buildReport, changesText, compareSchedules, loadTableCsv, loadTableHtml, loadTableXlsx, type Report,
} from '../../src/report/index.ts';
import type { ReportCell } from '../../src/report/model/index.ts';
import { ENGLISH, loadWords, type Words } from '../../src/words/index.ts';
import { demoContent } from '../report/demo.ts';
import { ENGLISH_LEFT } from '../support/english-left.ts';
import { outside, PSEUDO } from '../support/pseudo-words.ts';

const OPTIONS = { generated: '2026-11-25' };

/**
 * A demo with all that a load table can say: a finding accepted and grown worse, a row on no rail, a run without
 * working voltage.
 */
function present(words: Words): LoadSchedule {
  const schedule = new LoadSchedule(demoContent(), { words });
  const over = schedule.findings.find(({ rule }) => rule === 'supply-over-usable')!;
  schedule.accept(over, { reason: 'on order', name: 'N. N.', date: '2026-11-20' });
  const busy = schedule.rows('devices').find(({ cells }) => cells.rail === over.tag)!;
  schedule.act('More', [
    { op: 'set', sheet: 'devices', id: busy.id, key: 'qty', value: 30 },
    { op: 'set', sheet: 'devices', id: schedule.rows('devices')[0]!.id, key: 'rail', value: null },
    { op: 'set', sheet: 'runs', id: schedule.rows('runs')[0]!.id, key: 'conductor', value: null },
    { op: 'set', sheet: 'runs', id: schedule.rows('runs')[1]!.id, key: 'run', value: null },
  ]);
  return schedule;
}

/** The demo with other details, and rows that have gone, come and moved since. */
function older(words: Words): LoadSchedule {
  const content = demoContent();
  const devices = [...content.sheets.devices!];
  const [first] = devices.splice(3, 1);
  devices.push(first!);
  devices.splice(10, 1);
  return new LoadSchedule({
    ...content, details: { ...content.details, revision: 'B', date: '2026-10-02' }, sheets: {
      ...content.sheets, devices: [...devices, { ref: 'X-1', qty: 2 }],
    },
  }, { words });
}

const reports = new Map<Words, Report>();

/** The report in a language; made once, since nothing changes it. */
function reportIn(words: Words): Report {
  const report = reports.get(words) ?? buildReport(present(words), { ...OPTIONS, since: older(words) });
  reports.set(words, report);
  return report;
}

/** Texts that a person put in, which no language translates, the longest first. */
const { details, revisions = [], sheets, accepted = [] } = demoContent();
const entered: readonly unknown[] = [details, ...revisions, ...accepted, ...Object.values(sheets).flat()]
  .flatMap((part: object): unknown[] => Object.values(part));
const DATA = [
  ...new Set(entered.filter((value) => typeof value === 'string' && value.length > 1) as string[]), 'on order', 'N. N.',
  // As the picture of mounting rails shortens the tag of a strip.
  'X-1', '+KP…-X4',
]
  .sort((one, other) => other.length - one.length);
const ANY_DATA = new RegExp(DATA.map((text) => text.replaceAll(/[\\^$.*+?()[\]{}|]/g, '\\$&')).join('|'), 'gu');
const withoutData = (text: string): string => text.replaceAll(ANY_DATA, ' ');

/** Names of this software and of files, and units, which are the same in every language. */
const SAME = /elv-load-schedule 0\.1\.0|SHA-256|[0-9a-f]{64}|(?<!\p{L})(?:m?A|V|W|kWh|m|mm²?|m²|K|°C|Ω\/km|Ah|IEC(?: TR)?|TIA-485-A|BS|EN|NEC|A\d)(?!\p{L})/gu;

/** Every text that a page shows or reads out, without its styles and the schedule that it carries. */
function textsOf(page: string): string[] {
  const texts: string[] = [];
  const visit = (node: DefaultTreeAdapterTypes.Node): void => {
    if (node.nodeName === 'style' || node.nodeName === 'template') return;
    // A text of a drawing goes on in the next line.
    if ('attrs' in node && node.attrs.some(({ name, value }) => name === 'class' && /^node\b/.test(value))) {
      const inner: string[] = [];
      const gather = (part: DefaultTreeAdapterTypes.Node): void => {
        if (part.nodeName === '#text') inner.push((part as DefaultTreeAdapterTypes.TextNode).value);
        if ('childNodes' in part) part.childNodes.forEach(gather);
      };
      node.childNodes.forEach(gather);
      texts.push(inner.join(' '));
      return;
    }
    if (node.nodeName === '#text') texts.push((node as DefaultTreeAdapterTypes.TextNode).value);
    if ('attrs' in node) {
      texts.push(...node.attrs.filter(({ name }) => ['aria-label', 'title'].includes(name)).map(({ value }) => value));
    }
    if ('childNodes' in node) node.childNodes.forEach(visit);
  };
  visit(parse(page));
  const feet = [...page.matchAll(/content: (.*?); width/g)]
    .map(([, content]) => content!.replaceAll(/counter\(\w+\)|\\a |\\([0-9a-f]+) /g,
    (_all, code?: string) => code === undefined ? ' ' : String.fromCodePoint(parseInt(code, 16))));
  return [...texts, ...feet].filter((text) => text.trim() !== '');
}

/**
 * Every text that stands in a worksheet, its name, and the words in its formulas; not the schedule that the workbook
 * carries.
 */
async function workbookTexts(schedule: LoadSchedule): Promise<string[]> {
  const files = unzipSync(await loadTableXlsx(schedule, buildReport(schedule, OPTIONS)));
  const text = (path: string) => new TextDecoder().decode(files[path]);
  const names = [...text('xl/workbook.xml').matchAll(/<sheet name="([^"]*)"/g)].map(([, name]) => name!);
  expect(new Set(names).size).toBe(names.length);
  const sheets = names.slice(0, -1).map((_name, index) => text(`xl/worksheets/sheet${index + 1}.xml`));
  const cells = sheets.flatMap((sheet) => [
    ...sheet.matchAll(/<(?:t|v)[^>]*>([^<]*[^<\d.-][^<]*)</g)
  ].map(([, cell]) => cell!));
  const quoted = sheets.flatMap((sheet) => [...sheet.matchAll(/<f>([^<]*)</g)].flatMap(([, formula]) =>
    [...formula!.matchAll(/&quot;(.*?)&quot;/g)].map(([, words]) => words!)));
  return [...names.slice(0, -1), ...cells, ...new Set(quoted)]
    .map((each) => each.replaceAll('&amp;', '&').replaceAll('&gt;', '>').replaceAll('&lt;', '<'));
}

/** Whether a text has something besides what a person put in and what is the same in every language. */
const has = (pattern: RegExp, text: string): boolean => pattern.test(text)
  && pattern.test(withoutData(text).replace(SAME, ' '));

describe('in a language that nobody speaks', () => {
  /** What has words outside of the brackets, which lines of one sentence share. */
  const left = (texts: readonly string[]) => {
    let open = 0;
    return texts.filter((text) => {
      const { left: rest, depth } = outside(text, open);
      open = depth;
      return has(/\p{L}{2,}/u, rest);
    });
  };

  test('a page says everything through the words', () => {
    const texts = textsOf(loadTableHtml(reportIn(PSEUDO), { schedule: writeSchedule(demoContent()) }));
    expect(texts.length).toBeGreaterThan(3000);
    expect(left(texts)).toEqual([]);
  });

  test.each(['short', 'site'] as const)('so does the form %s, with what is left out', (form) => {
    const report = buildReport(present(PSEUDO), { ...OPTIONS, form, without: ['ways'] });
    expect(left(textsOf(loadTableHtml(report)))).toEqual([]);
  });

  test('so does the load table as CSV', () => {
    expect(left(Papa.parse<string[]>(loadTableCsv(reportIn(PSEUDO))).data.flat())).toEqual([]);
  });

  test('so does a workbook', async () => {
    // Names of worksheets are cut, and a cut bracket would hide what follows it.
    const short: Words = { ...PSEUDO, text: (text) => PSEUDO.text(text.slice(0, 28)) };
    expect(left(await workbookTexts(present(short)))).toEqual([]);
  });

  test('so do changes in the terminal', () => {
    expect(left(changesText(compareSchedules(older(PSEUDO), present(PSEUDO)), PSEUDO).split('\n'))).toEqual([]);
  });
});

const tablesOf = (sections: Report['sections']) => sections.flatMap(({ tables }) => tables);

describe.each(['de', 'fr'])('in %s', (language) => {
  test('nothing of a page is left in English, and nothing has a hole', async () => {
    const words = await loadWords(language);
    const page = loadTableHtml(reportIn(words));
    expect(page).toContain(`<html lang="${language}">`);
    const texts = textsOf(page);
    expect(texts.filter((text) => has(ENGLISH_LEFT, text))).toEqual([]);
    expect(texts.filter((text) => /undefined|NaN|\[object|\{|\}/.test(text))).toEqual([]);
  });

  test('figures have a decimal comma, and are those of the English table', async () => {
    const cellsOf = ({ sections }: Report) =>
      tablesOf(sections).flatMap(({ rows }) => rows.flatMap(({ cells }) => cells));
    const [spoken, english] = [cellsOf(reportIn(await loadWords(language))), cellsOf(reportIn(ENGLISH))];
    const numbers = spoken.filter(({ kind }) => kind === 'number').map(({ text }) => text);
    expect(numbers.filter((text) => has(/\d\.\d/, text))).toEqual([]);
    expect(numbers.filter((text) => /\d,\d/.test(text)).length).toBeGreaterThan(500);
    const isFigure = ({ kind, text }: ReportCell) => kind === 'number' && /^[≥≤−]?\d/.test(text);
    expect(spoken.map((cell) => isFigure(cell) ? cell.text.replace(',', '.') : ''))
      .toEqual(english.map((cell) => isFigure(cell) ? cell.text : ''));
    expect(spoken.map(({ state }) => state)).toEqual(english.map(({ state }) => state));
  });

  test('sentences, explanations and pictures have a decimal comma as well', async () => {
    const { sections } = reportIn(await loadWords(language));
    const textsIn = (...names: string[]) =>
      tablesOf(sections.filter(({ name }) => names.includes(name)))
        .flatMap(({ rows }) => rows.map(({ cells }) => cells));
    const explained = textsIn('explanations').flatMap((cells) => [cells[3]!.text, cells[4]!.text]);
    const found = textsIn('findings', 'accepted', 'notes')
      .flatMap((cells) => cells.filter(({ kind }) => kind === 'text').map(({ text }) => text));
    const drawn = sections.flatMap(({ pictures = [] }) => pictures)
      .flatMap((svg) => [...svg.matchAll(/>([^<]+)</g)].map(([, text]) => text!));
    const said = [...explained, ...found, ...drawn, ...tablesOf(sections).map(({ sentence = '' }) => sentence)];
    expect(said.length).toBeGreaterThan(1000);
    // Dates stand with points.
    expect(said.filter((text) => has(/\d\.\d/, text.replaceAll(/\d\d\.\d\d\.\d{4}/g, '')))).toEqual([]);
  });

  test('nothing of a workbook is left in English, and it is read back', async () => {
    const schedule = present(await loadWords(language));
    const texts = await workbookTexts(schedule);
    expect(texts.filter((text) => has(ENGLISH_LEFT, text))).toEqual([]);
    const embedded = await readLoadTable(await loadTableXlsx(schedule, buildReport(schedule, OPTIONS)));
    const read = embedded.ok ? readSchedule(embedded.text) : embedded;
    expect(read.ok && writeSchedule(read.content)).toBe(writeSchedule(schedule.content()));
  });

  test('a page is read back', async () => {
    const schedule = present(await loadWords(language));
    const read = readSchedule(
      loadTableHtml(buildReport(schedule, OPTIONS), { schedule: writeSchedule(schedule.content()) })
    );
    expect(read.ok && writeSchedule(read.content)).toBe(writeSchedule(schedule.content()));
  });
});
