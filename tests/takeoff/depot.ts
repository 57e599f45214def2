import { makeWorkbook } from '../support/make-workbook.ts';

/** The workbook of a depot: a cover, a sheet for each storey, a legend of their codes, a summary, rows that went. */
export function depotWorkbook(): Uint8Array<ArrayBuffer> {
  return makeWorkbook({
    Cover: { rows: [['Tram depot, field devices'], ['Issue of', new Date(Date.UTC(2026, 10, 20))], ['Drawn by', 'A. N. O.']] },
    'Level 0': {
      rows: [
        ['Code', 'Room', 'Qty', 'Qty option', 'Remarks'], ['PD', 'Wash bay', 4, null, null], ['VA', null, 6, 2, null],
        ['GS', null, 3, null, null], ['PD', 'Pit', 2, null, 'as before'], ['CR', 'Gate', 1, null, null],
        ['CR', 'Old gate', 2, null, null], [null, 'Total', 18, 2, null],
      ],
      merged: ['B2:B4'], hiddenColumns: [4], struckRows: [7],
    },
    'Level 1': {
      rows: [
        ['Code', 'Qty'], ['PD', 9], ['RT', 5], ['GS', 2], ['VA', 8], ['Total', 24],
      ],
      hiddenRows: [4],
    },
    Legend: {
      rows: [
        ['Code', 'Description', 'Draw (mA)'], ['PD', 'Presence detector', 12], ['VA', 'Valve actuator', 250],
        ['RT', 'Room thermostat', 18], ['CR', 'Card reader', 120], ['GS', 'Gate switch, roller lever', 4],
      ],
    },
    Summary: { rows: [['Code', 'Qty'], ['PD', 15], ['VA', 14], ['RT', 5], ['GS', 5], ['CR', 3]] },
    'Revision A': { rows: [['Code', 'Qty'], ['PD', 99]], state: 'hidden' },
  });
}
