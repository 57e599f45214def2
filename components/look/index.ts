export * from './controls.styles.ts';
export * from './define-element.ts';
export * from './figure.ts';
export * from './icons.ts';
export * from './loading-bar.ts';
export * from './remembered.ts';
export * from './status-mark.ts';
export * from './tokens.styles.ts';
export { today } from './today.ts';
