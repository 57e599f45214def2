export { RevisedList } from './revised-list.ts';
export { revisedListStyles } from './revised-list.styles.ts';
