import { runTerminals } from './run-terminals.ts';
import { runFromTerminal } from './streams.ts';

await runFromTerminal(runTerminals);
