import { describe, expect, it } from 'vitest';
import type { TakeoffSource } from '../../src/exchange/takeoff/index.ts';
import { makeWorkbook } from '../support/make-workbook.ts';
import { read, tablesOfWorkbook } from './support.ts';

const taken = (source: TakeoffSource) => read(source).rows.map(({ qty, type, area }) => `${qty as number} ${type as string} @ ${area as string}`);

describe('headings in two lines', () => {
  const buildings = [['Device', 'Building A', null, 'Building B', null], [null, 'L0', 'L1', 'L0', 'L1'], ['Router', 1, 2, 3, 4], ['Light sensor', 5, null, 6, 7]];
  const expected = [
    '1 Router @ Building A L0', '2 Router @ Building A L1', '3 Router @ Building B L0', '4 Router @ Building B L1',
    '5 Light sensor @ Building A L0', '6 Light sensor @ Building B L0', '7 Light sensor @ Building B L1',
  ];

  it.each([{ merged: ['A1:A2', 'B1:C1', 'D1:E1'] }, { merged: [] }])('are read together, merged or not: $merged', async ({ merged }) => {
    expect(taken(await tablesOfWorkbook(makeWorkbook({ A: { merged, rows: buildings } })))).toEqual(expected);
    expect(taken(buildings.map((cells) => cells.map((cell) => cell ?? '').join(';')).join('\n'))).toEqual(expected);
  });

  it('say the storey of counts also where the lower line has most of the words', async () => {
    const rows = [['Device', 'Ground floor', null, 'First floor', null], [null, 'Qty', 'Spare', 'Qty', 'Spare'], ['Router', 1, 2, 3, 4]];
    const { lines } = read(await tablesOfWorkbook(makeWorkbook({ A: { merged: ['A1:A2', 'B1:C1', 'D1:E1'], rows } })));
    expect(lines.filter(({ qty }) => qty !== null).map(({ outcome, qty, area }) => `${outcome} ${qty} ${area}`))
      .toEqual(['taken 1 Ground floor', 'undecided 2 null', 'taken 3 First floor', 'undecided 4 null']);
    expect(taken(';;Ground floor;;First floor;\nRoom;Device;Qty;Spare;Qty;Spare\nR1;Router;1;;3;'))
      .toEqual(['1 Router @ R1, Ground floor', '3 Router @ R1, First floor']);
  });

  it('are no title and its headings, nor headings and the first line', () => {
    expect(taken('Count of the hotel;;\nRoom;Device;Qty\nHall;Router;1')).toEqual(['1 Router @ Hall']);
    expect(taken('Hotel;;\nNo.;Device;Qty\n1;Router;1\n2;Light sensor;4')).toEqual(['1 Router @ undefined', '4 Light sensor @ undefined']);
    expect(read('Device;Qty;\nRouter;ca. 4;left').sums).toMatchObject({ read: 4, undecided: 4 });
    expect(taken('Device;Qty;Note;\nRouter;1;left;right\nRouter;2;;')).toEqual(['3 Router @ undefined']);
  });

  it('may be repeated on the next page', () => {
    expect(taken('Device;Building A;\n;L0;L1\nRouter;1;2\nDevice;Building A;\n;L0;L1\nLight sensor;3;4'))
      .toEqual(['1 Router @ Building A L0', '2 Router @ Building A L1', '3 Light sensor @ Building A L0', '4 Light sensor @ Building A L1']);
  });
});

describe('the same room of two storeys', () => {
  it('is two rooms below two titles, and one where the title comes again', () => {
    expect(taken('Room;Device;Qty\nGround floor;;\nR1;Router;1\nFirst floor;;\nR1;Router;2\nfirst floor;;\nR1;Router;4'))
      .toEqual(['1 Router @ Ground floor, R1', '6 Router @ First floor, R1']);
  });

  it('is two rooms on two sheets, each with its storey, unless it says that itself', () => {
    const list = (room: string) => `Room;Device;Qty\n${room};Router;1`;
    expect(taken([{ cells: list('R1'), sheet: 'EG' }, { cells: list('R1'), sheet: 'OG' }])).toEqual(['1 Router @ EG, R1', '1 Router @ OG, R1']);
    expect(taken([{ cells: list('EG R1'), sheet: 'EG' }, { cells: list('R1'), sheet: 'Takeoff' }])).toEqual(['1 Router @ EG R1', '1 Router @ R1']);
  });

  it('is not told by a remark, nor where a column says the storey', () => {
    expect(taken('Room;Device;Qty\nsee the plan of the roof for masts;;\nR1;Router;1')).toEqual(['1 Router @ R1']);
    expect(taken('Ground floor;;;\nStorey;Room;Device;Qty\nL0;R1;Router;1')).toEqual(['1 Router @ L0, R1']);
  });
});

