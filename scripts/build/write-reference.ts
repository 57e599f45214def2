import { join } from 'node:path';
import { Application } from 'typedoc';
import { projectFolder } from '../project-folder.mjs';

/** What must have a comment: all that a host names. */
const DOCUMENTED = ['Class', 'Interface', 'Function', 'Variable', 'TypeAlias', 'Method', 'Accessor'] as const;

/**
 * Writes a page in Markdown on every export of the modules that need no screen, made from their comments: `index.md`,
 * and
 * `electrical.md` for the formulas.
 *
 * @param folder where the pages come to stand
 * @throws Error that names what has no comment, and links that lead nowhere
 */
export async function writeReference(folder: string): Promise<void> {
  const application = await Application.bootstrapWithPlugins({
    entryPoints: ['src/index.ts', 'src/electrical/index.ts'].map((entry) => join(projectFolder, entry)),
    tsconfig: join(projectFolder, 'src/tsconfig.json'), plugin: ['typedoc-plugin-markdown'], logLevel: 'Warn',
    readme: 'none', disableSources: true, excludePrivate: true, excludeExternals: true,
    requiredToBeDocumented: [...DOCUMENTED],
    validation: {
      notExported: false, invalidLink: true, rewrittenLink: true, notDocumented: true, unusedMergeModuleWith: true,
    },
  });
  // Options of the plug-in, whose types the program does not know.
  const options = { outputFileStrategy: 'modules', hidePageHeader: true, hideBreadcrumbs: true,
    parametersFormat: 'table',
    interfacePropertiesFormat: 'table', typeAliasPropertiesFormat: 'table' };
  for (const [name, value] of Object.entries(options)) application.options.setValue(name, value);
  const project = await application.convert();
  if (project === undefined) throw new Error('The reference could not be made: the types of src do not agree.');
  application.validate(project);
  if (application.logger.hasWarnings() || application.logger.hasErrors()) {
    throw new Error('The reference is not complete: comment what is named above.');
  }
  application.options.setValue('out', folder);
  await application.generateOutputs(project);
}
