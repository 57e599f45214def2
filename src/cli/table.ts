import { runTable } from './run-table.ts';
import { runFromTerminal } from './streams.ts';

await runFromTerminal(runTable);
