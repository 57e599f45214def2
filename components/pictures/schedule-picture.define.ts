import { defineElement } from '../look/index.ts';
import { SchedulePicture } from './schedule-picture.ts';

defineElement('elv-picture', SchedulePicture);

declare global {
  interface HTMLElementTagNameMap { 'elv-picture': SchedulePicture }
}
