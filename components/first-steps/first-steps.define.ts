import { defineElement } from '../look/index.ts';
import { FirstSteps } from './first-steps.ts';
import { TypeChoice } from './type-choice.ts';

defineElement('elv-type-choice', TypeChoice);
defineElement('elv-first-steps', FirstSteps);

declare global {
  interface HTMLElementTagNameMap { 'elv-first-steps': FirstSteps; 'elv-type-choice': TypeChoice }
}
