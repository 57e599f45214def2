import { defineElement } from '../look/index.ts';
import { SchedulePanel } from './schedule-panel.ts';

defineElement('elv-schedule-panel', SchedulePanel);

declare global {
  interface HTMLElementTagNameMap { 'elv-schedule-panel': SchedulePanel }
}
