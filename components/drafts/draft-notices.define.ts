import { defineElement } from '../look/index.ts';
import { DraftNotices } from './draft-notices.ts';

defineElement('elv-draft-notices', DraftNotices);

declare global {
  interface HTMLElementTagNameMap { 'elv-draft-notices': DraftNotices }
}
