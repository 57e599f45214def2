import { defineElement } from '../look/index.ts';
import { LoadTable } from './load-table.ts';

defineElement('elv-load-table', LoadTable);

declare global {
  interface HTMLElementTagNameMap { 'elv-load-table': LoadTable }
}
