import type { Form } from './model/forms.ts';

/** Sizes and ways round of paper that the load table is laid out for. */
export const PAPERS = ['A4-landscape', 'A4-portrait', 'A3-landscape', 'A3-portrait'] as const;
/** A size of paper and which way round it lies. */
export type Paper = (typeof PAPERS)[number];

/** The paper that a form of the load table is printed on where nobody says another. */
export const usualPaper = (form: Form | undefined): Paper =>
  form === undefined || form === 'full' ? 'A4-landscape' : 'A4-portrait';
