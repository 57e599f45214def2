import { cpSync, mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { projectFolder } from '../project-folder.mjs';
import { readJson } from '../read-json.mjs';
import { npm } from './run.ts';

export interface PackageFile {
  readonly name: string;
  readonly version: string;
  readonly license: string;
  readonly exports: Readonly<Record<string, unknown>>;
  readonly customElements: string;
  readonly bin: Readonly<Record<string, string>>;
  readonly dependencies: Readonly<Record<string, string>>;
  readonly peerDependencies: Readonly<Record<string, string>>;
}

export interface ScratchProject {
  readonly folder: string;
  /** The packed package. */
  readonly tarball: string;
  /** Where the package lies in the project. */
  readonly installed: string;
  readonly package: PackageFile;
}

/**
 * Packs the package as npm publishes it, and makes a project that has it, and of other packages only those that it
 * names as its dependencies and peers: what it uses beyond them is missing there, as it would be at a user's. They are
 * those of this project, so that no network is needed and no newer version comes in unseen.
 *
 * @param folder empty folder for the project
 */
export async function makeScratchProject(folder: string): Promise<ScratchProject> {
  const packed =
    JSON.parse(await npm(['pack', '--ignore-scripts', '--json', '--pack-destination', folder], projectFolder)) as
    { filename: string; files: { path: string }[] }[];
  const { filename, files } = packed[0]!;
  const description = readJson(join(projectFolder, 'package.json')) as PackageFile;
  const packages = join(folder, 'node_modules');
  const installed = join(packages, description.name);
  for (const { path } of files) cpSync(join(projectFolder, path), join(installed, path));
  for (const name of Object.keys({ ...description.dependencies, ...description.peerDependencies })) {
    mkdirSync(dirname(join(packages, name)), { recursive: true });
    symlinkSync(join(projectFolder, 'node_modules', name), join(packages, name), 'junction');
  }
  mkdirSync(join(packages, '.bin'));
  for (const [name, path] of Object.entries(description.bin)) {
    symlinkSync(join(installed, path), join(packages, '.bin', name));
  }
  writeFileSync(join(folder, 'package.json'), '{ "private": true, "type": "module" }\n');
  return { folder, tarball: join(folder, filename), installed, package: description };
}
