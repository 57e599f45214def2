import { describe, expect, it } from 'vitest';
import { headingFields } from '../../src/exchange/takeoff/find-heading.ts';
import { columnsToRemember, missingColumns, TAKEOFF_FIELDS } from '../../src/exchange/takeoff/index.ts';
import { columnOf } from '../../src/schedule/index.ts';
import { loadWords } from '../../src/words/index.ts';
import { read } from './support.ts';

const fieldsOf = (source: string, columns = {}) =>
  read(source, { columns }).columns.map(({ field }) => field ?? '-').join(' ');

describe('what the columns hold', () => {
  it.each([
    ['Qty,Device\n4,Light sensor', 'qty type'],
    ['Device;Quantity (pcs);Room\nLight sensor;4;Hall', 'type qty area'],
    ['Anzahl\tGerät\tRaum\n4\tLichtfühler\tFlur', 'qty type area'],
    ['Lfd. Nr.;Benennung;Stück;Geschoss;Raum\n1;Lichtfühler;4;EG;Flur', 'ref description qty area area'],
    ['Appareil;Nb;Pièce;Repère\nVoyant;4;Hall;A1', 'type qty area ref'],
    ['OZ;Kurztext;Menge;Einh.;Einbauort\n1.10;Lichtfühler;4;Stk.;Flur', 'ref description qty unit area'],
    [
      'Kennzeichen\tArtikel\tGesamtmenge\tVersorgt von\tBuslinie\nA1\tLichtfühler\t4\tP1\tB1',
      'ref type qty rail branch',
    ],
    [
      'N°;Désignation;U;Qté;P.U.;Local\n1;Voyant;u;4;35,50;Hall\n2;Voyant;u;1;35,50;Bar',
      'ref description unit qty price area',
    ],
    [
      'Repérage;Symbole;Quantité totale;Étage;Local;Observations\nA1;Voyant;4;1er;Hall;neuf',
      'ref type qty area area note',
    ],
    ['Device,Unit price,Qty\nLight sensor,35.50,4', 'type price qty'],
    // A number sign heads counts in one office and numbers of lines in another; the column that is left over decides.
    ['Device,No.,Room\nLight sensor,4,Hall\nSignal lamp,2,Hall', 'type qty area'],
    ['No.,Device,Qty\n1,Light sensor,4', 'ref type qty'],
    // «Item» over numbers numbers the lines.
    ['Item,Description,Qty\n1,Light sensor,4\n2,Router,1', 'ref description qty'],
    ['Item,Qty\nLight sensor,4', 'type qty'],
    ['No. of devices,Type of device,Fed from,Bus line\n4,Light sensor,P1,B1', 'qty type rail branch'],
    ['Device,Ground floor,First floor,Total\nRouter,1,2,3\nLight sensor,2,2,4', 'type qty qty total'],
    ['Device,Colour,Qty\nLight sensor,white,4', 'type - qty'],
    ['Light sensor;4\nRouter;1', 'type qty'],
    ['Code;Device;Qty\nLS;Light sensor;4', 'type description qty'],
    ['Symbol;Device;Description;Qty\nLS;Light sensor;ceiling;4', 'type description description qty'],
    ['Device;Volt;Amp\nRouter;1;2', 'type - -'],
    ['4\tLight sensor\tHall', 'qty type area'],
    ['Room 101\tLight sensor\t4\nRoom 102\tRouter\t1', 'area type qty'],
    ['1\tLight sensor\t4\n2\tRouter\t1\n3\tSignal lamp\t1', '- type qty'],
  ])('%j: %s', (source, expected) => {
    expect(fieldsOf(source)).toBe(expected);
  });

  it.each(['en', 'de', 'fr'])('is known from the titles of the sheet of devices in %s', async (language) => {
    const words = await loadWords(language);
    for (const field of TAKEOFF_FIELDS) {
      if (['unit', 'total', 'times', 'price', 'partNumber'].includes(field)) continue;
      const ofType = ['description', 'draw', 'power', 'nodes'].includes(field);
      const { title } = columnOf(ofType ? 'types' : 'devices', field);
      expect([title, headingFields(words.text(title))[0]]).toEqual([title, { field, exact: true }]);
    }
  });

  it('is not guessed where counts of two revisions stand side by side', () => {
    const takeoff = read('Device,Qty old,Qty new\nRouter,1,2\nLight sensor,2,2');
    expect(missingColumns(takeoff.columns)).toEqual(['qty']);
    expect(takeoff.notes.at(-1)).toContain('“Qty old” (2), “Qty new” (2)');
  });

  it('names the columns that are not read', () => {
    expect(read('Device,Colour,Qty\nLight sensor,white,4\nRouter,,1').notes)
      .toEqual(['Columns that are not read, with the number of their values: “Colour” (1).']);
  });

  it('says what is missing, and leaves every line undecided', () => {
    const takeoff = read('Device,Room\nLight sensor,Hall');
    expect(missingColumns(takeoff.columns)).toEqual(['qty']);
    expect(takeoff.notes).toEqual(['No column is known to hold the quantities. Choose the one that does.']);
    expect(takeoff.lines[1]).toMatchObject({ outcome: 'undecided', qty: null });
  });
});

