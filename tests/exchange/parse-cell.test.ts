import { describe, expect, it } from 'vitest';
import {
  columnOf, parseCell, type CellContext, type CellValue, type InputColumn, type SheetName,
} from '../../src/schedule/index.ts';

const column = (path: string) => {
  const [sheet, key] = path.split('.') as [SheetName, string];
  return columnOf(sheet, key) as InputColumn;
};

const understood: [path: string, text: string, value: CellValue, context?: CellContext][] = [
  ['devices.qty', '12', 12],
  ['devices.qty', ' 12 ', 12],
  ['devices.qty', '12 no.', 12],
  ['devices.qty', '12x', 12],
  ['devices.qty', '12 Stk.', 12],
  ['devices.qty', '12,0', 12],
  ['devices.qty', '12.0', 12],
  ['devices.qty', '1 200', 1200],
  ['devices.qty', '1\u202f200', 1200],
  ['devices.qty', '1\u2009200', 1200],
  ['devices.qty', '1’200', 1200],
  ['devices.qty', '1,200', 1200, { decimal: '.' }],
  ['devices.qty', '1.200', 1200, { decimal: ',' }],
  ['devices.qty', '1,234,567', 1_234_567],
  ['devices.qty', '1e3', 1000],
  ['devices.qty', '-0', 0],
  ['devices.qty', '=C3*2', '=C3*2'],
  ['devices.qty', ' =C3*2', '=C3*2'],
  ['devices.distance', '1.234,5', 1234.5],
  ['devices.distance', '1,234.5', 1234.5],
  ['devices.distance', '1 234,5 m', 1234.5],
  ['devices.distance', '1,234', 1.234, { decimal: ',' }],
  ['devices.distance', '0,350', 0.35],
  ['devices.distance', '.5', 0.5],
  ['devices.distance', '25 cm', 0.25],
  ['devices.distance', '1.5 km', 1500],
  ['devices.distance', '850', 0.85, { unit: 'mm' }],
  ['devices.unitDraw', '350 mA', 350],
  ['devices.unitDraw', '350', 350],
  ['devices.unitDraw', '0.35 A', 350],
  ['devices.unitDraw', '0,35A', 350],
  ['devices.unitDraw', '0.0123 A', 12.3],
  ['devices.unitDraw', '0.35', 350, { unit: 'A' }],
  ['devices.unitDraw', '350 mA', 350, { unit: 'A' }],
  ['devices.unitDraw', '8.4 W', 350],
  ['devices.unitDraw', '8,4W', 700, { voltage: 12 }],
  ['devices.unitDraw', '0.012 kW', 500],
  ['supplies.rated', '10 A', 10],
  ['supplies.rated', '500mA', 0.5],
  ['supplies.voltage', '24 V', 24],
  ['outputs.power', '1.2 kW', 1200],
  ['supplies.peak', '1.2×', 1.2],
  ['conductors.size', '1.5 mm2', 1.5],
  ['conductors.size', '1,5 mm²', 1.5],
  ['conductors.resistance', '12.1 ohm/km', 12.1],
  ['conductors.resistance', '0.0121 Ω/m', 12.1],
  ['enclosures.ambient', '−5 °C', -5],
  ['enclosures.ambient', '35 C', 35],
  ['enclosures.width', '0.6 m', 600],
  ['enclosures.transfer', '5.5 W/m²K', 5.5],
  ['devices.diversity', '0.7', 0.7],
  ['devices.diversity', '0,7', 0.7],
  ['devices.diversity', '70 %', 0.7],
  ['devices.diversity', '7\u202f%', 0.07],
  ['devices.diversity', '55', 0.55, { unit: '%' }],
  ['supplies.redundant', 'Yes', true],
  ['supplies.redundant', 'x', true],
  ['supplies.redundant', 'ja', true],
  ['supplies.redundant', 'nein', false],
  ['supplies.redundant', '0', false],
  ['branches.limit', 'TIA-485-A', 32],
  ['branches.limit', ' iec 62386 ', 64],
  ['branches.limit', '65', 65],
  ['ways.trip', '6.5', 6.5],
  ['devices.qty', '12.5 m', 12.5],
  ['devices.qty', '12.5m', 12.5],
  ['devices.qty', '12 m', 12],
  ['ways.kind', 'GG', 'gG'],
  ['types.purpose', 'LIGHTING', 'lighting'],
  ['types.purpose', ' control ', 'control'],
  ['devices.rail', ' R1 ', 'R1'],
  ['devices.ref', ' D-01 ', 'D-01'],
  ['devices.ref', '=not a formula', '=not a formula'],
  ['devices.note', ' spaces stay ', ' spaces stay '],
  ['devices.note', 'half a pair \ud83d', 'half a pair \ufffd'],
  ['devices.note', '\ud83d\udca1', '\ud83d\udca1'],
];

