import { defineElement } from '../look/index.ts';
import { WhatMatters } from './what-matters.ts';

defineElement('elv-what-matters', WhatMatters);

declare global {
  interface HTMLElementTagNameMap { 'elv-what-matters': WhatMatters }
}
