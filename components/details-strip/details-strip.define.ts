import { defineElement } from '../look/index.ts';
import { DetailsStrip } from './details-strip.ts';

defineElement('elv-details-strip', DetailsStrip);

declare global {
  interface HTMLElementTagNameMap { 'elv-details-strip': DetailsStrip }
}
