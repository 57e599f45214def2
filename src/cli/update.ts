import { runUpdate } from './run-update.ts';
import { runFromTerminal } from './streams.ts';

await runFromTerminal(runUpdate);
