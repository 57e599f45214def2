import '../acceptance-form/acceptance-form.define.ts';
import { defineElement } from '../look/index.ts';
import { CellExplanation } from './cell-explanation.ts';

defineElement('elv-cell-explanation', CellExplanation);

declare global {
  interface HTMLElementTagNameMap { 'elv-cell-explanation': CellExplanation }
}
