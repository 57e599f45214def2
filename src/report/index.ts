export {
  ALLOWANCE, billCsv, billTables, billXlsx, compareBills, makeBill, type Bill, type BillChange, type BillItem,
  type BillKind,
  type BillOptions, type BillSum, type BillTable,
} from './bill/index.ts';
export { CAUTIONS } from './cautions.ts';
export {
  changesText, compareOutcomes, compareSchedules, onTrial, OUTCOME_FIGURES, tryChanges, type OutcomeFigure,
  type RowComparison, type ScheduleChanges, type RowOutcome, type StandingChange, type TriedChanges,
} from './changes/index.ts';
export {
  checkIssue, fileDigest, issueSchedule, matchesDigest, scheduleDigest, withoutVariants, type Issue,
} from './digest/index.ts';
export { editsTitle, fileText, type FileText } from './file-text.ts';
export { explainedFigure, type ExplainedFigure } from './explained-figure.ts';
export { loadTableCsv } from './load-table-csv.ts';
export { loadTableHtml, type HtmlOptions } from './load-table-html.ts';
export {
  buildReport, FORMS, FORM_TITLES, handedOver, SECTION_NAMES, type Form, type LoadTableOptions, type Report,
  type SectionName,
} from './model/index.ts';
export { panelView } from './panel-view.ts';
export { PAPERS, usualPaper, type Paper } from './paper.ts';
export { partName, proposalSentences } from './rails/index.ts';
export { loadTableXlsx } from './xlsx/index.ts';
export {
  leftOutSentence, WIRING_LISTS, wiringCsv, wiringList, type WiringList, type WiringListName,
} from './wiring/index.ts';
export { tableJson, type TableFinding, type TableJson } from './table-json.ts';
