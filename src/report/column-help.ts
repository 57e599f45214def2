import { ruleInGeneral } from '../engine/index.ts';
import { allowedText, columnOf, titleWithUnit, withUnit, type Column, type SheetName } from '../schedule/index.ts';
import type { Words } from '../words/index.ts';

/** What a person may want to know of a column, in their language; every word of it follows from the schema. */
export interface ColumnHelp {
  /** With the unit: `Rated (A)`. */
  readonly title: string;
  /** One line that says what the column means. */
  readonly help: string;
  /** What is allowed, what an empty cell counts as, the rule, and where these come from. */
  readonly facts: readonly { readonly name: string; readonly text: string }[];
}

/** The help of a column: unit, range, default, rule and source. */
export function columnHelp(sheet: SheetName, column: Column, words: Words): ColumnHelp {
  const facts = [
    ...column.role === 'input' ? inputFacts(sheet, column, words) : computedFacts(sheet, column, words),
    { name: words.say('In files'), text: `${sheet}.${column.key}` },
  ];
  return { title: titleWithUnit(column, words), help: words.text(column.help), facts };
}

type Facts = ColumnHelp['facts'];

function inputFacts(sheet: SheetName, column: Extract<Column, { role: 'input' }>, words: Words): Facts {
  const { default: otherwise, derived, suggestions = [], optional, source } = column;
  return [
    { name: words.say('May be entered'), text: allowedText(column, words) },
    ...otherwise === undefined ? [] : [{ name: words.say('Empty'), text: withUnit(column, otherwise, words) }],
    ...derived === undefined ? [] : [{ name: words.say('Empty'), text: ruleInGeneral(sheet, derived, words) }],
    ...optional === true
      ? [{ name: words.say('Empty'), text: words.say('What is held against it is not checked.') }] : [],
    ...suggestions.map(({ label, value, source: from }) =>
      ({ name: words.text(label), text: `${withUnit(column, value, words)}; ${words.text(from)}` })),
    ...[source, derived?.source].flatMap((each) => each === undefined ? [] : [sourced(each, words)]),
  ];
}

function computedFacts(sheet: SheetName, column: Extract<Column, { role: 'computed' }>, words: Words): Facts {
  const { rule, total, solved, caseTotal, inMarkedCase, inCases, worstOf } = column;
  const said = rule ?? solved ?? (inMarkedCase && { ...inMarkedCase, of: [inMarkedCase.of] });
  const gathered = total ?? caseTotal;
  return [
    ...said === undefined ? [] : [{ name: words.say('Rule'), text: ruleInGeneral(sheet, said, words) }],
    ...gathered === undefined ? [] : [{ name: words.say('Rule'), text: words.text(gathered.words) }],
    ...worstOf === undefined ? [] : [{
      name: words.say('Rule'), text: words.say('the case that makes {figure} what it is', { figure: words.within(columnOf(sheet, worstOf).title) }),
    }],
    ...typeof inCases !== 'string' ? [] : [{
      name: words.say('Cases'), text: inCases === 'highest' ? words.say('The highest of all cases that count.')
        : words.say('The lowest of all cases that count.'),
    }],
    ...[said?.source ?? gathered?.source].flatMap((each) => each === undefined ? [] : [sourced(each, words)]),
  ];
}

const sourced = (source: string, words: Words): Facts[number] =>
  ({ name: words.say('Source'), text: words.text(source) });
