import { svelte } from '@sveltejs/vite-plugin-svelte';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { defineConfig } from 'vite';
import { beginWithDemo } from './scripts/begin-with-demo.ts';
import { copyFolder } from './scripts/copy-folder.ts';
import { leaveOutStyles } from './scripts/leave-out-styles.ts';
import { knownPlugins } from './scripts/known-plugins.ts';
import { leaveOutUnused } from './scripts/leave-out-unused.ts';

const root = import.meta.dirname;
const examples = join(root, 'examples');
const pages = readdirSync(examples, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.html')).map((name) => name.replaceAll('\\', '/'));

/**
 * One build for both: `dist/elv-load-schedule.js`, which a page names in its script tag, with what it loads later
 * beside it; and the pages of `examples/`, which use that same file.
 */
export default defineConfig({
  root,
  base: './',
  appType: 'mpa',
  publicDir: false,
  plugins: [leaveOutUnused(), knownPlugins(), copyFolder('data'), copyFolder('examples/schedules'), beginWithDemo(), svelte()],
  css: leaveOutStyles,
  worker: { rolldownOptions: { output: { entryFileNames: 'chunks/[name]-[hash].js' } } },
  // A sandboxed frame has an origin of its own, and fetches the script as from another server.
  preview: { cors: { origin: '*' } },
  build: {
    target: 'es2022',
    manifest: true,
    // Without the helper for preloading, a chunk that is loaded later is a plain import() relative to its importer.
    modulePreload: false,
    chunkSizeWarningLimit: 900,
    rolldownOptions: {
      input: {
        'elv-load-schedule': join(root, 'components/load-schedule/load-schedule.define.ts'),
        ...Object.fromEntries(pages.map((page) => [`examples/${page.replace(/\.html$/, '')}`, join(examples, page)])),
      },
      preserveEntrySignatures: 'exports-only',
      output: { entryFileNames: '[name].js', chunkFileNames: 'chunks/[name]-[hash].js' },
    },
  },
});
