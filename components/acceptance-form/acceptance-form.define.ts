import { defineElement } from '../look/index.ts';
import { AcceptanceForm } from './acceptance-form.ts';

defineElement('elv-acceptance-form', AcceptanceForm);

declare global {
  interface HTMLElementTagNameMap { 'elv-acceptance-form': AcceptanceForm }
}
