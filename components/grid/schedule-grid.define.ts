import { defineElement } from '../look/index.ts';
import { ScheduleGrid } from './schedule-grid.ts';

defineElement('elv-schedule-grid', ScheduleGrid);

declare global {
  interface HTMLElementTagNameMap {
    'elv-schedule-grid': ScheduleGrid;
  }
}
