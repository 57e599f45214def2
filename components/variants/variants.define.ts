import { defineElement } from '../look/index.ts';
import { TrialBar } from './trial-bar.ts';
import { Variants } from './variants-area.ts';

defineElement('elv-variants', Variants);
defineElement('elv-trial-bar', TrialBar);

declare global {
  interface HTMLElementTagNameMap { 'elv-variants': Variants; 'elv-trial-bar': TrialBar }
}
