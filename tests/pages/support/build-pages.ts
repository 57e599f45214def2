import { execFile } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { promisify } from 'node:util';

const PROJECT = resolve(import.meta.dirname, '../../..');

/** The built software with its pages, in a folder of its own. */
export interface Built {
  readonly folder: string;
  remove(): Promise<void>;
}

/**
 * Builds the software and the pages of `examples/` as they are published, unless `BUILT_FOLDER` names where that is
 * done. In a process of its own: the environment of a test would make the libraries take their versions for
 * development.
 */
export async function buildPages(): Promise<Built> {
  const done = process.env.BUILT_FOLDER;
  if (done !== undefined) return { folder: done, remove: () => Promise.resolve() };
  const folder = await mkdtemp(join(tmpdir(), 'pages-'));
  const words = [
    join(PROJECT, 'node_modules/vite/bin/vite.js'), 'build', '--outDir', folder, '--emptyOutDir', '--logLevel', 'warn',
  ];
  await promisify(execFile)(
    process.execPath, words, { cwd: PROJECT, env: { ...process.env, NODE_ENV: 'production', VITEST: '' } }
  );
  return { folder, remove: () => rm(folder, { recursive: true }) };
}
