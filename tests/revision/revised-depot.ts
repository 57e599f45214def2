import { makeWorkbook } from '../support/make-workbook.ts';

/** The workbook of the depot, revised: one detector more, no gate reader, one thermostat less, another storey. */
export function revisedDepotWorkbook(): Uint8Array<ArrayBuffer> {
  return makeWorkbook({
    'Level 0': {
      rows: [
        ['Code', 'Room', 'Qty', 'Qty option', 'Remarks'], ['PD', 'Wash bay', 5, null, null], ['VA', null, 6, 2, null],
        ['GS', null, 3, null, null], ['PD', 'Pit', 2, null, 'as before'], [null, 'Total', 16, 2, null],
      ],
      merged: ['B2:B4'], hiddenColumns: [4],
    },
    'Level 1': {
      rows: [['Code', 'Qty'], ['PD', 9], ['RT', 4], ['GS', 2], ['VA', 8], ['Total', 23]], hiddenRows: [4],
    },
    'Level 2': { rows: [['Code', 'Qty'], ['PD', 3]] },
    Legend: {
      rows: [
        ['Code', 'Description', 'Draw (mA)'], ['PD', 'Presence detector', 12], ['VA', 'Valve actuator', 250],
        ['RT', 'Room thermostat', 18], ['CR', 'Card reader', 120], ['GS', 'Gate switch, roller lever', 4],
      ],
    },
  });
}
