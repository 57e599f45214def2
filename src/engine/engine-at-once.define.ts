import { provideEngine } from './engine-registry.ts';
import { FormulaEngine } from './formula-engine.ts';

// For all but pages: formulas have their figures as soon as a schedule is made.
provideEngine(FormulaEngine);
