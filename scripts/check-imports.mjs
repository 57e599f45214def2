// Checks the direction of imports, and that the top folder holds nothing but what belongs there.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { findImportFaults } from './import-rules.mjs';
import { projectFolder } from './project-folder.mjs';

const topEntries = new Set([
  'README.md', 'DEVELOPERS.md', 'package.json', 'tsconfig.json', 'src', 'components', 'examples', 'tests', 'data',
  // What the tools need, or a repository has anyway.
  'package-lock.json', '.oxlintrc.json', 'vite.config.ts', 'vitest.config.ts', 'scripts', 'LICENSE', 'CHANGELOG.md',
  '.ci', '.gitignore', '.npmrc', '.git',
]);
const ignored = readFileSync(join(projectFolder, '.gitignore'), 'utf8').split(/\r?\n/)
  .map((line) => line.replace(/\/$/, ''));

/** @type {Map<string, string>} */
const texts = new Map();
for (const folder of ['src', 'components']) {
  for (const entry of readdirSync(join(projectFolder, folder), { recursive: true, encoding: 'utf8' })) {
    const file = `${folder}/${entry.replaceAll('\\', '/')}`;
    if (file.endsWith('.ts')) texts.set(file, readFileSync(join(projectFolder, file), 'utf8'));
  }
}

const messages = [
  ...findImportFaults(texts).map(({ file, specifier, message }) => `${file}: '${specifier}': ${message}`),
  ...readdirSync(projectFolder).filter((name) => !topEntries.has(name) && !ignored.includes(name))
    .map((name) => `${name}: does not belong in the top folder`),
];
for (const message of messages) console.error(message);
if (messages.length === 0) console.log(`The imports of ${texts.size} files run one way.`);
process.exitCode = messages.length === 0 ? 0 : 1;
