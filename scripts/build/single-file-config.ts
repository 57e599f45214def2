import { join } from 'node:path';
import type { InlineConfig } from 'vite';
import { knownPlugins } from '../known-plugins.ts';
import { leaveOutStyles } from '../leave-out-styles.ts';
import { leaveOutUnreached } from '../leave-out-unreached.ts';
import { leaveOutUnused } from '../leave-out-unused.ts';
import { projectFolder } from '../project-folder.mjs';
import { notices } from './notices.ts';
import { withoutWorker } from './sharing-worker.ts';

/** Its name. */
const file = 'elv-load-schedule.single.js';

/**
 * The element as one file, for pages that can keep no folder beside it: with everything that is otherwise loaded later.
 *
 * @param dist folder that the build is made in
 */
export function singleFileConfig(dist: string): InlineConfig {
  return {
    configFile: false,
    root: projectFolder,
    publicDir: false,
    logLevel: 'warn',
    plugins: [leaveOutUnused(), leaveOutUnreached(), knownPlugins(), withoutWorker(), notices(file)],
    css: leaveOutStyles,
    build: {
      target: 'es2022',
      outDir: dist,
      emptyOutDir: false,
      modulePreload: false,
      chunkSizeWarningLimit: 3000,
      rolldownOptions: {
        input: join(projectFolder, 'components/load-schedule/load-schedule.define.ts'),
        preserveEntrySignatures: 'exports-only',
        output: { codeSplitting: false, entryFileNames: file },
      },
    },
  };
}
