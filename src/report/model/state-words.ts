import type { Severity, Status } from '../../findings/index.ts';

/** How something stands, in words. */
export const STATE_WORDS: Readonly<Record<Status | Severity, string>> = {
  over: 'over', near: 'near the limit', incomplete: 'incomplete', ok: 'within limits', note: 'note',
};

/** Shapes tell the states apart where colour does not print. */
export const STATE_SHAPES: Readonly<Record<Status | Severity, string>> = { over: '■', near: '▲', incomplete: '○', ok: '•', note: '–' };
