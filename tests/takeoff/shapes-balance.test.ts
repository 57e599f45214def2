import fc from 'fast-check';
import { expect, it } from 'vitest';
import { LIST_SHAPES, writeList, writtenAs, type Counted } from '../support/independent-takeoff.ts';
import { read } from './support.ts';

const ROOMS = ['EG', '1. OG', 'Room 201', 'Hall', 'Keller'];
const TYPES = ['Router', 'Light sensor', 'Downlight 7 W', 'Room thermostat', 'Window contact'];

const counted = fc.uniqueArray(fc.record({
  room: fc.constantFrom(...ROOMS), type: fc.constantFrom(...TYPES),
  quantity: fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: -8, max: 6 }))
    .map(([qty, way]) => writtenAs(qty, way)),
  isSuperseded: fc.integer({ min: 0, max: 9 }).map((each) => each === 0),
}), { selector: ({ room, type }) => `${room} ${type}`, minLength: 3, maxLength: 18 })
  // A matrix of one room or one type is a list of another shape.
  .filter((all) => new Set(all.map(({ room }) => room)).size > 1 && new Set(all.map(({ type }) => type)).size > 1);

it('no quantity is lost, doubled or guessed, whatever the shape: what was counted is taken, left out or asked about', () => {
  fc.assert(fc.property(counted, fc.constantFrom(...LIST_SHAPES), fc.constantFrom(',', ';', '\t'), fc.boolean(), (all, shape, sign, hasTotals) => {
    const isList = shape === 'lines' || shape === 'merged rooms';
    const asked = ({ quantity, isSuperseded }: Counted) => !quantity.isPlain || (isList && isSuperseded);
    const sum = (some: readonly Counted[]) => some.reduce((before, { quantity: { qty } }) => before + qty, 0);
    const { lines, sums, rows } = read(writeList(all, shape, sign, hasTotals));
    const totals = lines.filter(({ isTotal }) => isTotal === true).reduce((before, { qty }) => before + (qty ?? 0), 0);
    expect(sums.read - totals).toBe(sum(all));
    expect(sums.taken).toBe(sum(all.filter((each) => !asked(each))));
    expect(sums.leftOut + sums.undecided - totals).toBe(sum(all.filter(asked)));
    expect(lines.filter(({ isTotal, outcome }) => isTotal === true && outcome !== 'left-out')).toEqual([]);
    expect(rows.map(({ area, type, qty }) => [area, type, qty].join('|')).sort()).toEqual(
      all.filter((each) => !asked(each)).map(({ room, type, quantity: { qty } }) => [room, type, qty].join('|')).sort());
  }), { numRuns: 300 });
});

it('every quantity that is asked about is taken as it is proposed, line by line', () => {
  fc.assert(fc.property(counted, fc.constantFrom(...LIST_SHAPES), (all, shape) => {
    const list = writeList(all, shape, ';', true);
    const open = read(list).lines.filter(({ outcome }) => outcome === 'undecided');
    const decided = read(list, { decisions: { lines: Object.fromEntries(open.map(({ key }) => [key, 'take' as const])) } });
    const meant = all.reduce((sum, { quantity: { qty } }) => sum + qty, 0);
    expect(decided.sums).toMatchObject({ undecided: 0, taken: meant });
  }), { numRuns: 100 });
});
