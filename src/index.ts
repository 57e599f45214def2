/**
 * The load schedule without a screen: what pages, servers and commands use. Needs no browser.
 *
 * A schedule is made from a content, worked out at once, and changed by lists of changes, which `act` carries out as
 * one action:
 * `schedule.act('Rating', setCells(schedule.document, [{ sheet: 'supplies', id, key: 'rated', value: 10 }]))`.
 */
export { LoadSchedule, type LoadScheduleOptions, type ScheduleEvent } from './load-schedule.ts';

// The schema, and the document that follows it.
export {
  columnOf, computedColumns, DETAIL_KEYS, findColumn, inputColumns, SCHEMA, SHEET_NAMES, tagOf, titleWithUnit,
  type Acceptance, type Cells, type CellValue, type Change, type Column, type ColumnKind, type ComputedColumn,
  type Content,
  type DetailKey, type Details, type FormulaProblem, type InputColumn, type Revision, type Row, type RowAcceptance,
  type ScheduleDocument, type Sheet, type SheetName, type Suggestion,
} from './schedule/index.ts';

// What a person does, as changes.
export {
  insertRows, moveRows, pasteCells, removeRows, renameTag, setCells, setRevisions, type CellEdit,
} from './schedule/index.ts';

// Cells as texts.
export { checkCell, formatCell, parseCell, type CellContext, type ParsedCell } from './schedule/index.ts';

// Why a figure is what it is, how many more fit, what was found.
export { explanationText, type Explanation, type ExplanationPart, type Room, type Touched } from './engine/index.ts';
export { SEVERITIES, type Finding, type Remedy, type Severity, type Status } from './findings/index.ts';

// Files.
export {
  FORMAT, jsonSchema, readCsv, readSchedule, VERSION, writeCsv, writeSchedule,
  type Problem, type ProblemCode, type ReadCsv, type ReadSchedule, type Unreadable,
} from './exchange/index.ts';
export { openWorkbook, type SheetRows, type Workbook } from './exchange/workbook/index.ts';
export {
  columnsToRemember, missingColumns, readTakeoff, takeoffChanges, takeoffLabel,
  type LineDecision, type NameDecision, type RememberedColumns, type Takeoff, type TakeoffColumn, type TakeoffDecisions,
  type LineFlag, type LineSource, type ListCells, type TakeoffField, type TakeoffLine, type TakeoffPart,
  type TakeoffName, type TakeoffOptions, type TakeoffOutcome, type TakeoffSource, type TakeoffTable,
  type TakeoffSums,
} from './exchange/takeoff/index.ts';

// Sharing devices out over branches and supplies, and sizing.
export {
  createSized, OFFICE_LISTS, readSharing, shareChanges, shareOut, sizePanel, sizingCsv,
  type AddedBin, type CapacityLimit, type Filling, type LeftOut, type LeftOutCode, type OfficeLists, type Placement, type ShareBin,
  type SharedSheet,
  type ShareGroup, type ShareRequest, type ShareRow, type Sharing, type SharingOptions, type SharingProblem,
  type SharingLimit, type SharingProgress,
  type MadeRows, type SizingOptions, type SizingRow,
} from './allocation/index.ts';

// The bill of quantities.
export {
  billCsv, billXlsx, compareBills, makeBill,
  type Bill, type BillChange, type BillItem, type BillKind, type BillOptions, type BillSum,
} from './report/index.ts';

// The load table, what changed, the digest.
export {
  buildReport, changesText, compareSchedules, loadTableCsv, loadTableHtml, loadTableXlsx, matchesDigest, PAPERS,
  scheduleDigest, tableJson,
  type HtmlOptions, type LoadTableOptions, type Paper, type Report, type ScheduleChanges, type TableFinding,
  type TableJson,
} from './report/index.ts';

// The languages in which all of it speaks.
export { ENGLISH, LANGUAGES, languageOf, loadWords, type Language, type Words } from './words/index.ts';
