import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'vite';
import { run } from './run.ts';

/**
 * Bundles code of a user with everything that it imports, leaves out what nothing uses, and runs the outcome in Node.
 *
 * @param folder the user's project
 * @param code calls `report` with what is to be told
 * @returns what it reported
 */
export async function runShaken(folder: string, code: string): Promise<unknown> {
  writeFileSync(join(folder, 'bundled.js'), `const report = (told) => console.log(JSON.stringify(told));\n${code}\n`);
  await build({
    configFile: false,
    root: folder,
    logLevel: 'error',
    // For Node, where the outcome is run; a page's build takes the same modules but for Lit's own classes of elements.
    ssr: { noExternal: true },
    build: { ssr: 'bundled.js', outDir: 'bundle', emptyOutDir: true },
  });
  return JSON.parse(await run(process.execPath, ['bundle/bundled.js'], folder));
}
