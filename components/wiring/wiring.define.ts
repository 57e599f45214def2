import { defineElement } from '../look/index.ts';
import { WiringArea } from './wiring-area.ts';

defineElement('elv-wiring', WiringArea);

declare global {
  interface HTMLElementTagNameMap { 'elv-wiring': WiringArea }
}
