import path from 'node:path';
import typescript from 'typescript';

/** @typedef {{ file: string, specifier: string, message: string }} ImportFault */

/** What imports what: a part may import those of a lower level, and of its own level as long as no circle arises. */
const levels = new Map([
  ['electrical', 0], ['words', 0], ['schedule', 1], ['engine', 2],
  ['terminals', 3], ['mounting', 3], ['report', 3], ['findings', 3], ['exchange', 3], ['allocation', 3], ['editing', 3], ['rework', 3],
  ['load-schedule.ts', 3], ['explanations.ts', 3],
  ['cli', 4], ['components', 4], ['index.ts', 4],
]);

/** Packages that only one folder imports, so that another grid or engine would touch that folder alone. */
const onlyFolderOf = new Map([
  ['handsontable', 'components/grid/'], ['hyperformula', 'src/engine/'], ['lit', 'components/'],
  ['intl-messageformat', 'src/words/'], ['idb', 'components/drafts/'],
]);

/**
 * Checks in which direction the files of `src/` and `components/` import. Files of other folders are left alone.
 *
 * @param {ReadonlyMap<string, string>} texts text of every file by its path from the project's folder, with `/`
 * @returns {ImportFault[]} every import that is against a rule; empty where there is none
 */
export function findImportFaults(texts) {
  /** @type {ImportFault[]} */
  const faults = [];
  /** @type {Map<string, Set<string>>} */
  const importedParts = new Map();
  /** @type {Map<string, Set<string>>} */
  const importedFiles = new Map();
  for (const [file, text] of texts) {
    const part = partOf(file);
    if (part === undefined) continue;
    const specifiers = importsOf(text);
    importedFiles.set(
      file, new Set(specifiers.filter((each) => each.startsWith('.')).map((each) => targetOf(file, each)))
    );
    for (const specifier of specifiers) {
      const message = specifier.startsWith('.')
        ? relativeFault(file, part, specifier, importedParts)
        : packageFault(file, part, specifier);
      if (message !== undefined) faults.push({ file, specifier, message });
    }
  }
  return [...faults, ...circleFaults(importedParts), ...fileCircles(importedFiles)];
}

/**
 * The part of the code that a file belongs to.
 *
 * @param {string} file
 * @returns {string | undefined} a folder of `src`, a file right in it, or `components`; undefined for other files
 */
function partOf(file) {
  const [top, second] = file.split('/');
  return top === 'src' ? second : top === 'components' ? top : undefined;
}

/** @param {string} text */
function importsOf(text) {
  return typescript.preProcessFile(text, true, true).importedFiles.map((imported) => imported.fileName);
}

/**
 * @param {string} file
 * @param {string} specifier one that begins with a dot
 * @returns {string} the file that it names, by its path from the project's folder
 */
function targetOf(file, specifier) {
  return path.posix.join(path.posix.dirname(file), specifier.replace(/\?.*$/, ''));
}

/**
 * @param {string} file
 * @param {string} part
 * @param {string} specifier
 * @param {Map<string, Set<string>>} importedParts
 * @returns {string | undefined}
 */
function relativeFault(file, part, specifier, importedParts) {
  const target = targetOf(file, specifier);
  if (target.startsWith('data/') || (part === 'cli' && target.startsWith('scripts/'))) return undefined;
  const targetPart = partOf(target);
  if (targetPart === undefined) return 'only src, components and data are imported from here';
  if (targetPart === part) return undefined;
  const [level, targetLevel] = [levels.get(part), levels.get(targetPart)];
  if (level === undefined) return `${part} is no part of the code that the rules know`;
  if (targetLevel === undefined) return `${targetPart} is no part of the code that the rules know`;
  const sameTop = level === 4 && targetLevel === 4;
  if (targetLevel > level || sameTop) return `${part} may not import ${targetPart}: imports run the other way`;
  importedParts.set(part, (importedParts.get(part) ?? new Set()).add(targetPart));
  return undefined;
}

/**
 * @param {string} file
 * @param {string} part
 * @param {string} specifier
 * @returns {string | undefined}
 */
function packageFault(file, part, specifier) {
  if (specifier.startsWith('node:')) {
    return part === 'cli' ? undefined : 'only src/cli imports Node: the rest runs on a page';
  }
  const [scopeOrName = '', name = ''] = specifier.split('/');
  const packageName = scopeOrName.startsWith('@') ? `${scopeOrName}/${name}` : scopeOrName;
  const folder = onlyFolderOf.get(packageName);
  return folder === undefined || file.startsWith(folder) ? undefined : `only ${folder} imports ${packageName}`;
}

/**
 * Parts of one level that import each other, directly or by way of others.
 *
 * @param {Map<string, Set<string>>} importedParts
 * @returns {ImportFault[]}
 */
function circleFaults(importedParts) {
  /** @type {(from: string, goal: string, seen?: Set<string>) => boolean} */
  const reaches = (from, goal, seen = new Set([from])) => [...importedParts.get(from) ?? []].some((next) =>
    next === goal || (!seen.has(next) && reaches(next, goal, seen.add(next))));
  return [...importedParts.keys()].filter((part) => reaches(part, part)).map((part) => ({
    file: `src/${part}`,
    specifier: [...importedParts.get(part) ?? []].join(', '),
    message: `${part} imports itself by way of these parts`,
  }));
}

/**
 * Files that import each other, directly or by way of others; types and what is loaded later count as well. Every
 * circle is told once, by a way round that is as short as can be from its first file on.
 *
 * @param {Map<string, Set<string>>} importedFiles
 * @returns {ImportFault[]}
 */
function fileCircles(importedFiles) {
  /** @type {Set<string>} */
  const told = new Set();
  return [...importedFiles.keys()].sort().flatMap((file) => {
    const way = told.has(file) ? undefined : wayRound(importedFiles, file);
    if (way === undefined) return [];
    for (const each of way) told.add(each);
    return [
      {
        file, specifier: way[1] ?? file,
        message: `the files import each other in a circle: ${[...way, file].join(' → ')}`,
      },
    ];
  });
}

/**
 * @param {Map<string, Set<string>>} importedFiles
 * @param {string} file
 * @returns {string[] | undefined} the files of the shortest way from a file back to itself, itself first
 */
function wayRound(importedFiles, file) {
  /** @type {Map<string, string[]>} */
  const ways = new Map([[file, [file]]]);
  for (const [from, way] of ways) {
    for (const next of importedFiles.get(from) ?? []) {
      if (next === file) return way;
      // A map goes on to what is put into it on the way.
      if (!ways.has(next)) ways.set(next, [...way, next]);
    }
  }
  return undefined;
}
