import { defineElement } from '../look/index.ts';
import { HelpPane } from './help-pane.ts';

defineElement('elv-help', HelpPane);

declare global {
  interface HTMLElementTagNameMap { 'elv-help': HelpPane }
}
