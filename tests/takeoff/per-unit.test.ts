import { describe, expect, it } from 'vitest';
import { headingFactor } from '../../src/exchange/takeoff/heading-factor.ts';
import { perUnit, refsSaid, roomsSaid, unitsSaid } from '../../src/exchange/takeoff/per-unit.ts';
import { read } from './support.ts';

/** What is proposed, and what is taken without a question. */
function inWords(source: string) {
  const { lines } = read(source);
  return {
    proposed: lines.filter(({ outcome, flag }) => outcome === 'undecided' && flag === 'proposal').map(({ proposal, type }) => `${proposal} ${type}`),
    taken: lines.filter(({ outcome }) => outcome === 'taken' || outcome === 'merged').map(({ qty, type }) => `${qty} ${type}`),
  };
}

describe('a quantity per flat', () => {
  it.each([
    ['a column of flats', 'Device;Qty per flat;Flats\nRouter;1;12\nLight sensor;4;12', ['12 Router', '48 Light sensor']],
    ['a German column', 'Gerät;Menge je WE;Anzahl WE\nRouter;1;20\nLight sensor;2 Stk;20', ['20 Router', '40 Light sensor']],
    ['a French column', 'Appareil;Qté par logement;Nombre de logements\nRouter;1;20\nLight sensor;4;20', ['20 Router', '80 Light sensor']],
    ['its unit', 'Device;Qty;Unit;No. of flats\nRouter;1;per flat;12', ['12 Router']],
    ['a line above the headings', 'Anzahl Wohnungen: 12\nGerät;Menge je Wohnung\nRouter;1\nLight sensor;4', ['12 Router', '48 Light sensor']],
    ['its own heading', 'Device;Qty per flat (12 flats)\nRouter;3', ['36 Router']],
    ['lines between', 'Device;Qty per flat\nType A\nNumber of flats;12\nRouter;1\nType B\nNumber of flats;3\nRouter;2', ['12 Router', '6 Router']],
    ['a line of each column', 'Device;Flat A;Flat B\nNo. of flats;3;5\nRouter;1;2\nLight sensor;2;', ['3 Router', '10 Router', '6 Light sensor']],
    ['storeys', 'Device;Qty per floor;Floors\nRouter;1;3', ['3 Router']],
    ['rooms', 'Device;Qty per room;No. of rooms\nRouter;1;20', ['20 Router']],
    ['quantities that are proposals themselves', 'Device;Qty per flat;Flats\nRouter;3 + 1 spare;10', ['40 Router']],
  ])('is proposed times their number, as said by %s', (_, source, proposed) => {
    expect(inWords(source)).toEqual({ proposed, taken: [] });
  });

  it('is taken as it is proposed when a person confirms it, and as they say else', () => {
    const source = 'Device;Qty per flat;Flats\nRouter;1;12\nLight sensor;4;12';
    const decided = read(source, { decisions: { lines: { 2: 'take', 3: { qty: 50 } } } });
    expect(decided.sums).toMatchObject({ taken: 12 + 50, undecided: 0 });
    expect(read(source).lines[1]!.reason).toContain('“1” × 12 (“Flats”) probably means 12.');
  });

  it('is asked about where nothing says of how many, unless the place is that of the line', () => {
    expect(inWords('Device;Qty per flat\nRouter;3')).toEqual({ proposed: ['3 Router'], taken: [] });
    expect(inWords('Gerät;Menge;Einheit\nRouter;1;Stk/WE\nLight sensor;4;Stk')).toEqual({ proposed: ['1 Router'], taken: ['4 Light sensor'] });
    expect(inWords('Room;Device;Qty per room\nHall;Router;3')).toEqual({ proposed: [], taken: ['3 Router'] });
  });

  it('is counted once where the list has the products', () => {
    expect(inWords('Device;Qty per flat;Flats;Total\nRouter;1;12;12\nLight sensor;4;12;48')).toEqual({ proposed: [], taken: ['12 Router', '48 Light sensor'] });
    // 4 × 12 are not 47: the product is not what the list counts.
    expect(read('Device;Qty per flat;Flats;Total\nRouter;1;12;12\nLight sensor;4;12;47').sums.taken).toBe(0);
  });

  it('is proposed below a title that says how many there are, up to the next title', () => {
    expect(inWords('Device;Qty\nType A (x12)\nRouter;1\nType B, 4 flats\nRouter;2\nCommon areas\nRouter;7'))
      .toEqual({ proposed: ['12 Router', '8 Router'], taken: ['7 Router'] });
  });

  it('is proposed for a room that is there several times, also where it is carried down, and for each of several rooms', () => {
    // 24 × 1 and 24 × 2, 2 × 3; four rooms with one each.
    expect(inWords('Room;Device;Qty\nTypical bedroom x 24;Router;1\n;Light sensor;2\n2nd floor (x2);Router;3\nHall;Router;5'))
      .toEqual({ proposed: ['24 Router', '48 Light sensor', '6 Router'], taken: ['5 Router'] });
    expect(inWords('Room;Device;Qty\n102-105;Router;1 each\n201 bis 212;Router;je 2\nHall;Router;3 each\n301-310;Router;10'))
      .toEqual({ proposed: ['4 Router'], taken: ['3 Router', '10 Router'] });
    expect(inWords('Room;Device;Qty per room\n102-105;Router;2')).toEqual({ proposed: ['8 Router'], taken: [] });
  });

  it('a total may be of what is proposed, of a part or of all', () => {
    const list = 'Item;Device;Room;Qty\n;Ground floor;;\n1;Router;102-105;2 each\n2;Light sensor;Hall;3\n;First floor;;\n3;Router;Attic;1\n;Total;;12';
    // 4 × 2 + 3 + 1
    expect(read(list).lines.at(-1)).toMatchObject({ outcome: 'left-out', isTotal: true, qty: 12 });
    expect(read(list.replace('12', '11')).lines.at(-1)).toMatchObject({ outcome: 'undecided', flag: 'sum' });
    // 2 + 3 + 1 as written is nearer to 7 than the 1 of the first floor.
    expect(read(list.replace('12', '7')).lines.at(-1)!.reason).toContain('says 7, but the lines above come to 6.');
  });

  it('a stretch of rooms and refs is no room whose name has a letter between numbers', () => {
    expect(['102-105', '201 to 212', '1 à 3', '5 bis 7', '1A3', '2a', 'Room 1a4', '12bis'].map(roomsSaid)).toEqual([4, 12, 3, 3, undefined, undefined, undefined, undefined]);
    expect(['BM-01 to BM-04', 'D3..D6', 'E1–E3', 'K1 à K4', 'E1 - E3', '1A3', 'E1A3', 'D1to4'].map(refsSaid)).toEqual([4, 4, 3, 4, 3, undefined, undefined, undefined]);
    expect(inWords('Room;Device;Qty\n1A3;Router;1 each\n2 to 4;Router;2 each')).toEqual({ proposed: ['6 Router'], taken: ['1 Router'] });
  });

  it('is known by words, and a place or a size is none', () => {
    expect(['Qty per flat', 'Stk/WE', 'par logement', 'Menge je Wohnung Typ A', 'Qty per floor', 'Qty per storey L0', 'Flats', 'Price per m'].map(perUnit))
      .toEqual(['dwelling', 'dwelling', 'dwelling', 'dwelling', 'place', undefined, undefined, undefined]);
    expect(['Flat A, 12 flats', '24 WE', '12 × flat A', 'Anzahl Wohnungen: 8', '2-Zimmer-Wohnung', 'Wohnung 12', 'Corridor 2 x 3 m', 'Qty Room 201', 'No. room 201'].map(unitsSaid))
      .toEqual([12, 24, 12, 8, undefined, undefined, undefined, undefined, undefined]);
    // The number of a room is not how many there are.
    expect(read('No. room;Device;Qty\n101;Router;3').sums).toMatchObject({ read: 3, taken: 3 });
    expect(['Flat type A (x3)', '3 × Flat A', '2 x 3 m', 'Axis x'].map(headingFactor)).toEqual([3, 3, 1, 1]);
    expect(read('Device;Hall;Flats\nRouter;1;2').rows).toMatchObject([{ area: 'Hall', qty: 1 }, { area: 'Flats', qty: 2 }]);
  });
});
