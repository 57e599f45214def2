import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { publint } from 'publint';
import { formatMessage } from 'publint/utils';
import { projectFolder } from '../project-folder.mjs';
import { readJson } from '../read-json.mjs';
import { run } from './run.ts';
import type { ScratchProject } from './scratch-project.ts';
import { runShaken } from './shaken.ts';
import { USER_CODE } from './user-code.ts';

/** A check of the packed package: rejects with what is wrong. */
type Check = (scratch: ScratchProject) => Promise<void>;

/** Entries that define the element; importing another one defines nothing. */
const defining = new Set(['./define.js', './elv-load-schedule.js']);

/** What Lit gives a server in place of a page's classes of elements. */
const ofLit = /^(?:customElements|lit\w+|reactiveElement\w+)$/;

const program = (path: string) => join(projectFolder, 'node_modules', path);

const isWellDescribed: Check = async ({ tarball }) => {
  const { buffer, byteOffset, byteLength } = readFileSync(tarball);
  const { messages, pkg } =
    await publint({ pack: { tarball: buffer.slice(byteOffset, byteOffset + byteLength) }, strict: true });
  if (messages.length > 0) {
    throw new Error(messages.map((message) => formatMessage(message, pkg, { color: false })).join('\n'));
  }
};

const hasRightTypes: Check = async ({ tarball, folder }) => {
  await run(
    process.execPath, [program('@arethetypeswrong/cli/dist/index.js'), '--profile', 'esm-only', tarball], folder
  );
};

const importsInNode: Check = async ({ folder, package: { name, exports } }) => {
  for (const entry of Object.keys(exports).filter((each) => each.endsWith('.js') || each === '.')) {
    // Lit brings the classes of elements that a server lacks; nothing else may become known to all.
    const code = `
      const before = new Set(Object.getOwnPropertyNames(globalThis));
      await import('${name}${entry.slice(1)}');
      const added = Object.getOwnPropertyNames(globalThis).filter((key) => !before.has(key));
      console.log(JSON.stringify({ added, defined: globalThis.customElements?.get('elv-load-schedule') !== undefined }));`;
    const { added, defined } =
      JSON.parse(await run(process.execPath, ['--input-type=module', '--eval', code], folder)) as
      { added: string[]; defined: boolean };
    const unexpected = added.filter((key) => !ofLit.test(key));
    if (unexpected.length > 0) throw new Error(`Importing ${entry} makes ${unexpected.join(', ')} known to all.`);
    if (defined !== defining.has(entry)) {
      throw new Error(`Importing ${entry} ${defined ? 'defines' : 'does not define'} the element.`);
    }
  }
};

const holdsFiles: Check = async ({ installed, package: { customElements } }) => {
  const { modules } = readJson(join(installed, customElements)) as { modules: { path: string }[] };
  const named = ['LICENSE', 'README.md', 'dist/NOTICES.txt', 'dist/modules/data/schedule.schema.json',
    'dist/reference/index.md', 'dist/reference/electrical.md', ...modules.map(({ path }) => path)];
  const missing = named.filter((path) => !existsSync(join(installed, path)));
  if (missing.length > 0) throw new Error(`The package lacks ${missing.join(', ')}.`);
  return Promise.resolve();
};