describe('titles over titles', () => {
  const building = 'Device;Qty\nBuilding A;\nLevel 1;\nRouter;1\nLevel 2;\nRouter;2\nCorridor;\nRouter;4\nOffice;\nRouter;8\nLevel 3;\nRouter;16\n'
    + 'Building B;\nRouter;32\nLevel 1;\nRouter;64';

  it('are all kept: storeys of a building, rooms of a storey, until the next of their kind', () => {
    expect(taken(building)).toEqual([
      '1 Router @ Building A, Level 1', '2 Router @ Building A, Level 2', '4 Router @ Building A, Level 2, Corridor',
      '8 Router @ Building A, Level 2, Office', '16 Router @ Building A, Level 3', '32 Router @ Building B', '64 Router @ Building B, Level 1',
    ]);
    expect(read(building).lines.find(({ qty }) => qty === 1)!.reason).toContain('Its area is what stands above it: Building A, Level 1.');
  });

  it('stand before the rooms of a column, and behind the name of the sheet', () => {
    const rooms = 'Room;Device;Qty\nHaus 1;;\nErdgeschoss;;\nFlur;Router;1\n1. Obergeschoss;;\nFlur;Router;2\nHaus 2;;\nErdgeschoss;;\nFlur;Router;4';
    expect(taken(rooms)).toEqual([
      '1 Router @ Haus 1, Erdgeschoss, Flur', '2 Router @ Haus 1, 1. Obergeschoss, Flur', '4 Router @ Haus 2, Erdgeschoss, Flur',
    ]);
    expect(taken([{ cells: 'Device;Qty\nLevel 1;\nRouter;1', sheet: 'Building A' }, { cells: 'Device;Qty\nLevel 1;\nRouter;2', sheet: 'Building B' }]))
      .toEqual(['1 Router @ Building A, Level 1', '2 Router @ Building B, Level 1']);
  });

  it('hold above the headings too', () => {
    expect(taken('Housing by the lake;;\n;;\nHaus 1;;\nErdgeschoss;;\nDevice;Qty;Note\nRouter;1;\n1. Obergeschoss;;\nRouter;2;'))
      .toEqual(['1 Router @ Haus 1, Erdgeschoss', '2 Router @ Haus 1, 1. Obergeschoss']);
  });

  it('whichever goes over the other', () => {
    expect(taken('Appareil;Qté\nR+1;\nBâtiment A;\nRouter;1\nBâtiment B;\nRouter;2\nR+2;\nBâtiment A;\nRouter;4'))
      .toEqual(['1 Router @ R+1, Bâtiment A', '2 Router @ R+1, Bâtiment B', '4 Router @ R+2, Bâtiment A']);
  });

  it('are no places where they only head the list or come again on the next page', () => {
    expect(taken('Device;Qty\nField devices of the controls;\nLevel 1;\nRouter;1\nLevel 1;\nRouter;2')).toEqual(['3 Router @ Level 1']);
  });

  it('keep what is built several times: a room of a flat that is there three times', () => {
    const { rows, lines } = read('Device;Qty\nFlat type A (x3);\nKitchen;\nRouter;2\nBath;\nRouter;1\nFlat type B;\nRouter;5');
    expect(lines.filter(({ qty }) => qty !== null).map(({ outcome, qty, area }) => `${outcome} ${qty} ${area}`)).toEqual([
      'undecided 6 Flat type A (x3), Kitchen', 'undecided 3 Flat type A (x3), Bath', 'taken 5 Flat type B',
    ]);
    expect(rows).toHaveLength(1);
  });

  it('leave the keys of decisions as they are', () => {
    expect(read(building).lines.map(({ key }) => key)).toEqual(building.split('\n').map((_, index) => String(index + 1)));
  });
});
