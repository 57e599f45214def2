import { posix } from 'node:path';
import { build, type Plugin } from 'vite';
import { elementConfig } from './element-config.ts';

const source = /\/components\/load-schedule\/load-schedule\.define\.ts$/;
const built = 'elv-load-schedule.js';
/** Stands for the built file until the place of the page is known. */
const placeholder = 'element-beside-pages';

/**
 * Has built pages load the very file that is delivered, as the pages of others do, and builds that file beside them.
 *
 * @returns a plugin of Vite, for builds of pages only
 */
export function elementBesidePages(): Plugin {
  return {
    name: 'element-beside-pages',
    apply: 'build',
    resolveId: {
      order: 'pre',
      filter: { id: source },
      handler: () => ({ id: placeholder, external: true }),
    },
    renderChunk: (code, { fileName }) => (
      code.includes(placeholder) ? { code: addressed(code, fileName), map: null } : null
    ),
    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        for (const page of Object.values(bundle)) {
          if (page.type === 'asset' && page.fileName.endsWith('.html')) page.source =
            addressed(String(page.source), page.fileName);
        }
      },
    },
    async writeBundle({ dir }) {
      await build(elementConfig(dir!));
    },
  };
}

/** A built text with the address of the element from its place. */
function addressed(text: string, fileName: string): string {
  const path = posix.relative(posix.dirname(fileName), built);
  return text.replaceAll(placeholder, path.startsWith('.') ? path : `./${path}`);
}
