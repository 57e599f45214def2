import { defineElement } from '../look/index.ts';
import { RowsOffer } from './rows-offer.ts';

defineElement('elv-rows-offer', RowsOffer);

declare global {
  interface HTMLElementTagNameMap { 'elv-rows-offer': RowsOffer }
}
