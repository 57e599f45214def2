import { svelte } from '@sveltejs/vite-plugin-svelte';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { defineConfig } from 'vite';
import { beginWithDemo } from './scripts/begin-with-demo.ts';
import { elementBesidePages } from './scripts/build/element-beside-pages.ts';
import { copyFolder } from './scripts/copy-folder.ts';
import { leaveOutStyles } from './scripts/leave-out-styles.ts';

const root = import.meta.dirname;
const examples = join(root, 'examples');
const pages = readdirSync(examples, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.html')).map((name) => name.replaceAll('\\', '/'));

/**
 * The pages of `examples/`, on the server of the developer and as built pages. A build makes the element too, as
 * `elv-load-schedule.js` beside them with what it loads later.
 */
export default defineConfig({
  root,
  base: './',
  appType: 'mpa',
  publicDir: false,
  plugins: [elementBesidePages(), copyFolder('data'), copyFolder('examples/schedules'), copyFolder('examples/lists'), beginWithDemo(), svelte()],
  css: leaveOutStyles,
  // A sandboxed frame has an origin of its own, and fetches the script as from another server.
  preview: { cors: { origin: '*' } },
  build: {
    target: 'es2022',
    modulePreload: false,
    rolldownOptions: {
      input: Object.fromEntries(pages.map((page) => [`examples/${page.replace(/\.html$/, '')}`, join(examples, page)])),
      output: { entryFileNames: '[name].js', chunkFileNames: 'examples/chunks/[name]-[hash].js' },
    },
  },
});
