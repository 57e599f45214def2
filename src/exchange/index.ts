export * from './csv/index.ts';
export { decodeText, encodingNote, type DecodedText, type Encoding } from './decode-text.ts';
export { goneNotes } from './gone-notes.ts';
export { EMBEDDED_ID, embeddedSchedule, isHtml, readHtmlTables, unescaped, type HtmlTable } from './html/index.ts';
export { isScheduleText } from './is-schedule-text.ts';
export * from './json/index.ts';
export * from './problem.ts';
export { railVoltages } from './rail-voltages.ts';