const leadsSomewhere: Check = ({ installed }) => {
  const texts = readdirSync(installed, { recursive: true, encoding: 'utf8' }).filter((path) => path.endsWith('.md'));
  const dead = texts.flatMap((path) => [
    ...readFileSync(join(installed, path), 'utf8').matchAll(/\]\(([^)#\s]+)[^)]*\)/g)
  ]
    .map(([, target]) => target!).filter((target) => !/^[a-z]+:/.test(target) && !existsSync(join(
      installed, dirname(path), target
    )))
    .map((target) => `${path}: ${target}`));
  if (!texts.includes('README.md')) throw new Error('The package has no README.md.');
  if (dead.length > 0) throw new Error(`Links that lead nowhere in the package:\n${dead.join('\n')}`);
  return Promise.resolve();
};

/** The script that pages are told to take, and everything that it loads later, as it names them. */
const holdsScript: Check = ({ installed }) => {
  const dist = join(installed, 'dist');
  const script = readFileSync(join(dist, 'elv-load-schedule.js'), 'utf8');
  const chunks = [...new Set([...script.matchAll(/chunks\/[\w.-]+\.js/g)].map(([path]) => path))];
  if (chunks.length === 0) {
    throw new Error('dist/elv-load-schedule.js names no chunk, although it loads the grid later.');
  }
  const missing = chunks.filter((path) => !existsSync(join(dist, path)));
  if (missing.length > 0) throw new Error(`The package lacks ${missing.join(', ')}.`);
  return Promise.resolve();
};

/** The licences of all that stands in built files are declared, each by its name. */
const declaresLicences: Check = ({ installed, package: { license } }) => {
  const notices = readFileSync(join(installed, 'dist/NOTICES.txt'), 'utf8');
  const held = [...notices.matchAll(/^={80}\n\S+ \S+: (.+)\n={80}$/gm)].map(([, name]) => name!);
  if (held.length === 0) throw new Error('NOTICES.txt names no library.');
  const names = license.split(/ AND |[()]/);
  const undeclared = [...new Set(held)]
    .map((name) => (name === 'SEE LICENSE IN LICENSE.txt' ? 'LicenseRef-Handsontable' : name))
    .filter((name) => !names.includes(name));
  if (undeclared.length > 0) {
    throw new Error(`package.json declares ${license}, and built files hold parts under ${undeclared.join(', ')}.`);
  }
  return Promise.resolve();
};

const compilesForUsers: Check = async ({ folder }) => {
  writeFileSync(join(folder, 'user.ts'), USER_CODE);
  writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify({
    compilerOptions: {
      noEmit: true, strict: true, module: 'nodenext', target: 'es2022', lib: ['es2023', 'dom', 'dom.iterable'],
      types: [],
    },
    files: ['user.ts'],
  }));
  await run(process.execPath, [program('typescript/lib/tsc.js'), '--project', '.'], folder);
};

const runsCommands: Check = async ({ folder, installed, package: { bin } }) => {
  const demo = join(installed, 'dist/modules/data/demo.schedule.json');
  const command = (name: string, ...words: string[]) =>
    run(process.execPath, [join(folder, 'node_modules/.bin', name), ...words], folder);
  for (const [name, path] of Object.entries(bin)) {
    if (!readFileSync(join(installed, path), 'utf8').startsWith('#!/usr/bin/env node\n')) {
      throw new Error(`A shell cannot run ${name}.`);
    }
    const help = await command(name, '--help');
    if (!help.includes(`\n  ${name} `) || help.includes('npm run')) {
      throw new Error(`The help of ${name} calls it otherwise:\n${help}`);
    }
  }
  const table = JSON.parse(await command('elv-table', demo)) as { sheets: { supplies: unknown[] } };
  if (table.sheets.supplies.length === 0) throw new Error('The command elv-table gives no supplies of the demo.');
  await command('elv-takeoff', join(installed, 'dist/modules/data/takeoffs/library-refit.csv'));
  await command('elv-table', demo, '--format', 'pdf', '--output', 'load-table.pdf');
  const pdf = readFileSync(join(folder, 'load-table.pdf'), 'latin1');
  if (!pdf.startsWith('%PDF-') || !pdf.includes('/MediaBox')) {
    throw new Error('The command elv-table prints no document of pages.');
  }
};

const survivesShaking: Check = async ({ folder, installed, package: { name } }) => {
  const told = await runShaken(
    folder, `import '${name}/define.js'; report(customElements.get('elv-load-schedule') !== undefined);`
  );
  if (told !== true) throw new Error('A bundler leaves out what defines the element.');
  const bundled = textIn(join(folder, 'bundle'));
  const lost = tagsIn(textIn(join(installed, 'dist/modules/components')))
    .filter((tag) => !tagsIn(bundled).includes(tag));
  if (lost.length > 0) throw new Error(`A bundler leaves out what defines ${lost.join(', ')}.`);
  const undefinedStill = await runShaken(folder, `import { LoadScheduleElement } from '${name}/element.js';
    report([LoadScheduleElement.name, customElements.get('elv-load-schedule') === undefined][1]);`);
  if (undefinedStill !== true) throw new Error('A bundler defines the element for whoever imports its class.');
  // Without a screen formulas have their figures at once.
  const figure = await runShaken(folder, `import { LoadSchedule } from '${name}';
    const schedule = new LoadSchedule({ details: {}, sheets: { devices: [{ ref: 'D1', qty: '=2*3' }] } });
    report(schedule.value('devices', schedule.rows('devices')[0].id, 'qty'));`);
  if (figure !== 6) throw new Error(`A formula that comes to 6 gives ${String(figure)} behind a bundler.`);
};

/** Text of all modules in a folder. */
function textIn(folder: string): string {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.js'))
    .map((name) => readFileSync(join(folder, name), 'utf8')).join('\n');
}

/** Tags of the elements that a text defines; there is always at least one. */
function tagsIn(text: string): string[] {
  const tags = [...text.matchAll(/\bdefineElement\("(elv-[\w-]+)"/g)].map(([, tag]) => tag!);
  if (tags.length === 0) throw new Error('No definition of an element was found.');
  return tags;
}

/** What is checked of the packed package, in order. */
export const CHECKS: readonly (readonly [title: string, check: Check])[] = [
  ['its description (publint)', isWellDescribed],
  ['the types of its entries (arethetypeswrong)', hasRightTypes],
  ['files that it names', holdsFiles],
  ['links in its texts', leadsSomewhere],
  ['the script for pages with what it loads later', holdsScript],
  ['licences of what it holds', declaresLicences],
  ['every entry imported in plain Node', importsInNode],
  ['TypeScript of a user', compilesForUsers],
  ['the terminal commands, a document in PDF among what they make', runsCommands],
  ['a bundler keeps what defines the element, and what formulas need', survivesShaking],
];
