import type { InputColumn } from './column.ts';

const TOLERANCE = 'common practice, no source';

/**
 * What is measured at commissioning, and by how much it may differ from what was worked out. Empty until it is
 * measured.
 * @param where says at what place and in which state it is measured: `at its terminals, with its devices on`.
 */
export function measuredColumns(currentWhere: string, voltageWhere: string): readonly InputColumn[] {
  return [
    {
      role: 'input', key: 'measuredCurrent', rare: 'measured',
      title: 'Measured current', kind: 'number', unit: 'A', min: 0, decimals: 2,
      optional: true, help: `Current measured ${currentWhere}.`,
    },
    {
      role: 'input', key: 'measuredVoltage', rare: 'measured', title: 'Measured voltage', kind: 'number', unit: 'V',
      min: -1000, max: 1000, optional: true,
      help: `Voltage measured ${voltageWhere}; below 0 where plus and minus are changed over.`,
    },
    {
      role: 'input', key: 'currentTolerance', rare: 'measured',
      title: 'Current tolerance', kind: 'ratio', above: 0, max: 1, default: 0.1,
      help: 'Share by which the measured current may differ from the one calculated.', source: TOLERANCE,
    },
    {
      role: 'input', key: 'voltageTolerance', rare: 'measured', title: 'Voltage tolerance', kind: 'ratio', above: 0, max: 1,
      default: 0.02, help: 'Share by which the measured voltage may differ from the one calculated.', source: TOLERANCE,
    },
  ];
}
