/** Sizes and ways round of paper that the load table is laid out for. */
export const PAPERS = ['A4-landscape', 'A4-portrait', 'A3-landscape', 'A3-portrait'] as const;
/** A size of paper and which way round it lies. */
export type Paper = (typeof PAPERS)[number];
