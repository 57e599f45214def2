// Installs what is missing, builds, and serves the demo until Ctrl+C.
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { ensurePackages } from './ensure-packages.mjs';
import { projectFolder } from './project-folder.mjs';

const port = 4173;

try {
  await ensurePackages();
  const { build, preview } = await import('vite');
  await build({ root: projectFolder, logLevel: 'warn' });
  // Where the port is taken, the next free one is.
  const server = await preview({ root: projectFolder, preview: { port } });
  const pages = readdirSync(join(projectFolder, 'dist', 'examples')).filter((name) => name.endsWith('.html'));
  const address = server.resolvedUrls?.local[0] ?? `http://localhost:${port}/`;
  console.log('\nThe demo is served. Open one of its pages in a browser; Ctrl+C stops it.');
  for (const page of pages) console.log(`  ${address}examples/${page === 'index.html' ? '' : page}`);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
