import { defineElement } from '../look/index.ts';
import { MeasuredValues } from './measured-values.ts';

defineElement('elv-measured-values', MeasuredValues);

declare global {
  interface HTMLElementTagNameMap { 'elv-measured-values': MeasuredValues }
}
