import { defineElement } from '../look/index.ts';
import { LanguageChoice } from './language-choice.ts';

defineElement('elv-language-choice', LanguageChoice);

declare global {
  interface HTMLElementTagNameMap { 'elv-language-choice': LanguageChoice }
}
