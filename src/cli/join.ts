import { runJoin } from './run-join.ts';
import { runFromTerminal } from './streams.ts';

await runFromTerminal(runJoin);
