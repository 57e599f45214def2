import type { Finding } from '../findings/index.ts';

/** Whether there may be something to try that puts it right, without trying it. */
export const mayHaveRemedies = ({ sheet, severity }: Finding): boolean =>
  ['runs', 'ways', 'supplies'].includes(sheet) && (severity === 'over' || severity === 'near');
