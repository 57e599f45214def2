import { runChanges } from './run-changes.ts';
import { runFromTerminal } from './streams.ts';

await runFromTerminal(runChanges);
