// Weighs what a page loads, gzipped, against the budgets and against the sizes last recorded.
// `npm run size -- --record` records today's.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { projectFolder } from './project-folder.mjs';
import { readJson } from './read-json.mjs';

/**
 * A file of the build, as Vite's manifest describes it.
 * @typedef {{ file: string, isEntry?: boolean, name?: string, imports?: string[], dynamicImports?: string[] }} Chunk
 */

/**
 * What stands before the first paint; with the grid and the overview, what every page with a key waits for; with the
 * tools, what explains figures and the formula engine, what every such page has fetched in the end, once it is idle:
 * the budget of the grid leaves these out, though all pages load them, since nobody waits for them unless a file has
 * formulas; with the work areas (takeoff, sharing out, sizing, load table, pictures), the bars to find and replace,
 * drafts and the reader of workbooks, each loaded when it is needed, everything; and apart from these, the words of the
 * larger of the languages beside English, which only a page in it loads.
 */
const budgetsKilobytes = { firstPaint: 168, schedule: 370, idle: 480, all: 800, language: 125 };
/** Chunks that every page with a key fetches once nothing more urgent is to be done. */
const fetchedWhenIdle = [
  'schedule-toolbar.define', 'beside-rows', 'cell-explanation.define', 'acceptance-form.define', 'what-changed',
  'formula-engine',
];
/** The formula engine is less than this only where it is part of something that is loaded before it is needed. */
const leastEngineKilobytes = 80;
const titles = {
  firstPaint: 'before the first paint', schedule: 'with the grid', idle: 'with what a page fetches when idle',
  all: 'with everything loaded on demand', language: 'for a language beside English',
};
const allowedRise = 1.02;
const dist = join(projectFolder, 'dist');
const recordPath = join(projectFolder, 'scripts', 'recorded-sizes.json');

const manifest = /** @type {Record<string, Chunk>} */ (readJson(join(dist, '.vite', 'manifest.json')));
const [entry] = Object.entries(manifest).find(([, chunk]) => chunk.isEntry && chunk.name === 'elv-load-schedule') ?? [];
if (entry === undefined) throw new Error('The build has no entry elv-load-schedule.');

/**
 * Files that are loaded from a chunk on.
 *
 * @param {string} key
 * @param {boolean} withDynamic with those that are loaded later
 * @param {Set<string>} files
 */
function filesFrom(key, withDynamic, files = new Set()) {
  const chunk = manifest[key];
  if (!chunk || files.has(chunk.file)) return files;
  files.add(chunk.file);
  for (const next of [...chunk.imports ?? [], ...(withDynamic ? chunk.dynamicImports ?? [] : [])]) {
    filesFrom(next, withDynamic, files);
  }
  return files;
}

/** @param {Iterable<string>} files */
const kilobytes = (files) =>
  [...files].reduce((sum, file) => sum + gzipSync(readFileSync(join(dist, file)), { level: 9 }).length, 0) / 1024;

/** @param {string} name */
function chunkNamed(name) {
  const [key] = Object.entries(manifest).find(([, chunk]) => chunk.name === name) ?? [];
  if (key === undefined) throw new Error(`The build has no chunk ${name}.`);
  return key;
}

const all = filesFrom(entry, true);
for (const file of all) console.log(`${kilobytes([file]).toFixed(1).padStart(8)} KB  ${file}`);
const single = 'elv-load-schedule.single.js';
if (existsSync(join(dist, single))) {
  console.log(`${kilobytes([single]).toFixed(1).padStart(8)} KB  ${single}, all in one file`);
}
const firstPaint = filesFrom(entry, false);
const catalogues = ['de', 'fr']
  .map((language) => [...filesFrom(chunkNamed(language), false)].filter((file) => !firstPaint.has(file)));
const languages = catalogues.flat();
/**
 * Files, and those that chunks load with them.
 *
 * @param {ReadonlySet<string>} files
 * @param {string[]} names of chunks
 */
const withChunks = (files, ...names) =>
  names.reduce((all, name) => filesFrom(chunkNamed(name), false, all), new Set(files));
const shown = withChunks(firstPaint, 'schedule-grid.define', 'schedule-panel.define');
const engine = kilobytes([...filesFrom(chunkNamed('formula-engine'), false)].filter((file) => !shown.has(file)));
if (engine < leastEngineKilobytes) {
  console.error(`The formula engine is not fetched on demand any more: only ${engine.toFixed(1)} KB of it are.`);
  process.exitCode = 1;
}
const sizes = {
  firstPaint: kilobytes(firstPaint),
  schedule: kilobytes(shown),
  idle: kilobytes(withChunks(shown, ...fetchedWhenIdle)),
  all: kilobytes(all) - kilobytes(languages),
  language: Math.max(...catalogues.map(kilobytes)),
};
const recorded = /** @type {Partial<typeof sizes>} */ (existsSync(recordPath) ? readJson(recordPath) : {});

for (const name of /** @type {const} */ (['firstPaint', 'schedule', 'idle', 'all', 'language'])) {
  const [size, budget, before] = [sizes[name], budgetsKilobytes[name], recorded[name]];
  const title = titles[name];
  console.log(`${size.toFixed(1).padStart(8)} KB  ${title}, budget ${budget} KB, recorded ${before ?? 'never'}`);
  if (size > budget) {
    console.error(`${title}: ${size.toFixed(1)} KB is over the budget of ${budget} KB.`);
    process.exitCode = 1;
  }
  if (!process.argv.includes('--record') && before !== undefined && size > before * allowedRise) {
    console.error(`${title}: ${size.toFixed(1)} KB is more than 2 % above the recorded ${before} KB. `
      + 'Make it smaller, or record it with "npm run size -- --record" and say why.');
    process.exitCode = 1;
  }
}
if (process.argv.includes('--record')) {
  const rounded = Object.fromEntries(Object.entries(sizes).map(([name, size]) => [name, Number(size.toFixed(1))]));
  writeFileSync(recordPath, `${JSON.stringify(rounded, null, 2)}\n`);
}
