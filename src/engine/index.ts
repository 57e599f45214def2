export {
  caseLoadings, LOADED_SHEETS, LOADING_OF, loadingOf, worseFirst, type CaseLoading, type LoadedSheet, type RowLoading,
} from './cases/case-loadings.ts';
export { contributionsTo, type Contributions, type GroupPart, type LoadPart } from './cases/contributions.ts';
export {
  dayHours, HOURS_OF_DAY, profileFigures, sumOfProfiles, togetherFigures, type DayHours, type Profile,
  type ProfileFigures, type TogetherFigures,
} from './cases/profile-figures.ts';
export { tellsMore } from './cases/tells-more.ts';
export { whatMatters, type FactorLimit, type GroupMatter } from './cases/what-matters.ts';
export { CaseTable, countedIn, MOST_CASES, type Case, type GroupFactor } from './cases/case-table.ts';
export { isInSight, panelKeys, panelNames, panelOf, type PanelChoice, type PanelFigures } from './panel-of.ts';
export { explain, explanationText, ruleInGeneral, type Explanation, type ExplanationPart } from './explain.ts';
export { figureOf } from './figure-name.ts';
export { fetchEngine, onceEngineCame } from './engine-registry.ts';
export { outOfRange, READS_EMPTY, WRONG_ARGUMENTS } from './formula-fault.ts';
export { numberOf, textOf } from './read-cell.ts';
export { REFERRED_SHEETS } from './references.ts';
export { LONGEST_WAY } from './formula-loops.ts';
export { lackingBehind, type CellPlace } from './lacking.ts';
export { roomIn, type Room } from './room.ts';
export {
  inCasesOf, RULES, ruleOf, SOLUTIONS, totalOf, TOTALS, worstOf, type Argument, type PreparedRule,
  type PreparedSolution, type PreparedTotal,
} from './schema-rules.ts';
export type { SheetColumns } from './sheet-columns.ts';
export { startingOf } from './starting-of.ts';
export { Touched, type Keys } from './touched.ts';
export { Workbook } from './workbook.ts';
export type { TypedFault } from './typed-formulas.ts';
