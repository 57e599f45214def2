import type { Severity, Standing } from '../../findings/index.ts';

export { STATE_WORDS } from '../../findings/index.ts';

/** Shapes tell the states apart where colour does not print. */
export const STATE_SHAPES: Readonly<Record<Standing
  | Severity, string>> = { over: '⚠\ufe0e', near: '◆', incomplete: '○', accepted: '✓', ok: '•', note: '–' };
