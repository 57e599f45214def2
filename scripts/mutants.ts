// Changes operators, limits and conditions one at a time, and reports the share that the tests notice:
// `npm run mutants -- [--sample 200] [--seed 1] [--only src/electrical] [--jobs 2]`. Exit code 1 below 95 %.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { findMutations, type Mutation } from './mutants/find-mutations.ts';
import { ProjectCopy } from './mutants/project-copy.ts';
import { sampleOf } from './mutants/sample.ts';
import { projectFolder } from './project-folder.mjs';

/** Share that tests are to notice. */
const AIM = 0.95;

/**
 * The folders that are changed, with the tests that are to notice it: the nearest first, then those asked where these
 * did not.
 */
const NOTICED_BY: Readonly<Record<string, readonly (readonly string[])[]>> = {
  'src/electrical': [['tests/electrical', 'tests/standards'], ['tests/engine', 'tests/findings']],
  'src/findings': [['tests/findings'], ['tests/scenarios', 'tests/engine', 'tests/words']],
  'src/engine': [['tests/engine'], ['tests/findings', 'tests/scenarios', 'tests/hostile', 'tests/words', 'tests/data']],
  'src/allocation': [['tests/allocation'], ['tests/words', 'tests/cli']],
};

const { values: { sample, seed, only, jobs } } = parseArgs({ options: {
  sample: { type: 'string' }, seed: { type: 'string', default: '1' }, only: { type: 'string', default: 'src/' },
  jobs: { type: 'string', default: '2' },
} });

const filesIn = (folder: string, ending: string): string[] =>
  readdirSync(join(projectFolder, folder), { recursive: true, encoding: 'utf8' })
    .map((name) => `${folder}/${name.replaceAll('\\', '/')}`).filter((name) => name.endsWith(ending)).sort();

/** Mutations that no test can notice or need not, by name, each with the reason. */
const explained = JSON.parse(
  readFileSync(join(import.meta.dirname, 'mutants/survivors.json'), 'utf8')) as Readonly<Record<string, string>>;

const folders = Object.keys(NOTICED_BY);
const all = folders.flatMap((folder) => filesIn(folder, '.ts'))
  .filter((file) => file.startsWith(only))
  .flatMap((file) => findMutations(file, readFileSync(join(projectFolder, file), 'utf8')));
const chosen = sampleOf(all, sample === undefined ? all.length : Number(sample), Number(seed));
console.log(`${chosen.length} of ${all.length} mutations, seed ${seed}`);

const folderOf = ({ file }: Mutation): string => folders.find((folder) => file.startsWith(`${folder}/`))!;
const survivors: Mutation[] = [];
const waiting = chosen.filter(({ name }) => explained[name] === undefined);
const counted = new Map<string, { noticed: number; all: number }>();

/** Some tests with their time as the project is [ms], the shortest first, measured when they are first asked. */
const measured = new Map<string, Promise<ReadonlyMap<string, number>>>();

function timesOf(copy: ProjectCopy, names: readonly string[]): Promise<ReadonlyMap<string, number>> {
  const key = names.join(' ');
  const times = measured.get(key) ?? copy.times(names.flatMap((name) => filesIn(name, '.test.ts')));
  measured.set(key, times);
  return times;
}

async function isNoticed(copy: ProjectCopy, mutation: Mutation): Promise<boolean> {
  for (const names of NOTICED_BY[folderOf(mutation)]!) {
    const times = await timesOf(copy, names);
    const most = 20_000 + 4 * [...times.values()].reduce((sum, time) => sum + time, 0);
    if (await copy.notices(mutation, [...times.keys()], most)) return true;
  }
  return false;
}

async function work(copy: ProjectCopy): Promise<void> {
  for (let mutation = waiting.shift(); mutation !== undefined; mutation = waiting.shift()) {
    const noticed = await isNoticed(copy, mutation);
    const folder = folderOf(mutation);
    const count = counted.get(folder) ?? { noticed: 0, all: 0 };
    counted.set(folder, { noticed: count.noticed + (noticed ? 1 : 0), all: count.all + 1 });
    if (noticed) continue;
    survivors.push(mutation);
    console.log(`survived  ${mutation.name}  (line ${mutation.line})`);
  }
}

const copies = Array.from({ length: Number(jobs) }, () => new ProjectCopy());
try {
  await Promise.all(copies.map(work));
} finally {
  for (const copy of copies) copy.remove();
}

const tried = [...counted.values()].reduce((sum, count) => sum + count.all, 0);
for (const [folder, count] of counted) console.log(`${folder}: ${count.noticed} of ${count.all} noticed`);
const share = tried === 0 ? 1 : 1 - survivors.length / tried;
console.log(`${(share * 100).toFixed(1)} % of ${tried} noticed, ${survivors.length} survived, `
  + `${chosen.length - tried} explained in scripts/mutants/survivors.json`);
process.exitCode = share >= AIM ? 0 : 1;
