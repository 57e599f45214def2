import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { writeList, writtenAs } from '../support/independent-takeoff.ts';
import { read } from './support.ts';

/** 4 + 3 + 2 + 1 = 10. */
const list = (...last: string[]) => read(
  ['Room;Device;Qty', 'R1;Presence detector;4', 'R1;Room thermostat;3', 'R2;Presence detector;2', 'R2;Router;1', ...last].join('\n'));

describe('a total by a word that nobody has foreseen', () => {
  it.each(['Gerätezahl Haus', 'Ensemble', 'Everything', 'Alles'])('such as %s is asked about, and counts by decision', (word) => {
    const { sums, lines } = list(`;${word};10`);
    expect(sums).toMatchObject({ read: 20, taken: 10, undecided: 10 });
    expect(lines.at(-1)).toMatchObject({ outcome: 'undecided', flag: 'sum' });
    expect(lines.at(-1)!.reason)
      .toContain('It may be a total: 10 is the sum of the lines from 2 on. Take it if it counts besides, or leave it out.');
    const source = lines.map(({ fields }) => fields.join(';')).join('\n');
    expect(read(source, { decisions: { lines: { 6: 'take' } } }).sums).toMatchObject({ taken: 20, undecided: 0 });
    expect(read(source, { decisions: { lines: { 6: 'leave-out' } } }).sums).toMatchObject({ taken: 10, undecided: 0 });
  });

  it('below a title is that of its part, and the grand total is held against the lines', () => {
    const { lines } = read('Device;Qty\nHall;\nRouter;1\nLight sensor;2\nLine-up;3\nBar;\nRouter;5\nLight sensor;1\nLine-up;6\nTotal;9');
    expect(lines.filter(({ qty }) => qty !== null).map(({ line, outcome }) => `${line} ${outcome}`))
      .toEqual(['3 taken', '4 taken', '5 undecided', '7 taken', '8 taken', '9 undecided', '10 left-out']);
  });

  it('is one in each of its counts; in one of them alone it may be a device', () => {
    const rows = 'Device;L0;L1\nRouter;1;4\nLight sensor;2;5\n';
    expect(read(`${rows}Line-up;3;9`).sums).toMatchObject({ taken: 12, undecided: 12 });
    expect(read(`${rows}Flap drive;3;8`).sums).toMatchObject({ taken: 23, undecided: 0 });
    expect(read('Room;Router;Light sensor\nR1;1;4\nR2;2;5\nHouse;3;9').sums).toMatchObject({ taken: 12, undecided: 12 });
  });

  it('is none where a type is called so, where a legend tells it, or where it stands for a single line or in several', () => {
    expect(list('R3;Light sensor;10').sums).toMatchObject({ taken: 20, undecided: 0 });
    expect(read([{ cells: 'Code;Description\nAb;Flap drive', sheet: 'Legend' }, { cells: 'Code;Qty\nRouter;1\nRouter;2\nAb;3', sheet: 'EG' }]).sums)
      .toMatchObject({ taken: 6, undecided: 0 });
    expect(read('Device;Qty\nFlap drive;1\nRouter;2\nFlap drive;3').sums).toMatchObject({ taken: 6, undecided: 0 });
    expect(read('Device;Qty\nRouter;4\nFlap drive;4').sums).toMatchObject({ taken: 8, undecided: 0 });
  });

  it('is none with a tag of its own; a number alone may be that of a line of a bill', () => {
    expect(read('Ref;Device;Qty\nAL-1;Odd box;1\nAL-2;Odd lamp;2\nAL-3;Odd flap;3').lines.at(-1)).not.toHaveProperty('flag');
    expect(read('Ref;Device;Qty\n1.1;Odd box;1\n1.2;Odd lamp;2\n1.3;Odd flap;3').lines.at(-1)).toMatchObject({ flag: 'sum' });
  });

  it('makes all lines doubtful that are called so, or the list read again would take them otherwise', () => {
    const { sums, lines } = read('Device;Qty\nRouter;23\nRouter;1\nOdd box;24\nOdd box;1');
    expect(sums).toMatchObject({ taken: 24, undecided: 25 });
    expect(lines.at(-1)!.reason).toContain('Line 4, which is called the same, may be a total');
  });

  it('does not lead the next one astray when a device was taken after all', () => {
    const text = 'Device;Qty\nRouter;1\nLight sensor;2\nFlap drive;3\nRouter;4\nTotal;10';
    expect(read(text, { decisions: { lines: { 4: 'take' } } }).lines.at(-1)).toMatchObject({ outcome: 'left-out', isTotal: true });
  });
});

it.each(['Σ', '∑', '=', 'c/f', 'carried fwd', 'In all', 'Altogether', 'Overall', 'All devices', 'Number of devices', 'Zusammen', 'Seitensumme',
  'Kontrollsumme', 'Alle Geräte', 'Anzahl Geräte', 'Récapitulatif', 'Σ EG'])('%s is a total, and checked', (word) => {
  expect(list(`;${word};10`).lines.at(-1)).toMatchObject({ outcome: 'left-out', isTotal: true });
  expect(list(`;${word};11`).lines.at(-1)).toMatchObject({ outcome: 'undecided', isTotal: true, flag: 'sum' });
});

it('is never taken in silence, whatever is counted', () => {
  const counted = fc.array(fc.record({
    room: fc.constantFrom('R1', 'R2', 'Hall'), type: fc.constantFrom('Router', 'Light sensor', 'Window contact'),
    quantity: fc.integer({ min: 1, max: 9 }).map((qty) => writtenAs(qty, 0)), isSuperseded: fc.constant(false),
  }), { minLength: 2, maxLength: 12 });
  fc.assert(fc.property(counted, fc.constantFrom('Line-up', 'Zzz', 'Gesamtheit', 'Tutto'), (all, word) => {
    const meant = all.reduce((sum, { quantity: { qty } }) => sum + qty, 0);
    const text = writeList(all, 'lines', ';', true).replace(/Total;/, `;${word}`);
    expect(read(text).sums).toEqual({ read: 2 * meant, taken: meant, leftOut: 0, undecided: meant, inTotals: 0 });
  }));
});
