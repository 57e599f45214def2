import './parts.define.ts';
import { defineElement } from '../look/index.ts';
import type { ElvColumnsEvent } from '../takeoff-reader/columns-event.ts';
import type { ElvChangeEvent, ElvErrorEvent, ElvLanguageEvent, ElvLoadEvent, ElvSaveEvent } from './events.ts';
import { LoadScheduleElement } from './load-schedule.ts';

defineElement('elv-load-schedule', LoadScheduleElement);

declare global {
  interface HTMLElementTagNameMap { 'elv-load-schedule': LoadScheduleElement }
  interface HTMLElementEventMap {
    'elv-change': ElvChangeEvent;
    'elv-load': ElvLoadEvent;
    'elv-save': ElvSaveEvent;
    'elv-error': ElvErrorEvent;
    'elv-language': ElvLanguageEvent;
    'elv-columns': ElvColumnsEvent;
  }
}
