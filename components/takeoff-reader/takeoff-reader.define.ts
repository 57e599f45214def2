import { defineElement } from '../look/index.ts';
import { TakeoffReader } from './takeoff-reader.ts';

defineElement('elv-takeoff-reader', TakeoffReader);

declare global {
  interface HTMLElementTagNameMap { 'elv-takeoff-reader': TakeoffReader }
}
