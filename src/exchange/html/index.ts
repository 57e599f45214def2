export { EMBEDDED_ID, embeddedSchedule, isHtml } from './embedded-schedule.ts';
export { readHtmlTables, type HtmlTable } from './read-tables.ts';
export { unescaped } from './unescaped.ts';
