import { defineElement } from '../look/index.ts';
import { SheetView } from './sheet-view.ts';

defineElement('elv-sheet-view', SheetView);

declare global {
  interface HTMLElementTagNameMap { 'elv-sheet-view': SheetView }
}
