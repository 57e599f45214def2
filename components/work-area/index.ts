export { extensionField } from './extension-field.ts';
export { WorkArea } from './work-area.ts';
export { workAreaStyles } from './work-area.styles.ts';
