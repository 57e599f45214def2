import { defineElement } from '../look/index.ts';
import { ShareOut } from './share-out.ts';

defineElement('elv-share-out', ShareOut);

declare global {
  interface HTMLElementTagNameMap { 'elv-share-out': ShareOut }
}
