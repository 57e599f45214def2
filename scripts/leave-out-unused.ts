import type { Plugin } from 'vite';
import { KNOWN_FUNCTIONS, KNOWN_PLUGINS } from '../src/schedule/formula/known-functions.ts';

interface UnusedModules {
  readonly what: string;
  /** Where they are. */
  readonly path: RegExp;
  /** How many there are. */
  readonly count: number;
  /** What is put in their place; undefined where the text is not as expected. */
  readonly replace: (code: string) => string | undefined;
}

/** What `src/engine` and its own parts call of the formula engine; tests of the pages tell where one is missing. */
const ENGINE_METHODS: Readonly<Record<string, readonly string[]>> = {
  HyperFormula: [
    'buildFromSheets', 'calculateFormula', 'clearSheet', 'destroy', 'getCellValue', 'getLanguage',
    'getRegisteredLanguagesCodes', 'getSheetId', 'registerFunctionPlugin', 'registerLanguage', 'resumeEvaluation',
    'setCellContents', 'suspendEvaluation', 'validateFormula',
  ],
  CrudOperations: [
    'setCellContents', 'clearSheet', 'ensureScopeIdIsValid', 'getAndClearContentChanges',
    'ensureItIsPossibleToAddNamedExpression',
  ],
  Operations: [
    'getSheetClipboardCells', 'getClipboardCell', 'clearSheet', 'setCellContent', 'getAndClearContentChanges',
    'addNamedExpression',
  ],
};

const visitors = ['createBaseSemanticVisitorConstructor', 'createBaseVisitorConstructorWithDefaults'];