describe('the line of the headings', () => {
  it.each([
    ['Device,Qty\nLight sensor,4', 1],
    ['"Library, north wing",\n\nDevice,Qty\nLight sensor,4', 3],
    ['Counted, checked, signed\nDevice;Room;Qty\nLight sensor;Hall, 1st floor;4', 2],
    ['Light sensor,4\nRouter,1', undefined],
  ])('of %j is %s', (source, line) => {
    expect(read(source).headingLine).toBe(line);
  });
});

it('“Bauteil” is a part of the building beside devices, and a device where nothing else names one', () => {
  expect(fieldsOf('Bauteil;Geschoss;Gerät;Anzahl\nA;EG;Router;2\nB;EG;Router;3')).toBe('area area type qty');
  expect(fieldsOf('Gerät;Bauteil;Anzahl\nRouter;A;2')).toBe('type area qty');
  expect(fieldsOf('Bauteil;Raum;Anzahl\nRouter;Flur;2')).toBe('type area qty');
  // Rooms of two parts are two rooms.
  expect(read('Bauteil;Geschoss;Gerät;Anzahl\nA;EG;Router;2\nB;EG;Router;3').rows).toMatchObject([{ area: 'A, EG', qty: 2 }, { area: 'B, EG', qty: 3 }]);
});

describe('a mapping that is remembered', () => {
  const source = 'What,Where to,How often\nLight sensor,Hall,4\nRouter,Office,1';

  it('goes before what is found out, by heading or by number', () => {
    expect(fieldsOf(source, { What: 'type', 'where TO': 'note', 3: 'qty' })).toBe('type note qty');
    expect(fieldsOf('Device,Qty,Spare\nRouter,1,2', { qty: 'ignore', Spare: 'qty' })).toBe('type - qty');
    expect(read(source, { columns: { What: 'type', 'How often': 'qty' } }))
      .toMatchObject({ headingLine: 1, sums: { taken: 5 } });
  });

  it('is plain data and gives the same columns again', () => {
    const { columns } = read('Room;Qty;Device;Price\nHall;4;Light sensor;9,50');
    const remembered = columnsToRemember(columns);
    expect(remembered).toEqual({ Room: 'area', Qty: 'qty', Device: 'type', Price: 'price' });
    expect(
      fieldsOf('Price;Device;Room;Qty\n9,50;Light sensor;Hall;4', JSON.parse(JSON.stringify(remembered)) as object)
    )
      .toBe('price type area qty');
  });

  it('takes no harm from the names of an object’s own properties', () => {
    expect(fieldsOf('constructor,Device,Qty\nx,Router,1')).toBe('- type qty');
  });
});
