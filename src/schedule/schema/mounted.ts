import type { InputColumn } from './column.ts';

/**
 * The mounting rail that a part is given by hand.
 * @param part says what stands on it: `it stands on`, `its units stand on`.
 * @param finds says what finds a rail where none is given: `it finds`.
 */
export function mountedOnColumn(part: string, finds: string): InputColumn {
  return {
    role: 'input', key: 'mountedOn', rare: 'mounting', title: 'Mounting rail', kind: 'integer', min: 1, optional: true,
    help: `Number of the mounting rail that ${part}, from the top; empty: wherever ${finds} room.`,
  };
}
