import { defineElement } from '../look/index.ts';
import { Rework } from './rework.ts';

defineElement('elv-rework', Rework);

declare global {
  interface HTMLElementTagNameMap { 'elv-rework': Rework }
}
