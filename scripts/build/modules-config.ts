import { join } from 'node:path';
import type { InlineConfig } from 'vite';
import { copyFolder } from '../copy-folder.ts';
import { leaveOutStyles } from '../leave-out-styles.ts';
import { projectFolder } from '../project-folder.mjs';
import { keepWorkerAddress } from './sharing-worker.ts';
import { terminalCommand } from './terminal-command.ts';

/** Modules that users of the package import or run, and the worker, which is loaded by its address. */
const entries = [
  'src/index', 'src/electrical/index', 'components/load-schedule/index',
  'components/load-schedule/load-schedule.define',
  'src/allocation/sharing-worker', 'src/cli/table', 'src/cli/changes', 'src/cli/share', 'src/cli/takeoff',
  'src/cli/update', 'src/cli/join', 'src/cli/bill', 'src/cli/terminals',
];

/**
 * The modules of the package: a file for each file of the source, as plain ES modules that are neither bundled nor made
 * small, so that whoever uses them shares libraries with them and leaves out what is not used.
 *
 * @param dist folder that the build is made in
 */
export function modulesConfig(dist: string): InlineConfig {
  return {
    configFile: false,
    root: projectFolder,
    publicDir: false,
    logLevel: 'warn',
    plugins: [keepWorkerAddress(), terminalCommand(), copyFolder('data')],
    css: leaveOutStyles,
    build: {
      // Built as for a server, where addresses by `import.meta.url` stay as they are written.
      ssr: true,
      target: 'es2022',
      outDir: join(dist, 'modules'),
      emptyOutDir: true,
      minify: false,
      rolldownOptions: {
        input: Object.fromEntries(entries.map((entry) => [entry, join(projectFolder, `${entry}.ts`)])),
        preserveEntrySignatures: 'strict',
        external: isPackage,
        output: {
          preserveModules: true,
          preserveModulesRoot: projectFolder,
          // A folder of the name node_modules is left out of every package.
          entryFileNames: ({ name }) => `${name.replace(/^node_modules\//, 'libraries/')}.js`,
        },
      },
    },
  };
}

/**
 * Whether a module is one of a package; the grid's styles are none, because only a bundler could load them from there.
 */
function isPackage(specifier: string): boolean {
  return !/^[./\0]|^[a-z]:|\?inline$/i.test(specifier) || specifier.startsWith('node:');
}
