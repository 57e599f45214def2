import fc from 'fast-check';
import { expect, it } from 'vitest';
import { LIST_SHAPES, meantBy, writeList, writtenAs, type Meant } from '../support/independent-takeoff.ts';
import { read } from './support.ts';

const ROOMS = ['EG', '1. OG', 'Room 201', 'Hall', 'Keller'];
const TYPES = ['Router', 'Light sensor', 'Downlight 7 W', 'Room thermostat', 'Window contact'];

const counted = fc.uniqueArray(fc.record({
  room: fc.constantFrom(...ROOMS), type: fc.constantFrom(...TYPES),
  quantity: fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: -8, max: 8 }))
    .map(([qty, way]) => writtenAs(qty, way)),
  isSuperseded: fc.integer({ min: 0, max: 9 }).map((each) => each === 0),
}), { selector: ({ room, type }) => `${room} ${type}`, minLength: 3, maxLength: 18 })
  // A matrix of one room or one type is a list of another shape.
  .filter((all) => new Set(all.map(({ room }) => room)).size > 1 && new Set(all.map(({ type }) => type)).size > 1);

it('no quantity is lost, doubled or guessed, whatever the shape: what was counted is taken, left out or asked about', () => {
  fc.assert(fc.property(counted, fc.constantFrom(...LIST_SHAPES), fc.constantFrom(',', ';', '\t'), fc.boolean(), (all, shape, sign, hasTotals) => {
    const meant = meantBy(all, shape);
    const sum = (some: readonly Meant[]) => some.reduce((before, { qty }) => before + qty, 0);
    const [asked, plain] = [meant.filter(({ isAsked }) => isAsked), meant.filter(({ isAsked }) => !isAsked)];
    // A column of sums without a word for it is asked about besides.
    const besides = shape === 'sum column' ? sum(meant) : 0;
    const { lines, sums, rows } = read(writeList(all, shape, sign, hasTotals));
    const totals = lines.filter(({ isTotal }) => isTotal === true).reduce((before, { qty }) => before + (qty ?? 0), 0);
    expect(sums.read - totals).toBe(sum(meant) + besides);
    expect(sums.taken).toBe(sum(plain));
    expect(sums.leftOut + sums.undecided - totals).toBe(sum(asked) + besides);
    expect(lines.filter(({ isTotal, outcome }) => isTotal === true && outcome !== 'left-out')).toEqual([]);
    expect(rows.map(({ area, type, qty }) => [area, type, qty].join('|')).sort()).toEqual(
      plain.map(({ room, type, qty }) => [room, type, qty].join('|')).sort());
  }), { numRuns: 200 });
});

it('every quantity that is asked about is taken as it is proposed, line by line', () => {
  fc.assert(fc.property(counted, fc.constantFrom(...LIST_SHAPES), (all, shape) => {
    const list = writeList(all, shape, ';', true);
    const open = read(list).lines.filter(({ outcome }) => outcome === 'undecided');
    // A person leaves the sums out.
    const isSum = ({ reason }: (typeof open)[number]) => reason.includes('It stands under “Σ”');
    const decided = read(list, { decisions: { lines: Object.fromEntries(open.map((line) => [line.key, isSum(line) ? 'leave-out' as const : 'take' as const])) } });
    const meant = meantBy(all, shape).reduce((sum, { qty }) => sum + qty, 0);
    expect(decided.sums).toMatchObject({ undecided: 0, taken: meant });
  }), { numRuns: 120 });
});
