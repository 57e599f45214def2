import { defineElement } from '../look/index.ts';
import { ScheduleJoin } from './schedule-join.ts';

defineElement('elv-schedule-join', ScheduleJoin);

declare global {
  interface HTMLElementTagNameMap { 'elv-schedule-join': ScheduleJoin }
}
