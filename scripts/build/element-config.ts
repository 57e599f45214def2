import { join } from 'node:path';
import type { InlineConfig, Plugin } from 'vite';
import { knownPlugins } from '../known-plugins.ts';
import { leaveOutStyles } from '../leave-out-styles.ts';
import { leaveOutUnreached } from '../leave-out-unreached.ts';
import { leaveOutUnused } from '../leave-out-unused.ts';
import { projectFolder } from '../project-folder.mjs';

/**
 * The element as a page's script tag names it: `elv-load-schedule.js`, with what it loads later in `chunks/` beside it.
 * It is built without the pages, whose shares in its modules would break it into many small files.
 *
 * @param dist folder that the build is made in
 */
export function elementConfig(dist: string): InlineConfig {
  return {
    configFile: false,
    root: projectFolder,
    base: './',
    publicDir: false,
    plugins: [leaveOutUnused(), leaveOutUnreached(), knownPlugins(), nameLicences],
    css: leaveOutStyles,
    worker: { rolldownOptions: { output: { entryFileNames: 'chunks/[name]-[hash].js' } } },
    build: {
      target: 'es2022',
      outDir: dist,
      emptyOutDir: false,
      manifest: true,
      // Nothing is put into the head of the page to load chunks ahead of their time.
      modulePreload: false,
      chunkSizeWarningLimit: 900,
      rolldownOptions: {
        input: { 'elv-load-schedule': join(projectFolder, 'components/load-schedule/load-schedule.define.ts') },
        preserveEntrySignatures: 'exports-only',
        output: { entryFileNames: '[name].js', chunkFileNames: 'chunks/[name]-[hash].js' },
      },
    },
  };
}

/** Has the script say where the licences of what it holds and loads are: making it small takes them out of the code. */
const nameLicences: Plugin = {
  name: 'name-licences',
  apply: 'build',
  generateBundle(_options, bundle) {
    const script = bundle['elv-load-schedule.js'];
    if (script?.type !== 'chunk') this.error('The build has no elv-load-schedule.js.');
    script.code = `/*! It and chunks/ hold parts of libraries; their licences are in NOTICES.txt, which goes with these files. */\n${script.code}`;
  },
};
