export { explain, explanationText, type Explanation, type ExplanationPart } from './explain.ts';
export { MOST_ROWS } from './formula-engine.ts';
export { outOfRange } from './formula-functions.ts';
export { RULES, ruleOf, totalOf, TOTALS, type Argument, type PreparedRule, type PreparedTotal } from './schema-rules.ts';
export { Touched } from './touched.ts';
export { Workbook, type FormulaFault } from './workbook.ts';
