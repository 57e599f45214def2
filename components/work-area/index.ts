export { percentField } from './percent-field.ts';
export { WorkArea } from './work-area.ts';
export { workAreaStyles } from './work-area.styles.ts';
