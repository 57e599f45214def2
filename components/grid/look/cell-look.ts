import { SEVERITIES, STATE_WORDS, type Finding, type Severity } from '../../../src/findings/index.ts';
import { findColumn, formatCell, isNumeric, isStatus, type Column } from '../../../src/schedule/index.ts';
import type { Mark } from '../../look/index.ts';
import type { GridModel } from '../grid-model.ts';

/** How a cell looks and what it says beside its text. */
export interface CellLook {
  readonly text: string;
  readonly classes: readonly string[];
  /** What a screen reader hears, and a pointer shows, beside the text. */
  readonly description: string;
  /** Something found in the cell is to be put right. */
  readonly invalid: boolean;
  readonly readOnly: boolean;
  /** The status that the cell holds, shown as shape and word. */
  readonly status?: Mark;
}

/** Whether a finding asks for something and nobody has accepted it. */
export function isOpen({ severity, accepted }: Finding): boolean {
  return severity !== 'note' && accepted === undefined;
}

/** Findings that ask for something and that nobody has accepted. */
export function openFindings(findings: readonly Finding[]): Finding[] {
  return findings.filter(isOpen);
}

/** The worst severity among findings. */
export function worstOf(findings: readonly Finding[]): Severity | undefined {
  return SEVERITIES.find((severity) => findings.some((finding) => finding.severity === severity));
}

/**
 * What stands beside the number of a row: its status, where it has one, else the worst that is open, else that
 * something is accepted; nothing where nothing is to be said.
 */
export function rowMark({ schedule, sheet }: GridModel, id: number, findings: readonly Finding[]): Mark | undefined {
  if (findColumn(sheet, 'status') !== undefined) {
    const standing = schedule.standing(sheet, id);
    return standing === 'ok' ? undefined : standing ?? undefined;
  }
  return worstOf(openFindings(findings)) ?? (findings.some(({ accepted }) => accepted !== undefined) ? 'accepted' : undefined);
}

/** How the cell of a row looks. */
export function cellLook(model: GridModel, id: number, column: Column, findings: readonly Finding[]): CellLook {
  const { schedule, sheet, words } = model;
  const value = schedule.value(sheet, id, column.key);
  const numeric = isNumeric(column);
  const own = column.role === 'input' && schedule.isOwn(sheet, id, column.key);
  const formula = own && numeric ? schedule.formulaText(sheet, id, column.key, words) : undefined;
  const overrides = own && column.derived !== undefined;
  const refused = model.refused.of(sheet, id, column.key);
  const found = openFindings(findings).filter(({ key }) => key === column.key);
  const worst = worstOf(found);
  const classes = [
    column.role === 'computed' ? 'computed' : own ? 'own' : 'default',
    ...(numeric ? ['number'] : []),
    ...(
      column.role === 'input' && (column.kind === 'reference' || column.kind === 'choice' || column.kind === 'boolean')
        ? ['listed'] : []
    ),
    ...(formula === undefined ? [] : ['formula']),
    ...(overrides ? ['overrides'] : []),
    ...(refused === undefined ? [] : ['refused']),
    ...(worst === undefined ? [] : ['found', worst]),
  ];
  const description = [
    ...(formula === undefined ? [] : [words.say('formula {formula}', { formula })]),
    ...(overrides ? [words.say('own value, in place of the one that follows from the type')] : []),
    ...(refused === undefined ? [] : [words.say('not taken: {text}', { text: refused.text }), refused.problem]),
    ...found.map(({ message }) => message),
  ].join('. ');
  const common = { classes, description, invalid: found.length > 0 || refused !== undefined, readOnly: column.role === 'computed' };
  const standing = isStatus(column) ? schedule.standing(sheet, id) : null;
  if (standing !== null) return { ...common, text: words.say(STATE_WORDS[standing]), status: standing };
  const sign = schedule.partialSign(sheet, id, column.key);
  const text = formatCell(column, value, words, 'show');
  return { ...common, text: sign === '' || text === '' ? text : `${sign}\u202f${text}` };
}
