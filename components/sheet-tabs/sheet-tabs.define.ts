import { defineElement } from '../look/index.ts';
import { SheetTabs } from './sheet-tabs.ts';

defineElement('elv-sheet-tabs', SheetTabs);

declare global {
  interface HTMLElementTagNameMap { 'elv-sheet-tabs': SheetTabs }
}
