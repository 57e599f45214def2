// Builds all that is delivered into `dist/`, or into the folder that is named: `npm run build -- FOLDER`.
import { writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { build } from 'vite';
import { modulesConfig } from './build/modules-config.ts';
import { singleFileConfig } from './build/single-file-config.ts';
import { writeDeclarations } from './build/write-declarations.ts';
import { writeReference } from './build/write-reference.ts';
import { elementManifest } from './manifest/element-manifest.ts';
import { projectFolder } from './project-folder.mjs';

const { positionals: [folder = 'dist'] } = parseArgs({ allowPositionals: true });
const dist = resolve(projectFolder, folder);

// The script with what it loads later, and the pages.
await build({ root: projectFolder, build: { outDir: dist, emptyOutDir: true } });
await build(singleFileConfig(dist));
await build(modulesConfig(dist));
writeDeclarations(join(dist, 'modules'));
await writeReference(join(dist, 'reference'));
writeFileSync(join(dist, 'custom-elements.json'), `${JSON.stringify(elementManifest(), null, 2)}\n`);
