import { expect, test } from 'vitest';
import { buildReport, loadTableHtml, panelView, tableJson } from '../../src/report/index.ts';
import { scheduleOf } from '../support/schedules.ts';

const schedule = scheduleOf({
  enclosures: [{ enclosure: 'P1' }, { enclosure: 'P2' }], types: [{ type: 'Lamp', draw: 500, nodes: 2 }],
  supplies: [{ rail: 'L1', rated: 10, units: 2, enclosure: 'P1' }, { rail: 'L2', rated: 5, enclosure: 'P2', voltage: 12 }],
  ways: [{ way: 'F1', rail: 'L1', kind: 'B', rated: 4 }], branches: [{ branch: 'B1', limit: 5, enclosure: 'P1' }],
  devices: [
    { ref: 'D1', type: 'Lamp', qty: 4, rail: 'L1', branch: 'B1', diversity: 0.5 }, { ref: 'D2', type: 'Lamp', qty: 1, rail: 'L2' },
    { ref: 'D3', type: 'Lamp', rail: 'L2' }, { ref: 'D4', type: 'Lamp', qty: 9 },
  ],
});

test('panels stand side by side, with what each has and asks for', () => {
  const { sections } = buildReport(schedule, { generated: '2026-11-30' });
  const { tables: [table] } = sections.find(({ name }) => name === 'panels')!;
  // P1: 4 × 0.5 A × 24 V, half of it expected; 8 nodes. P2: 0.5 A × 12 V, and a row of unknown quantity.
  expect(table!.rows.map(({ cells }) => cells.map(({ text }) => text))).toEqual([
    ['P1', '4', '2', '48', '24', '1', '1', '8', '0', '0'],
    ['P2', '≥\u00a01', '1', '≥\u00a06', '≥\u00a06', '0', '0', '≥\u00a02', '0', '0'],
    ['In no panel', '9', '0', '0', '0', '0', '0', '18', '0', '0'],
  ]);
});

test('one panel has its rows and findings, the lists, and figures as they are', () => {
  const json = tableJson(panelView(schedule, 'P1'));
  const counts = Object.entries(json.sheets).map(([sheet, rows]) => [sheet, rows.length]);
  expect(counts.filter(([, count]) => count !== 0)).toEqual([
    ['devices', 1], ['types', 1], ['supplies', 1], ['ways', 1], ['branches', 1], ['enclosures', 1],
  ]);
  expect(json.findings.some(({ sheet }) => sheet === 'branches')).toBe(true);
  expect(json.findings.some(({ sheet, tag }) => sheet === 'devices' && tag === 'D3')).toBe(false);
  const report = buildReport(schedule, { generated: '2026-11-30', panel: 'P2' });
  expect(report.subject).toBe('P2');
  const html = loadTableHtml(report, {});
  expect(html).toContain('D3');
  expect(html).not.toContain('D1');
  expect(schedule.rows('devices')).toHaveLength(4);
});
