import { describe, expect, it } from 'vitest';
import { missingColumns } from '../../src/exchange/takeoff/index.ts';
import { read } from './support.ts';

/** What is taken, and what is asked about with its flag: «2: 3 superseded». */
function inWords(source: string) {
  const { lines } = read(source);
  return {
    taken: lines.filter(({ outcome }) => outcome === 'taken' || outcome === 'merged').map(({ qty, type, area }) => `${qty} ${type} @ ${area}`),
    asked: lines.filter(({ outcome }) => outcome === 'undecided').map(({ key, qty, flag }) => `${key}: ${qty} ${flag ?? '-'}`),
  };
}

describe('a status', () => {
  it.each([
    'Retain', 'Relocate', 'remove', 'bleibt', 'existing', 'Existing', 'option', 'Optional', 'by others', 'spare', 'Bestand', 'bestehend', 'optional', 'vorhanden', 'existant', 'en option', 'Reserve',
    'à conserver', 'existing, retained', 'NEP', 'N.I.C.', 'demontieren', 'nicht im Lieferumfang', 'in Pos. 1 enthalten', 'Bedarfsposition', 'Eventualposition',
  ])('%s is asked about', (status) => {
    expect(inWords(`Device;Qty;Status\nRouter;3;${status}\nRouter;2;new`)).toEqual({ asked: ['2: 3 superseded'], taken: ['2 Router @ null'] });
  });

  it.each(['new', 'neu', 'nicht vorhanden', 'not existing', 'fix to the existing duct', 'OK'])('%s is not', (status) => {
    expect(inWords(`Device;Qty;Remarks\nRouter;3;${status}`)).toEqual({ asked: [], taken: ['3 Router @ null'] });
  });

  it('is known in a name, but not where a type is called so', () => {
    expect(inWords('Device;Qty\nRouter (spare);2\nRouter - existing;3').asked).toEqual(['2: 2 superseded', '3: 3 superseded']);
    expect(read('Device;Qty\nSpare module;2', { types: [{ type: 'Spare module' }] }).sums.taken).toBe(2);
  });

  it('is known in the place of a room, but a store is one', () => {
    expect(inWords('Room;Device;Qty\nSpare;Router;2\nRéserve;Router;1')).toEqual({ taken: ['1 Router @ Réserve'], asked: ['2: 2 superseded'] });
    expect(inWords('Hall: 4 x Router\nBar: 3 x Router\nSpare: 2 x Router').asked).toEqual(['3: 2 superseded']);
  });

  it('holds for the lines below a title, with titles of places that follow at once', () => {
    const list = ['Device;Qty', 'Level 1', 'Router;1', 'By others', 'Router;2', 'Level 2', 'Router;3', 'Optional items', 'Level 1', 'Router;4', 'Level 2', 'Router;5'];
    expect(inWords(list.join('\n'))).toEqual({
      taken: ['1 Router @ Level 1', '3 Router @ Level 2'], asked: ['5: 2 superseded', '10: 4 superseded', '12: 5 superseded'],
    });
  });
});

describe('a column of counts under a status', () => {
  it.each([
    ['beside a count', 'Device;Qty;Spare;Option\nRouter;1;2;3', ['1 Router @ null'], ['2/3: 2 sum', '2/4: 3 sum']],
    ['beside storeys, with a total of all', 'Device;EG;OG;Spare;Total\nRouter;1;2;3;6', ['1 Router @ EG', '2 Router @ OG'], ['2/4: 3 sum']],
    ['beside storeys, with a total without it', 'Device;EG;OG;Spare;Total\nRouter;1;2;4;3', ['1 Router @ EG', '2 Router @ OG'], ['2/4: 4 sum']],
    ['beside what is new', 'Gerät;Bestand;Neu\nRouter;1;2', ['2 Router @ null'], ['2/2: 1 sum']],
    ['with the sum of both', 'Gerät;Bestand;Neu;Gesamt\nRouter;1;2;3\nLight sensor;2;2;4', ['2 Router @ null', '2 Light sensor @ null'], ['2/2: 1 sum', '3/2: 2 sum']],
    ['alone', 'Gerät;Bestand\nRouter;1', [], ['2: 1 superseded']],
  ])('%s is asked about', (_, source, taken, asked) => {
    expect(inWords(source)).toEqual({ taken, asked });
  });
});

describe('headings that are years', () => {
  it.each([
    ['alone', 'Device;2024;2025\nRouter;1;2'], ['beside a word', 'Device;Qty 2024;Qty 2025\nRouter;1;2'], ['or two issues', 'Gerät;Alt;Neu\nRouter;1;2'],
    ['or orders', 'Device;Tender;Contract\nRouter;1;2'], ['or estimates', 'Device;Est.;Actual\nRouter;1;2'], ['or limits', 'Device;min;max\nRouter;1;2'],
    ['in German', 'Gerät;Soll;Ist\nRouter;1;2'],
    ['or two times', 'Device;Qty was;Qty now\nRouter;4;6'], ['in French', 'Appareil;Avant;Après\nRouter;4;6'],
  ])('are no rooms unasked: %s', (_, source) => {
    const { columns, sums, notes } = read(source);
    expect([missingColumns(columns), sums.read]).toEqual([['qty'], 0]);
    expect(notes[0]).toMatch(/^Under “.+”, “.+” stand counts of different issues, years or orders, or of rooms\. Choose/);
  });

  it('are what a person says', () => {
    const source = 'Device;2024;2025\nRouter;1;2';
    expect(read(source, { columns: { 2025: 'qty' } }).rows).toMatchObject([{ qty: 2 }]);
    expect(read(source, { columns: { 2024: 'qty', 2025: 'qty' } }).rows).toMatchObject([{ qty: 1, area: '2024' }, { qty: 2, area: '2025' }]);
  });

  it('are rooms beside numbers that are no years, and one alone is the count', () => {
    expect(inWords('Device;1912;2012;2112\nRouter;3;1;1').taken).toEqual(['3 Router @ 1912', '1 Router @ 2012', '1 Router @ 2112']);
    expect(inWords('Device;2025\nRouter;3\nLight sensor;9').taken).toEqual(['3 Router @ null', '9 Light sensor @ null']);
    expect(inWords('Gerät;Neue Aula;Bühne\nRouter;3;1').taken).toEqual(['3 Router @ Neue Aula', '1 Router @ Bühne']);
  });
});
