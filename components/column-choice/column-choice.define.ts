import { defineElement } from '../look/index.ts';
import { ColumnChoice } from './column-choice.ts';

defineElement('elv-column-choice', ColumnChoice);

declare global {
  interface HTMLElementTagNameMap { 'elv-column-choice': ColumnChoice }
}
