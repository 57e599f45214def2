import { execFile } from 'node:child_process';
import { copyFile, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { chromium } from 'playwright';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { browserFlags } from '../../scripts/browser-flags.mjs';
import { findBrowser } from '../../src/cli/find-browser.mjs';
import { serveFolder } from '../pages/support/serve-folder.ts';
import { walkThrough } from '../pages/support/walk.ts';
import { watch } from '../pages/support/watch.ts';

const project = join(import.meta.dirname, '../..');
const POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self'; "
  + "require-trusted-types-for 'script'; trusted-types lit-html elv-load-schedule";
const PAGE = `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<title>One file</title>
<link rel="icon" href="data:,">
<script type="module" src="elv-load-schedule.single.js"></script>
<elv-load-schedule src="demo.schedule.json" demo-src="demo.schedule.json" license-key="non-commercial-and-evaluation"></elv-load-schedule>
`;

let folder: string;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'single-file-'));
  await writeFile(join(folder, 'index.html'), PAGE);
  await copyFile(join(project, 'data/demo.schedule.json'), join(folder, 'demo.schedule.json'));
  const done = process.env.BUILT_FOLDER;
  if (done !== undefined) {
    for (const name of ['NOTICES.txt', 'elv-load-schedule.single.js']) {
      await copyFile(join(done, name), join(folder, name));
    }
    return;
  }
  // In a process of its own: the environment of a test would make the libraries take their versions for development.
  const code = `import { build } from 'vite'; import { singleFileConfig } from './scripts/build/single-file-config.ts';
    await build(singleFileConfig(${JSON.stringify(folder)}));`;
  const environment = { ...process.env, NODE_ENV: 'production', VITEST: '' };
  await promisify(execFile)(
    process.execPath, ['--import', 'tsx', '--input-type=module', '--eval', code], { cwd: project, env: environment }
  );
}, 120_000);

afterAll(() => rm(folder, { recursive: true, force: true, maxRetries: 5 }));

test('one script and the notices of its libraries are all that is built', async () => {
  expect((await readdir(folder)).sort())
    .toEqual(['NOTICES.txt', 'demo.schedule.json', 'elv-load-schedule.single.js', 'index.html']);
  const [code, notices] = await Promise.all([
    'elv-load-schedule.single.js', 'NOTICES.txt',
  ].map((name) => readFile(join(folder, name), 'utf8')));
  const banner = code!.slice(0, code!.indexOf('*/'));
  // Libraries that stand in the file for certain, with the begin of their licences as they are published.
  for (const [library, words] of [
    [
      'handsontable', 'This software is protected by applicable copyright laws',
    ], ['hyperformula', 'GNU GENERAL PUBLIC LICENSE'], ['lit-html', 'BSD 3-Clause'],
    ['papaparse', 'The MIT License'], ['fflate', 'MIT License'], ['chevrotain', 'Apache License'],
  ] as const) {
    expect(banner).toContain(` * ${library} `);
    expect(notices!.toLowerCase()).toContain(words.toLowerCase());
  }
  // Nothing is loaded besides.
  expect(code).not.toMatch(/\bimport\s*(?:\(|["'])|\bfrom\s*["']\.{1,2}\//);
});

test('with that one script a page under a strict policy goes through the whole software', async () => {
  const server = await serveFolder(folder, { 'content-security-policy': POLICY });
  const executablePath = findBrowser();
  const browser = await chromium.launch({ ...(executablePath && { executablePath }), args: browserFlags });
  try {
    const context = await browser.newContext({
      viewport: { width: 1280, height: 800 }, locale: 'en-GB', timezoneId: 'UTC', permissions: [
        'clipboard-read', 'clipboard-write',
      ],
    });
    const page = await context.newPage();
    page.setDefaultTimeout(10_000);
    const { faults, requests } = await watch(page);
    await page.goto(`${server.address}/`);
    await walkThrough(page);
    expect(faults).toEqual([]);
    expect(new Set(requests.filter((address) =>
      address.startsWith('http')).map((address) => address.replace(server.address, ''))))
      .toEqual(new Set(['/', '/elv-load-schedule.single.js', '/demo.schedule.json']));
  } finally {
    await browser.close();
    await server.close();
  }
}, 180_000);
