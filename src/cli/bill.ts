import { runBill } from './run-bill.ts';
import { runFromTerminal } from './streams.ts';

await runFromTerminal(runBill);
