import { defineElement } from '../look/index.ts';
import { RemedyList } from './remedy-list.ts';

defineElement('elv-remedy-list', RemedyList);

declare global {
  interface HTMLElementTagNameMap { 'elv-remedy-list': RemedyList }
}
