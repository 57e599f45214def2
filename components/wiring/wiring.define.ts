import { defineElement } from '../look/index.ts';
import { WiringArea } from './wiring-area.ts';
import { WiringProgress } from './wiring-progress.ts';

defineElement('elv-wiring', WiringArea);
defineElement('elv-wiring-progress', WiringProgress);

declare global {
  interface HTMLElementTagNameMap { 'elv-wiring': WiringArea; 'elv-wiring-progress': WiringProgress }
}
