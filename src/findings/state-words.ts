import { message } from '../words/index.ts';
import type { Severity, Standing } from './finding.ts';

/** What a status or a severity is called. */
export const STATE_WORDS: Readonly<Record<Standing | Severity, string>> = {
  over: message('over limit'),
  near: message('near limit'),
  incomplete: message('incomplete'),
  accepted: message('accepted'),
  ok: message('within limits'),
  note: message('note'),
};
