import type { Severity, Status } from './finding.ts';

/** What a status or a severity is called. */
export const STATE_WORDS: Readonly<Record<Status | Severity, string>> = {
  over: 'over', near: 'near the limit', incomplete: 'incomplete', ok: 'within limits', note: 'note',
};
