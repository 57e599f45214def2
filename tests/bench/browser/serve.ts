import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build, preview } from 'vite';
import { leaveOutUnused } from '../../../scripts/leave-out-unused.ts';

export interface Served {
  readonly address: string;
  close(): Promise<void>;
}

/** Builds the page with the whole element as it is published, and serves it on a free port of this machine. */
export async function servePage(): Promise<Served> {
  const outDir = await mkdtemp(join(tmpdir(), 'bench-'));
  const shared = { configFile: false, root: import.meta.dirname, logLevel: 'warn' } as const;
  await build({
    ...shared,
    plugins: [leaveOutUnused()],
    build: {
      target: 'es2022', outDir, emptyOutDir: true, modulePreload: false, chunkSizeWarningLimit: 4_000,
      rolldownOptions: { input: join(import.meta.dirname, 'page.html') },
    },
  });
  const server = await preview({ ...shared, build: { outDir }, preview: { host: '127.0.0.1', port: 0 } });
  return {
    address: `${server.resolvedUrls!.local[0]!}page.html`,
    async close() {
      await server.close();
      await rm(outDir, { recursive: true });
    },
  };
}
