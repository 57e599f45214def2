import { join } from 'node:path';
import typescript from 'typescript';
import { projectFolder } from '../project-folder.mjs';

/** Modules whose types users of the package see; those that they import follow. */
const entries = [
  'src/index', 'src/electrical/index', 'components/load-schedule/index',
  'components/load-schedule/load-schedule.define',
];

/** A relative address of a TypeScript file, in an import of a declaration. */
const relativeImport = /(\bfrom |\bimport |\bimport\()(['"])(\.{1,2}\/[^'"]+)\.ts\2/g;

/**
 * Writes the types of the package beside its modules. The compiler leaves addresses in types as they are, so those that
 * end in
 * `.ts` are given the name of the module that is delivered.
 *
 * @param folder that of the modules
 */
export function writeDeclarations(folder: string): void {
  const configPath = join(projectFolder, 'tsconfig.json');
  const read = typescript.getParsedCommandLineOfConfigFile(configPath, {
    noEmit: false, declaration: true, emitDeclarationOnly: true, rootDir: projectFolder, outDir: folder,
  }, { ...typescript.sys, onUnRecoverableConfigFileDiagnostic: (fault) => { throw new Error(textOf([fault])); } });
  if (read === undefined) throw new Error(`${configPath} could not be read.`);
  const program = typescript.createProgram(entries.map((entry) => join(projectFolder, `${entry}.ts`)), read.options);
  const { diagnostics } = program.emit(undefined, (path, text) => {
    typescript.sys.writeFile(path, text.replace(relativeImport, '$1$2$3.js$2'));
  });
  if (diagnostics.length > 0) throw new Error(textOf(diagnostics));
}

function textOf(diagnostics: readonly typescript.Diagnostic[]): string {
  return typescript.formatDiagnostics(diagnostics, {
    getCanonicalFileName: (name) => name, getCurrentDirectory: () => projectFolder, getNewLine: () => '\n',
  });
}
