import '../rows-offer/rows-offer.define.ts';
import { defineElement } from '../look/index.ts';
import { OfficeList } from './office-list.ts';

defineElement('elv-office-list', OfficeList);

declare global {
  interface HTMLElementTagNameMap { 'elv-office-list': OfficeList }
}
