import { defineElement } from '../look/index.ts';
import type { ElvColumnsEvent } from './columns-event.ts';
import { TakeoffReader } from './takeoff-reader.ts';

defineElement('elv-takeoff-reader', TakeoffReader);

declare global {
  interface HTMLElementTagNameMap { 'elv-takeoff-reader': TakeoffReader }
  interface HTMLElementEventMap { 'elv-columns': ElvColumnsEvent }
}
