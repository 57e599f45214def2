import { defineElement } from '../look/index.ts';
import { ScheduleToolbar } from './schedule-toolbar.ts';

defineElement('elv-schedule-toolbar', ScheduleToolbar);

declare global {
  interface HTMLElementTagNameMap { 'elv-schedule-toolbar': ScheduleToolbar }
}
