/** What a column of a takeoff can hold. */
export const TAKEOFF_FIELDS = [
  'qty', 'total', 'times', 'unit', 'type', 'description', 'area', 'ref', 'rail', 'branch', 'note',
  'draw', 'power', 'nodes', 'price', 'partNumber',
] as const;

/** What a column may say of the type of its devices: input keys of the sheet of types. */
export const TYPE_FACTS = ['draw', 'power', 'nodes', 'price', 'partNumber'] as const;
/** A fact of a device type that a takeoff may state. */
export type TypeFact = (typeof TYPE_FACTS)[number];

/** What a column of a takeoff may hold. */
export type TakeoffField = (typeof TAKEOFF_FIELDS)[number];

/** Fields that several columns may hold together, such as storey and room, or the counts of each storey. */
export const JOINED_FIELDS: ReadonlySet<TakeoffField> = new Set(['area', 'note', 'qty']);