const unused: readonly UnusedModules[] = [
  {
    what: 'the grid’s styles as a text, which it would put into the page’s head, where they cannot reach a shadow root',
    path: /\/handsontable\/styles\/handsontableStyles\.mjs$/,
    count: 1,
    replace: (code) => code.includes('export default "') ? 'export default \'\';' : undefined,
  },
  {
    what: 'the grid’s own theme, which it takes only where it is given no name of another',
    path: /\/handsontable\/themes\/theme\/main\.mjs$/,
    count: 1,
    replace: (code) => code.includes('export { mainTheme };')
      ? 'export const mainTheme = { name: \'main\' };' : undefined,
  },
  {
    what: 'the formula engine’s help texts on its functions, which only its catalogue of functions reads',
    path: /\/hyperformula\/es\/interpreter\/functionMetadata\/categories\/[\w-]+\.mjs$/,
    count: 13,
    replace: (code) => {
      const [name, ...others] = [...code.matchAll(/^export const (\w+_DOCS) = \{$/gm)].map((match) => match[1]);
      return name !== undefined && others.length === 0 ? `export const ${name} = {};` : undefined;
    },
  },
  {
    what: 'the formula engine’s names of functions that no formula may call; its reader asks for that of OFFSET',
    path: /\/hyperformula\/es\/i18n\/languages\/enGB\.mjs$/,
    count: 1,
    replace: (code) => {
      const without = code.replace(/^ {4}('?)([\w.]+)\1: '\2',?$\n/gm, (line, _quote, name: string) =>
        KNOWN_FUNCTIONS.has(name) || name === 'OFFSET' ? line : '');
      return without.length < code.length - 5000 ? without : undefined;
    },
  },
  {
    what: 'the formula engine’s functions beside known ones, which no formula may call',
    path: new RegExp(`/hyperformula/es/interpreter/plugin/(?:${KNOWN_PLUGINS.join('|')})\\.mjs$`),
    count: KNOWN_PLUGINS.length,
    replace: (code) => code.includes('Plugin.implementedFunctions = {')
      ? code.replace(/^ {2}'?([\w.]+)'?: \{$[^]*?^ {2}\},?$\n/gm,
        (text, name: string) => KNOWN_FUNCTIONS.has(name) ? text : '') : undefined,
  },
  {
    what: 'the message library’s reader of patterns for dates and numbers, which no message has',
    path: /\/@formatjs\/icu-skeleton-parser\/index\.js$/,
    count: 1,
    replace: (code) => {
      const [, names] = /^export \{ ([\w, ]+) \};$/m.exec(code) ?? [];
      return names?.split(', ').map((name) =>
        `export function ${name}() { throw new Error('No message has a pattern.'); }`).join('\n');
    },
  },
  {
    what: 'the message library’s hours of the world, which only patterns of dates ask for',
    path: /\/@formatjs\/icu-messageformat-parser\/index\.js$/,
    count: 1,
    replace: (code) => {
      const without = code.replace(/^const timeData = \{[^]*?^\};$/m, 'const timeData = { "001": ["H"] };');
      return without.length < code.length - 5000 ? without : undefined;
    },
  },
  {
    what: 'the formula engine’s undo, since the document has its own (`undoLimit: 0`)',
    path: /\/hyperformula\/es\/UndoRedo\.mjs$/,
    count: 1,
    replace: (code) => {
      const entries = [...code.matchAll(/^export class (\w+UndoEntry) /gm)]
        .map(([, name]) => `export class ${name} {}`);
      return code.includes('export class UndoRedo {') && entries.length > 0 ? `${entries.join('\n')}
        export class UndoRedo {
          saveOperation() {}
          storeDataForVersion() {}
          cleanupOrphanedOldData() {}
          beginBatchMode() {}
          commitBatchMode() {}
          clearUndoStack() {}
          clearRedoStack() {}
          isUndoStackEmpty() { return true; }
          isRedoStackEmpty() { return true; }
        }` : undefined;
    },
  },
  {
    what: 'the formula engine’s index of columns, which it makes only where it is told to (`useColumnIndex`)',
    path: /\/hyperformula\/es\/Lookup\/ColumnIndex\.mjs$/,
    count: 1,
    replace: (code) => code.includes('export class ColumnIndex {') ? 'export class ColumnIndex {}' : undefined,
  },
  {
    what: 'what the formula engine does that nothing here asks it for',
    path: /\/hyperformula\/es\/(?:HyperFormula|CrudOperations|Operations)\.mjs$/,
    count: 3,
    replace: (code) => {
      const [, name] = /^export class (HyperFormula|CrudOperations|Operations) /m.exec(code) ?? [];
      return name && onlyCalled(code, ENGINE_METHODS[name]!);
    },
  },
  {
    what: 'the CSV reader’s files, streams and workers: it is given texts',
    path: /\/papaparse\/papaparse\.js$/,
    count: 1,
    replace: (code) => {
      const names = 'getWorkerBlob|newWorker|(?:main|worker)ThreadReceivedMessage|completeWorker|'
        + '(?:Network|File|ReadableStream|DuplexStream)Streamer';
      const definitions = new RegExp(`^\\t(function (?:${names})\\([^)]*\\))\\s*\\{[^]*?^\\t\\}$`, 'gm');
      return [...code.matchAll(definitions)].length === 9 ? code.replace(definitions, '\t$1 {}') : undefined;
    },
  },
  {
    what: 'the formula engine’s descriptions of functions, which only its catalogue of functions gives',
    path: /\/hyperformula\/es\/interpreter\/functionMetadata\/buildFunctionDescriptions\.mjs$/,
    count: 1,
    replace: (code) => {
      const names = [...code.matchAll(/^export function (build\w+|clampRepeatLastArgs|isParameterOptional)\(/gm)];
      return names.length === 6 ? names.map(([, name]) => `export function ${name}() {}`).join('\n') : undefined;
    },
  },
  {
    what: 'the visitors of syntax trees, which the formula engine’s reader builds none of',
    path: /\/chevrotain\/lib_esm\/src\/parse\/cst\/cst_visitor\.js$/,
    count: 1,
    replace: (code) => visitors.every((name) => code.includes(`export function ${name}(`))
      ? visitors.map((name) => `export function ${name}() {}`).join('\n') : undefined,
  },
  {
    what: 'the syntax trees of the formula engine’s reader, which it is told not to build (`outputCst`)',
    path: /\/chevrotain\/lib_esm\/src\/parse\/parser\/traits\/tree_builder\.js$/,
    count: 1,
    replace: (code) => without(code, /^ {8}else \{\n {12}if \(\/full\/i[^]*?^ {8}\}$/gm, 1),
  },
  {
    what: 'how the formula engine’s reader goes on after a mistake, which it is not asked to (`recoveryEnabled`)',
    path: /\/chevrotain\/lib_esm\/src\/parse\/parser\/traits\/recoverable\.js$/,
    count: 1,
    replace: (code) => without(
      code, new RegExp('^ {4}Recoverable\\.prototype\\.(?!init|attemptIn|getHuman)\\w+ = [^]*?^ {4}\\};$'
        + '|^ {8}if \\(this\\.recoveryEnabled\\) \\{$[^]*?^ {8}\\}$', 'gm'), 19,
    ),
  },
  {
    what: 'the checks that the formula engine’s reader makes of its own grammar, which is the same on every page',
    path: /\/chevrotain\/lib_esm\/src\/parse\/grammar\/checks\.js$/,
    count: 1,
    replace: (code) => {
      const patterns = /^export var validTermsPattern = .*\nexport var validNestedRuleName = .*$/m.exec(code)?.[0];
      return patterns && `${patterns}\nexport function validateGrammar() { return []; }
        export function validateRuleIsOverridden() { return []; }`;
    },
  },
  {
    what: 'what those checks would say',
    path: /\/chevrotain\/lib_esm\/src\/parse\/errors_public\.js$/,
    count: 1,
    replace: (code) => stubbed(code, /^export var (defaultGrammarValidatorErrorProvider) = \{$[^]*?^\};$/gm, 1),
  },
  {
    what: 'the checks that the formula engine’s reader makes of its own words',
    path: /\/chevrotain\/lib_esm\/src\/scan\/lexer\.js$/,
    count: 1,
    replace: (code) => stubbed(
      code, /^export function (validatePatterns|performRuntimeChecks|performWarningRuntimeChecks)\([^]*?^\}$/gm, 3,
      '() { return []; }',
    ),
  },
];

/** A module of a library without what is never used of it; as it is where nothing is left out. */
export function withoutUnused(path: string, code: string): string {
  return unused.find((modules) => modules.path.test(path))?.replace(code) ?? code;
}

/** The code without the methods that none of those named calls; undefined where one of these is not there. */
function onlyCalled(code: string, named: readonly string[]): string | undefined {
  const methods = [...code.matchAll(/^ {2}(?:static )?(\w+)\([^\n]*\) \{\n[^]*?^ {2}\}$/gm)];
  if (named.some((name) => !methods.some((method) => method[1] === name))) return undefined;
  const kept = new Set(['constructor', ...named]);
  // A set goes on to what is added to it while it is gone through.
  for (const name of kept) {
    const text = methods.filter((method) => method[1] === name).map(([all]) => all).join('\n');
    for (const [, called] of text.matchAll(/\b(?:this|HyperFormula|engine|instance)\.(\w+)/g)) kept.add(called!);
  }
  return methods.filter(([, name]) => !kept.has(name!)).reduce((rest, [all]) => rest.replace(all, ''), code);
}

/** The code without its parts of a kind; undefined where there are not so many of them. */
function without(code: string, parts: RegExp, count: number): string | undefined {
  return [...code.matchAll(parts)].length === count ? code.replace(parts, '') : undefined;
}

/** The code with definitions of exported names replaced; undefined where there are not so many of them. */
function stubbed(code: string, definitions: RegExp, count: number, value = ' = {};'): string | undefined {
  if ([...code.matchAll(definitions)].length !== count) return undefined;
  const kind = value.startsWith('(') ? 'function' : 'var';
  return code.replace(definitions, (_all, name: string) => `export ${kind} ${name}${value}`);
}

/**
 * Replaces modules of the libraries that the element never uses by next to nothing in the build: about 65 KB gzipped.
 * Fails the build where a new version of a library keeps them elsewhere, so that nothing grows unseen.
 *
 * @returns a plugin of Vite, for builds only
 */
export function leaveOutUnused(): Plugin {
  const found = new Map<UnusedModules, number>();
  return {
    name: 'leave-out-unused',
    apply: 'build',
    // Written out, so that parts of it can be left out.
    config: () => ({ resolve: { alias: { papaparse: 'papaparse/papaparse.js' } } }),
    buildStart() {
      found.clear();
    },
    transform: {
      order: 'pre',
      filter: { id: unused.map(({ path }) => path) },
      handler(code, id) {
        const modules = unused.find(({ path }) => path.test(id));
        const replacement = modules?.replace(code);
        if (!modules || replacement === undefined) this.error(`${id} is not written as expected here.`);
        found.set(modules, (found.get(modules) ?? 0) + 1);
        return { code: replacement, map: null };
      },
    },
    buildEnd(error) {
      if (error) return;
      for (const modules of unused) {
        const count = found.get(modules) ?? 0;
        if (count !== modules.count) {
          this.error(`Found ${count} of ${modules.count} modules that hold ${modules.what}.`);
        }
      }
    },
  };
}
