import { runShare } from './run-share.ts';
import { runFromTerminal } from './streams.ts';

await runFromTerminal(runShare);
