import { message } from '../../src/words/index.ts';

/** A word of the trade as it is used here, the same one everywhere. */
export interface GlossaryEntry {
  readonly word: string;
  readonly meaning: string;
}

/** The words that a person meets first, in the order in which they build on one another. */
export const GLOSSARY: readonly GlossaryEntry[] = [
  {
    word: message('Supply, rail'),
    meaning: message('A supply of 24 V DC or another extra-low voltage, and the conductors that it feeds; named by the tag of its rail.'),
  },
  {
    word: message('Way'),
    meaning: message('One protected way behind a supply: a fuse, a breaker or an electronic channel, which feeds one or several runs.'),
  },
  {
    word: message('Bus branch'),
    meaning: message('One communication branch of the field bus, with a limit on how many nodes it may carry.'),
  },
  {
    word: message('Nodes'), meaning: message('How many bus participants a device counts as on its branch.'),
  },
  {
    word: message('Run'),
    meaning: message('One outgoing field cable: a pair, or several in parallel, that feeds devices along its length.'),
  },
  {
    word: message('Module, output, contact'),
    meaning: message('A relay module; one of its relay outputs; what its contact may switch of each kind of load.'),
  },
  {
    word: message('Feed'),
    meaning: message('The protected mains way that supplies relay outputs and the inputs of supplies.'),
  },
  {
    word: message('Unit draw'), meaning: message('Current of one device at the nominal voltage of its rail.'),
  },
  {
    word: message('Connected, diversity, demand'),
    meaning: message('Quantity × unit draw; the share of it that is expected at the same time, 0 to 1; their product.'),
  },
  {
    word: message('Case, group, factor'),
    meaning: message('A named situation of the building, such as evening or wind alarm; loads that come on together; the share of a group that is on in a case, 0 to 1. Every limit has to hold in every case.'),
  },
  {
    word: message('Loading, headroom'),
    meaning: message('Demand over the usable current; the rating less the current, in amperes.'),
  },
  {
    word: message('Takeoff'), meaning: message('A list of counts from drawings.'),
  },
  {
    word: message('Load table'), meaning: message('The document that is handed over.'),
  },
  {
    word: message('Status'),
    meaning: message('Over a limit, near it, incomplete, accepted with a reason, or within limits: the worst that applies. Within limits only where every check that applies was made.'),
  },
];
