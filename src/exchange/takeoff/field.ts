/** What a column of a takeoff can hold. */
export const TAKEOFF_FIELDS = [
  'qty', 'unit', 'type', 'description', 'area', 'ref', 'rail', 'branch', 'note',
] as const;

/** What a column of a takeoff may hold. */
export type TakeoffField = (typeof TAKEOFF_FIELDS)[number];

/** Fields that several columns may hold together, such as storey and room. */
export const JOINED_FIELDS: ReadonlySet<TakeoffField> = new Set(['area', 'note']);
