export { EMBEDDED_ID, embeddedSchedule, isHtml } from './embedded-schedule.ts';
