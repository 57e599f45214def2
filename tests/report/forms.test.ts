import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SEVERITIES } from '../../src/findings/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { buildReport, FORMS, loadTableHtml, SECTION_NAMES, type LoadTableOptions } from '../../src/report/index.ts';
import { MOST_ROWS } from '../../src/report/model/brief-section.ts';
import { MOST_FINDINGS } from '../../src/report/model/findings-sections.ts';
import { verifyHtml } from '../../src/report/verify/index.ts';
import type { Cells } from '../../src/schedule/index.ts';
import { ENGLISH } from '../../src/words/index.ts';
import { AGREES, demo, pageOf } from './verified.ts';

const of = (schedule: LoadSchedule, options: Partial<LoadTableOptions> = {}) => {
  const { sections, cautions, scope } = buildReport(schedule, { generated: '2026-11-30', ...options });
  return { sections, cautions, scope, names: sections.map(({ name }) => name) };
};
const sectionOf = (schedule: LoadSchedule, name: string, options: Partial<LoadTableOptions>) =>
  of(schedule, options).sections.find((section) => section.name === name)!;
/** The numbers of a sentence, in their order. */
const numbers = (sentence = '') => [...sentence.matchAll(/\d+/g)].map(([number]) => Number(number));

describe('the forms of a load table', () => {
  it('have the sections that they are said to have, each under its name', async () => {
    const schedule = await demo();
    const { names } = of(schedule, { since: schedule });
    // The demo has something to tell in each of them.
    expect(names).toEqual(SECTION_NAMES);
    expect(of(schedule, { form: 'short' }).names).toEqual([
      'revisions', 'summary', 'panels', 'findings', 'accepted', 'supplies', 'ways', 'branches', 'runs', 'outputs', 'feeds',
      'cases', 'not-judged', 'commissioning',
    ]);
    expect(of(schedule, { form: 'site' }).names).toEqual([
      'findings', 'ways', 'protections', 'modules', 'rails', 'wiring', 'inside', 'cables', 'spare', 'checklist', 'measuring', 'commissioning',
    ]);
  });

  it('say what they are not, and what was left out by choice if there would have been something', async () => {
    const schedule = await demo();
    expect(of(schedule).cautions.join()).not.toContain('form');
    expect(of(schedule, { form: 'short' }).cautions[0]).toMatch(/^Short form: .* not listed here; the full form has them\.$/);
    const { names, cautions } = of(schedule, { form: 'site', without: ['rails', 'wiring', 'types'] });
    expect(names).not.toContain('wiring');
    // Types are in no form for the site.
    expect(cautions[1]).toBe('Left out of this print by choice: Mounting rails, Wiring list.');
    const empty = new LoadSchedule({ details: {}, sheets: { supplies: [{ rail: 'L1' }] } });
    expect(of(empty, { without: ['rails'] }).cautions.join()).not.toContain('Left out');
  });

  it.each(FORMS)('%s is verified as it was made, with and without sections', async (form) => {
    const schedule = await demo();
    for (const without of [undefined, ['ways', 'commissioning'] as const]) {
      const page = pageOf(schedule, { form, without, allPictures: without !== undefined });
      expect(await verifyHtml(page, ENGLISH)).toEqual(AGREES);
    }
    const { differs } = await verifyHtml(pageOf(schedule, { form }).replaceAll('over limit', 'near limit'), ENGLISH);
    expect(differs.length).toBeGreaterThan(0);
  });

  it('short tells of every row, listed or counted, those that are not within their limits first', () => {
    fc.assert(fc.property(fc.array(fc.constantFrom(1, 40, undefined), { minLength: 1, maxLength: 250 }), (lengths) => {
      const schedule = new LoadSchedule({ details: {}, sheets: {
        supplies: [{ rail: 'L1', rated: 5000 }], ways: [{ way: 'F1', rail: 'L1', kind: 'electronic', rated: 10 }],
        conductors: [{ conductor: '1.5', size: 1.5, resistance: 12.1 }],
        types: [{ type: 'Lamp', draw: 1000, nodes: 0, minVoltage: 21 }],
        runs: lengths.map((length, index): Cells => ({ run: `W${index}`, rail: 'L1', way: 'F1', conductor: '1.5', ...length === undefined ? {} : { length } })),
        devices: lengths.map((_length, index) => ({ ref: `D${index}`, type: 'Lamp', qty: 4, run: `W${index}`, rail: 'L1' })),
      } });
      const { tables: [table], sentences } = sectionOf(schedule, 'runs', { form: 'short' });
      const [more = 0, ...counts] = numbers(sentences[0]);
      expect(table!.rows.length + more).toBe(lengths.length);
      expect(counts.reduce((sum, count) => sum + count, 0)).toBe(more);
      expect(table!.rows.length).toBe(Math.min(MOST_ROWS, lengths.length));
      const listed = new Set(table!.rows.map(({ cells }) => cells[0]!.text));
      const bad = schedule.rows('runs').filter(({ id }) => schedule.standing('runs', id) !== 'ok');
      const listedBad = bad.filter(({ cells }) => listed.has(cells.run as string)).length;
      expect(listedBad).toBe(Math.min(bad.length, MOST_ROWS));
    }), { numRuns: 20 });
  });

  it('short tells of every open finding, listed or counted, the worst first', () => {
    for (const count of [1, 70, 200]) {
      const schedule = new LoadSchedule({ details: {}, sheets: {
        supplies: Array.from({ length: count }, (_each, index) => ({ rail: `L${index}`, ...index % 3 === 0 ? { rated: 1 } : {} })),
        devices: Array.from({ length: count }, (_each, index) => ({ ref: `D${index}`, qty: 1, unitDraw: 2000, diversity: 1, rail: `L${index}` })),
      } });
      const { tables: [table], sentences } = sectionOf(schedule, 'findings', { form: 'short' });
      const [more = 0, ...counts] = numbers(sentences[0]);
      const open = schedule.findings.filter(({ severity, accepted }) => severity !== 'note' && accepted === undefined);
      expect(table!.rows.length + more).toBe(open.length);
      expect(table!.rows.length).toBe(Math.min(MOST_FINDINGS, open.length));
      expect(counts.reduce((sum, each) => sum + each, 0)).toBe(more);
      const states = table!.rows.map(({ cells: [state] }) => SEVERITIES.indexOf(state!.state as 'over'));
      expect(states).toEqual([...states].sort((a, b) => a - b));
    }
  });

  it('full draws runs that are not within their limits, and says how many it does not draw', async () => {
    const schedule = await demo();
    const all = sectionOf(schedule, 'run-pictures', { allPictures: true });
    const some = sectionOf(schedule, 'run-pictures', {});
    const [within] = numbers(some.sentences[1]);
    expect(some.pictures!.length + within!).toBe(all.pictures!.length);
    expect(within).toBeGreaterThan(0);
    expect(some.pictures!.length).toBeLessThanOrEqual(
      schedule.rows('runs').filter(({ id }) => schedule.standing('runs', id) !== 'ok').length);
  });

  it('full lists the types that devices have, and says how many others there are', async () => {
    const { details, sheets } = (await demo()).content();
    const schedule = new LoadSchedule({ details, sheets: { ...sheets, types: [...sheets.types!, { type: 'Spare lamp', draw: 10 }] } });
    const { tables, sentences } = sectionOf(schedule, 'types', {});
    const used = new Set(schedule.rows('devices').map(({ cells }) => cells.type));
    const listed = tables[0]!.rows.length;
    expect(listed).toBe(schedule.rows('types').filter(({ cells }) => used.has(cells.type)).length);
    expect(numbers(sentences.at(-1))[0]).toBe(schedule.rows('types').length - listed);
  });

  it('are marked in the page, so that each is set as it is to be read', async () => {
    const schedule = await demo();
    for (const form of FORMS) {
      expect(loadTableHtml(buildReport(schedule, { generated: '', form }))).toContain(`<main class="${form}">`);
    }
  });
});
