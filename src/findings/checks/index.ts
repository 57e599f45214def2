import { SHEET_NAMES, type SheetName } from '../../schedule/index.ts';
import type { Check } from '../check.ts';
import { branchChecks } from './branch-checks.ts';
import { caseChecks } from './case-checks.ts';
import { cellChecks } from './cell-checks.ts';
import { conductorChecks } from './conductor-checks.ts';
import { contactChecks } from './contact-checks.ts';
import { deviceChecks } from './device-checks.ts';
import { enclosureChecks } from './enclosure-checks.ts';
import { feedChecks } from './feed-checks.ts';
import { hiddenCharacterChecks } from './hidden-characters.ts';
import { measuredChecks } from './measured-checks.ts';
import { moduleChecks } from './module-checks.ts';
import { outputChecks } from './output-checks.ts';
import { runProtectionChecks } from './run-protection.ts';
import { runChecks } from './run-checks.ts';
import { supplyChecks } from './supply-checks.ts';
import { terminalChecks } from './terminal-checks.ts';
import { typeChecks } from './type-checks.ts';
import { voltageChecks } from './voltage-checks.ts';
import { wayChecks } from './way-checks.ts';

const ALL: readonly Check[] = [
  ...supplyChecks, ...wayChecks, ...branchChecks, ...moduleChecks, ...outputChecks, ...contactChecks, ...feedChecks,
  ...runChecks, ...runProtectionChecks, ...enclosureChecks, ...deviceChecks, ...voltageChecks, ...typeChecks,
  ...conductorChecks, ...terminalChecks, ...caseChecks,
  ...measuredChecks, ...cellChecks, ...hiddenCharacterChecks,
];

/** Every check, by the sheet whose rows are held against it. */
export const CHECKS = Object.fromEntries(SHEET_NAMES.map((sheet) =>
  [sheet, ALL.filter((check) => check.sheet === sheet)])) as unknown as Readonly<Record<SheetName, readonly Check[]>>;
