import { defineElement } from '../look/index.ts';
import { FindBar } from './find-bar.ts';
import { GoToBar } from './go-to-bar.ts';

defineElement('elv-find-bar', FindBar);
defineElement('elv-go-to-bar', GoToBar);

declare global {
  interface HTMLElementTagNameMap {
    'elv-find-bar': FindBar;
    'elv-go-to-bar': GoToBar;
  }
}
