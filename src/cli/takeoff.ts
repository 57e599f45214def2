import { runTakeoff } from './run-takeoff.ts';
import { runFromTerminal } from './streams.ts';

await runFromTerminal(runTakeoff);
