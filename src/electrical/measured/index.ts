export * from './expected-drop.ts';
export * from './measured-state.ts';
