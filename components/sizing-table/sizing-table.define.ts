import { defineElement } from '../look/index.ts';
import { SizingTable } from './sizing-table.ts';

defineElement('elv-sizing-table', SizingTable);

declare global {
  interface HTMLElementTagNameMap { 'elv-sizing-table': SizingTable }
}
