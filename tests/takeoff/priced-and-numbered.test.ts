import { describe, expect, it } from 'vitest';
import { missingColumns, type TakeoffSource } from '../../src/exchange/takeoff/index.ts';
import { namesOtherQuantity } from '../../src/exchange/takeoff/other-quantity.ts';
import { read } from './support.ts';

function outcomes(source: TakeoffSource): string[] {
  return read(source).lines.filter(({ qty }) => qty !== null)
    .map(({ outcome, qty, type, area }) => `${outcome} ${qty} ${type} @ ${area}`);
}

describe('columns of counts beside sums and numbers', () => {
  // 1 + 2 = 3 and 2 + 2 = 4 beside them would make 14 of 7.
  it.each(['Sum', 'Ges.', 'Tot.', 'Summe', 'Total'])('“%s” is the total of a line, above rooms and above types', (heading) => {
    expect(outcomes(`Device;R101;R102;${heading}\nRouter;1;2;3\nLight sensor;2;2;4`)).toEqual([
      'taken 1 Router @ R101', 'taken 2 Router @ R102', 'taken 2 Light sensor @ R101', 'taken 2 Light sensor @ R102']);
    expect(read(`Room;Router;Light sensor;${heading}\nR101;1;2;3\nR102;2;2;4`).sums).toMatchObject({ taken: 7, undecided: 0 });
  });

  it.each(['Σ', 'All'])('“%s” that has the sum of the others in each line is asked about', (heading) => {
    expect(read(`Device;Block A;Block B;${heading}\nRouter;1;2;3\nLight sensor;2;2;4`).sums).toMatchObject({ taken: 7, undecided: 7 });
  });

  it('counts that happen to be 1, 2, 3 are counts, and numbers in front are none', () => {
    expect(read('Device;L1;L2\nRouter;1;4\nLight sensor;2;5\nRouter;3;6').sums.taken).toBe(21);
    expect(read('Room;Router;Light sensor\nR1;1;4\nR2;2;5\nR3;3;6').sums.taken).toBe(21);
    expect(read('Line;Device;L1;L2\n1;Router;5;4\n2;Light sensor;5;5\n3;Router;5;6').sums.taken).toBe(30);
  });

  it('“No.” beside storeys numbers the lines', () => {
    expect(outcomes('No.;Device;L1;L2\n1;Router;4;3\n2;Light sensor;3;3')).toEqual([
      'taken 4 Router @ L1', 'taken 3 Router @ L2', 'taken 3 Light sensor @ L1', 'taken 3 Light sensor @ L2']);
  });

  it.each(['Qty tender;Qty rev B', 'Qty tender;Qty contract', 'Menge Angebot;Menge Auftrag', 'Qté offre;Qté marché'])('“%s” are two counts of the same devices: a person says which holds', (headings) => {
    const { columns, rows } = read(`Device;${headings}\nRouter;4;5\nLight sensor;3;3`);
    expect([missingColumns(columns), rows]).toEqual([['qty'], []]);
  });

  it('a single count of an order or a revision is one', () => {
    for (const heading of ['Qty ordered', 'Qty rev B', 'Bestellmenge']) {
      expect(namesOtherQuantity(heading)).toBe(false);
      expect(read(`Device;${heading}\nRouter;4`).sums.taken).toBe(4);
    }
  });

  it('two columns of numbers without headings: a person says which counts', () => {
    const { columns, rows } = read('Router;4;2\nLight sensor;3;1');
    expect([missingColumns(columns), rows]).toEqual([['qty'], []]);
  });

  it('“Flat type A” above counts is a place, and no mark of the devices', () => {
    expect(outcomes('Device;Flat type A;Flat type B\nRouter;4;2')).toEqual(['taken 4 Router @ Flat type A', 'taken 2 Router @ Flat type B']);
  });
});

it('what stands in three flats is proposed three times, and totals are of what is written', () => {
  const source = 'Device;Flat type A (x3);2 × Flat B;Flat C\nRouter;4;2;1\nTotal;4;2;1';
  const { sums, lines } = read(source);
  // 3 × 4 and 2 × 2 are asked about, 1 is taken; 4 + 2 + 1 are totals.
  expect(sums).toMatchObject({ taken: 1, undecided: 16, leftOut: 7 });
  const asked = lines.filter(({ outcome }) => outcome === 'undecided');
  expect(asked.map(({ flag, proposal }) => [flag, proposal])).toEqual([['proposal', 12], ['proposal', 4]]);
  expect(asked[0]!.reason).toContain('“4” in “Flat type A (x3)” probably means 12. Confirm it');
  expect(read(source, { decisions: { names: {}, lines: { [asked[0]!.key]: 'take', [asked[1]!.key]: { qty: 5 } } } }).sums)
    .toMatchObject({ taken: 18, undecided: 0 });
  expect(read('Room;Light sensor;RGB 2x4\nHall;4;1').sums).toMatchObject({ taken: 5 });
});

describe('a list with prices', () => {
  // 4 × 85 = 340, 3 × 100 = 300.
  it.each(['Amount', 'Total', 'Line total', 'Summe'])('“%s” beside a unit price is money, and counts nothing', (heading) => {
    const { sums, lines } = read(`Device;Qty;Unit price;${heading}\nRouter;4;85.00;340.00\nLight sensor;3;100.00;300.00\nTotal;7;;640.00`);
    expect(sums).toMatchObject({ read: 14, taken: 7, leftOut: 7, undecided: 0 });
    expect(lines.filter(({ outcome }) => outcome === 'taken').map(({ facts }) => facts.price)).toEqual([85, 100]);
  });

  it('“Amount” that is not quantity times price is asked about', () => {
    expect(read('Device;Qty;Unit price;Amount\nRouter;4;85;5\nLight sensor;3;100;6').sums).toMatchObject({ taken: 7, undecided: 11 });
  });
});

it('a storey above the headings is the area of what stands below', () => {
  expect(outcomes('Level 0\nDevice;Qty\nRouter;4\nLevel 1\nDevice;Qty\nRouter;3')).toEqual(['taken 4 Router @ Level 0', 'taken 3 Router @ Level 1']);
  expect(outcomes('Project Aster\nDevice;Qty\nRouter;4')).toEqual(['taken 4 Router @ null']);
});
