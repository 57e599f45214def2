// Packs what `npm run build` made, and uses it as others will.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { CHECKS } from './package/checks.ts';
import { makeScratchProject } from './package/scratch-project.ts';

const folder = mkdtempSync(join(tmpdir(), 'load-schedule-package-'));
try {
  const scratch = await makeScratchProject(folder);
  await Promise.all(CHECKS.map(async ([title, check]) => {
    try {
      await check(scratch);
      console.log(`ok      ${title}`);
    } catch (error) {
      console.error(`FAILED  ${title}\n${error instanceof Error ? error.message : String(error)}`);
      process.exitCode = 1;
    }
  }));
} finally {
  rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
}
