import { defineElement } from '../look/index.ts';
import { BillTable } from './bill-table.ts';

defineElement('elv-bill-table', BillTable);

declare global {
  interface HTMLElementTagNameMap { 'elv-bill-table': BillTable }
}