const refused: [path: string, text: string, parts: string[], context?: CellContext][] = [
  ['devices.qty', '12.5', ['“12.5”', 'whole number', '0 or more', '12 or 13']],
  ['devices.qty', '1,200', ['“1,200”', '1.2 or 1200']],
  ['outputs.qty', '12.5 m', ['“m”']],
  ['devices.distance', '1.200', ['1.2 or 1200']],
  ['devices.qty', '-1', ['“-1”', '0 or more']],
  ['devices.qty', 'about 12', ['“about 12”', 'not a number']],
  ['devices.qty', '1 20', ['not a number']],
  ['devices.qty', '12.', ['not a number']],
  ['devices.qty', '1.2.3', ['not a number']],
  ['devices.qty', '1e400', ['“1e400”']],
  ['devices.unitDraw', '8.4 lm', ['“lm”', 'mA, A or W']],
  ['devices.unitDraw', '-3 mA', ['out of range', '0 mA or more']],
  ['supplies.voltage', '230', ['“230”', 'more than 0 and at most 120 V']],
  ['devices.diversity', '1.4', ['“1.4”', 'reciprocal', 'type 0.714']],
  ['devices.diversity', '70', ['“70”', '70 % or 0.7']],
  ['supplies.target', '80', ['80 % or 0.8']],
  ['devices.diversity', '150 %', ['100 %']],
  ['devices.diversity', '-5 %', ['0 to 1']],
  ['supplies.redundant', 'maybe', ['“maybe”', 'yes or no']],
  ['branches.limit', 'E', ['“E”', '1 or more', 'TIA-485-A, IEC 62386']],
  ['ways.trip', '101', ['“101”', '1 to 100']],
  ['ways.kind', 'K', ['“K”', 'B, C, D, gG, fast, slow, electronic']],
  ['types.purpose', 'heating', ['“heating”', 'lighting, field, control, other']],
  ['devices.note', 'a\0b', ['NUL']],
  ['devices.area', 'x\0'.padEnd(50, 'x'), ['NUL']],
];

describe('parseCell', () => {
  it.each(['', ' '])('reads %j as an empty cell', (text) => {
    expect(parseCell(column('devices.qty'), text)).toEqual({ ok: true, value: null });
  });

  it.each(understood)('%s understands %j as %j', (path, text, value, context) => {
    expect(parseCell(column(path), text, context)).toMatchObject({ ok: true, value });
  });

  it.each(refused)('%s refuses %j and says why', (path, text, parts, context) => {
    const parsed = parseCell(column(path), text, context);
    expect(parsed.ok).toBe(false);
    for (const part of parts) expect('problem' in parsed && parsed.problem).toContain(part);
  });

  it('says what a name stands for, and where that comes from', () => {
    const parsed = parseCell(column('branches.limit'), 'tia-485-a');
    expect('hint' in parsed && parsed.hint).toMatch(/^Limit 32 for TIA-485-A: TIA-485-A/);
    // BS 7671:2018, Appendix 4, Table 4Ab, from memory: lighting 3 % from a public supply.
    expect(parseCell(column('runs.maxDrop'), 'Mains lighting')).toEqual({
      ok: true, value: 0.03,
      hint: expect.stringMatching(/^Max\. voltage drop 3\s% for mains lighting: BS 7671:2018, .*4Ab/) as string,
    });
  });

  it.each(['valueOf', 'constructor', 'toString', '__proto__'])('%s is no unit', (name) => {
    expect(parseCell(column('devices.unitDraw'), `350 ${name}`)).toMatchObject({ ok: false });
  });

  it('says at which voltage watts were turned into a draw', () => {
    expect(parseCell(column('devices.unitDraw'), '8.4 W'))
      .toEqual({ ok: true, value: 350, hint: '8.4 W at 24 V is 350 mA' });
  });
});
