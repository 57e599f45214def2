/**
 * The load schedule without a screen: what pages, servers and commands use. Needs no browser.
 *
 * A schedule is made from a content, worked out at once, and changed by lists of changes, which `act` carries out as
 * one action:
 * `schedule.act('Rating', setCells(schedule.document, [{ sheet: 'supplies', id, key: 'rated', value: 10 }]))`.
 */
import './engine/engine-at-once.define.ts';

export { LoadSchedule, type LoadScheduleOptions, type ScheduleEvent } from './load-schedule.ts';

// The schema, and the document that follows it.
export {
  columnOf, computedColumns, DETAIL_KEYS, findColumn, inputColumns, SCHEMA, SHEET_NAMES, tagOf, titleWithUnit,
  type Acceptance, type Cells, type CellValue, type Change, type Column, type ColumnKind, type ComputedColumn,
  type Content,
  type DetailKey, type Details, type FormulaProblem, type InputColumn, type Revision, type Row, type RowAcceptance,
  type ScheduleDocument, type Sheet, type SheetName, type Suggestion, type Variant, type VariantPart,
} from './schedule/index.ts';

// What a person does, as changes.
export {
  insertRows, moveRows, pasteCells, removeRows, renameTag, setCells, setRevisions, type CellEdit,
} from './schedule/index.ts';

// Cells as texts.
export { checkCell, formatCell, parseCell, type CellContext, type ParsedCell } from './schedule/index.ts';

// Why a figure is what it is, how many more fit, what was found.
export {
  explanationText, isInSight, panelNames, panelOf, type Explanation, type ExplanationPart, type PanelChoice,
  type Room, type Touched,
} from './engine/index.ts';
export { explainCell, roomFor } from './explanations.ts';
export {
  SEVERITIES, type Finding, type Remedy, type Severity, type Standing, type Status, type StatusMove,
} from './findings/index.ts';

// Files.
export {
  FORMAT, jsonSchema, railVoltages, readCsv, readSchedule, VERSION, writeCsv, writeSchedule,
  type Problem, type ProblemCode, type ReadCsv, type ReadSchedule, type Unreadable,
} from './exchange/index.ts';
export { openWorkbook, type SheetRows, type Workbook } from './exchange/workbook/index.ts';
// Takeoffs, and what is taken of a list that comes again.
export {
  columnsToRemember, countedList, missingColumns, officeColumns, partOf, readListFile, readTakeoff, takeoffChanges,
  takeoffLabel, withOfficeNames,
  type CountedList, type LineDecision, type LineFlag, type LineSource, type ListCells, type ListFile,
  type NameDecision, type OpenLine, type RememberedColumns, type Takeoff, type TakeoffColumn, type TakeoffDecisions,
  type TakeoffField, type TakeoffLine, type TakeoffName, type TakeoffOptions, type TakeoffOutcome, type TakeoffPart,
  type TakeoffSource, type TakeoffSums, type TakeoffTable,
} from './exchange/takeoff/index.ts';
export {
  askedRows, countOutcomes, reviseSchedule, revisionChanges, revisionLabel, withAsked,
  type ListRevision, type Matched, type RevisedList, type RevisedOutcome, type RevisedRow, type RevisedSchedule,
  type RevisionOptions,
} from './exchange/revision/index.ts';

// Sheets updated from lists by tag, and two schedules joined.
export {
  compareWithList, LIST_SHEETS, LIST_WAYS, readList, replaceWithList, takeList, updateChanges, updateCounts,
  updateLabel,
  type CellUpdate, type ContentWithList, type LeftOutRow, type ListRows, type ListUpdate, type ListWay,
  type ReadList, type RowUpdate,
  type TakenList, type UpdateOptions,
} from './exchange/update/index.ts';
export {
  conflictRow, conflictSentence, joinSchedules, joinSentences, type Join, type JoinChoice, type JoinConflict,
  type JoinedRow,
} from './exchange/join/index.ts';

// Variants: what is tried out beside a schedule.
export {
  dropVariant, freeName, joinVariant, keepVariant, makeVariant, variantOf, withoutVariant, type VariantAbout,
} from './exchange/variants/index.ts';

// Duplicating, moving, swapping: changes of many rows that belong together.
export {
  belongingRows, DUPLICATED, duplicateRows, moveDevices, ownOfType, proposeRenamings, renamedTag, rowsToSwap,
  sumDevices, swapType, TYPE_VALUES, type CopiedRow, type DeviceMove, type DeviceSums, type DuplicatedSheet,
  type DuplicateOf, type DuplicatePlan, type Duplication, type MovePlan, type PartlyFate, type PartlyMoved,
  type Renaming, type RowIds, type SharedWay, type TypeSwap, type WayFate,
} from './rework/index.ts';

// Sharing devices out over branches and supplies, and sizing.
export {
  createSized, OFFICE_LISTS, readSharing, shareChanges, shareOut, sizePanel, sizingCsv,
  type AddedBin, type CapacityLimit, type Filling, type LeftOut, type LeftOutCode, type MadeRows, type OfficeLists,
  type Placement, type ShareBin, type SharedSheet, type ShareGroup, type ShareRequest, type ShareRow, type Sharing,
  type SharingLimit, type SharingOptions, type SharingProblem, type SharingProgress, type SizingOptions,
  type SizingRow,
} from './allocation/index.ts';

// The bill of quantities.
export {
  ALLOWANCE, billCsv, billTables, billXlsx, compareBills, makeBill,
  type Bill, type BillChange, type BillItem, type BillKind, type BillOptions, type BillSum, type BillTable,
} from './report/index.ts';

// The load table, what changed, the digest.
export {
  buildReport, changesText, checkIssue, compareOutcomes, compareSchedules, fileDigest, issueSchedule, loadTableCsv,
  loadTableHtml,  loadTableXlsx, matchesDigest, OUTCOME_FIGURES, PAPERS,
  panelView, scheduleDigest, tableJson, tryChanges, withoutVariants,
  type HtmlOptions, type Issue, type LoadTableOptions, type OutcomeFigure, type Paper, type Report, type RowComparison,
  type RowOutcome,
  type ScheduleChanges,
  type StandingChange, type TableFinding, type TableJson, type TriedChanges,
} from './report/index.ts';

// The languages in which all of it speaks.
export { ENGLISH, LANGUAGES, languageOf, loadWords, type Language, type Words } from './words/index.ts';
