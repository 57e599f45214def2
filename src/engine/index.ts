export { explain, explanationText, type Explanation, type ExplanationPart } from './explain.ts';
export type { FormulaFault } from './formula-engine.ts';
export { outOfRange, READS_EMPTY, WRONG_ARGUMENTS } from './formula-functions.ts';
export { roomIn, type Room } from './room.ts';
export { RULES, ruleOf, SOLUTIONS, totalOf, TOTALS, type Argument, type PreparedRule, type PreparedSolution, type PreparedTotal } from './schema-rules.ts';
export { Touched } from './touched.ts';
export { Workbook } from './workbook.ts';
