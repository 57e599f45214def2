import { defineElement } from '../look/index.ts';
import { ScheduleDrawings } from './schedule-drawings.ts';

defineElement('elv-drawings', ScheduleDrawings);

declare global {
  interface HTMLElementTagNameMap { 'elv-drawings': ScheduleDrawings }
}
