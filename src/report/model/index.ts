export { buildReport, changesSince, type LoadTableOptions } from './build-report.ts';
export { FORMS, FORM_TITLES, handedOver, isIn, SECTION_NAMES, type Form, type Handed, type SectionName } from './forms.ts';
export type * from './report.ts';
export { STATE_SHAPES, STATE_WORDS } from './state-words.ts';
