import { parse } from 'parse5';
import { describe, expect, test } from 'vitest';
import { guardText, readSchedule, writeSchedule } from '../../src/exchange/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { buildReport, loadTableCsv, loadTableHtml, PAPERS } from '../../src/report/index.ts';
import Papa from 'papaparse';
import { demoContent } from './demo.ts';

const page = (content = demoContent()) => {
  const schedule = new LoadSchedule(content);
  return loadTableHtml(
    buildReport(schedule, { generated: '2026-11-25' }), { schedule: writeSchedule(schedule.content()) }
  );
};

const NASTY = '</template></style><script>alert(1)</script> & “"\' {\u0007} \\ \n é 😀';

describe('the load table in HTML', () => {
  test('is well-formed, without scripts, handlers and requests', () => {
    const html = page();
    const errors: string[] = [];
    parse(html, { onParseError: ({ code }) => { errors.push(code); } });
    expect(errors).toEqual([]);
    expect(html.replaceAll('xmlns="http://www.w3.org/2000/svg"', '')).not.toMatch(
      /<script|<link|<img|<iframe|\son\w+=|url\(|@import|https?:/i
    );
    expect(html).toContain("default-src 'none'");
  });

  test('escapes every text, in the page, in its styles and in the schedule that it carries', () => {
    const html = page({
      details: { project: NASTY, panel: NASTY, revision: NASTY }, sheets: { devices: [{ ref: NASTY, note: NASTY }] },
    });
    expect(html).not.toContain('<script>');
    expect(html.match(/<\/style>/g)).toHaveLength(1);
    expect(html.match(/<\/template>/g)).toHaveLength(1);
  });

  test.each([
    ['the demo', demoContent()],
    [
      'texts that could break out',
      {
        details: { remarks: NASTY.replace('\u0007', '') },
        sheets: { devices: [{ ref: 'D&amp;1', note: NASTY.replace('\u0007', '') }] },
      },
    ],
    [
      'keys of later versions',
      { details: {}, sheets: { devices: [{ ref: 'D', later: 'kept' }] }, unknown: { file: { later: { a: [1] } } } },
    ],
  ])('%s is read back without loss', (_name, content) => {
    const schedule = new LoadSchedule(content);
    const read = readSchedule(page(content));
    if (!read.ok) throw new Error(read.problems[0]!.message);
    expect(writeSchedule(read.content)).toBe(writeSchedule(schedule.content()));
  });

  test('a page that holds no schedule is refused with what to do', () => {
    expect(readSchedule('<!doctype html><p>Nothing'))
      .toMatchObject({ ok: false, problems: [{ code: 'not-a-schedule' }] });
  });

  test('asks for the paper that it is laid out for', () => {
    const report = buildReport(new LoadSchedule(), { generated: '' });
    for (const paper of PAPERS) expect(loadTableHtml(report, { paper })).toContain(`size: ${paper.replace('-', ' ')};`);
    expect(loadTableHtml(report)).not.toMatch(/[ {;]size:/);
  });
});

test('the load table in CSV holds each table of the report, readable by a parser of RFC 4180', () => {
  const report = buildReport(new LoadSchedule(demoContent()), { generated: '2026-11-25' });
  const { data, errors } = Papa.parse<string[]>(loadTableCsv(report), { newline: '\r\n' });
  expect(errors).toEqual([]);
  const lines = data.map((line) => line.join('|'));
  for (const { tables } of report.sections) {
    for (const { columns, rows } of tables) {
      expect(lines).toContain(columns.map(({ title }) => title).join('|'));
      // Designations of terminals begin with a sign, which is guarded from being run.
      for (const { cells } of rows) expect(lines).toContain(cells.map(({ text }) => guardText(text)).join('|'));
    }
  }
});
