import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';

/**
 * Puts the files of a folder beside the built pages, under the same name as in the project, so that an attribute of a
 * page such as `src="../data/x.schedule.json"` holds in development and in the build alike.
 *
 * @param folder its path from the project's folder
 * @returns a plugin of Vite, for builds only
 */
export function copyFolder(folder: string): Plugin {
  return {
    name: 'copy-folder',
    apply: 'build',
    generateBundle() {
      for (const entry of readdirSync(folder, { recursive: true, encoding: 'utf8' })) {
        if (statSync(join(folder, entry)).isDirectory()) continue;
        const name = entry.replaceAll('\\', '/');
        this.emitFile({ type: 'asset', fileName: `${folder}/${name}`, source: readFileSync(join(folder, name)) });
      }
    },
  };
}
