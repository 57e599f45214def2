import fc from 'fast-check';

// A change is judged by the same random cases as the one before it. `npm run explore` draws others each time, and a
// failure there names its seed.
const SEED = 20_261_130;

if (import.meta.env.MODE !== 'explore') fc.configureGlobal({ seed: SEED });
