import { defineElement } from '../look/index.ts';
import { ColumnSightChoice } from './column-sight.ts';

defineElement('elv-column-sight', ColumnSightChoice);

declare global {
  interface HTMLElementTagNameMap { 'elv-column-sight': ColumnSightChoice }
}
