import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import type { Plugin } from 'vite';
import { readJson } from '../read-json.mjs';

/** A library of which a part stands in a built file. */
export interface BundledLibrary {
  readonly name: string;
  readonly version: string;
  /** As its package says: `MIT`, or where it is said. */
  readonly license: string;
  /** Text of its licence files; empty where the package has none. */
  readonly text: string;
}

/**
 * Writes `NOTICES.txt` beside the built files: the licences of the libraries in them, which making small takes out of
 * the code, and which whoever passes the files on has to pass on with them. The file itself names them at its top where
 * it stands alone.
 *
 * @param banner name of the built file that is to name them
 * @returns a plugin of Vite, for builds only; it fails where a library does not say its licence
 */
export function notices(banner?: string): Plugin {
  return {
    name: 'notices',
    apply: 'build',
    generateBundle(_options, bundle) {
      const folders = new Set<string>();
      for (const output of Object.values(bundle)) {
        if (output.type !== 'chunk') continue;
        for (const module of output.moduleIds) {
          const folder = packageFolder(module);
          if (folder !== undefined) folders.add(folder);
        }
      }
      const libraries = [...folders].map(readLibrary).sort((a, b) => (a.name < b.name ? -1 : 1));
      for (const { name, license, text } of libraries) {
        if (license === '' && text === '') this.error(`${name} does not say under which licence it is.`);
      }
      this.emitFile({ type: 'asset', fileName: 'NOTICES.txt', source: noticesText(libraries) });
      const named = banner === undefined ? undefined : bundle[banner];
      if (named?.type === 'chunk') named.code = `${bannerText(libraries)}\n${named.code}`;
    },
  };
}

/** Folder of the package that a module belongs to; undefined for one of the project's own. */
function packageFolder(module: string): string | undefined {
  const path = module.replace(/^\0/, '').replace(/\?.*$/, '').replaceAll('/', sep);
  const marker = `${sep}node_modules${sep}`;
  const start = path.lastIndexOf(marker) + marker.length;
  if (start < marker.length) return undefined;
  const [first = '', second = ''] = path.slice(start).split(sep);
  return path.slice(0, start) + (first.startsWith('@') ? join(first, second) : first);
}

function readLibrary(folder: string): BundledLibrary {
  const { name, version, license = '' } =
    readJson(join(folder, 'package.json')) as { name: string; version: string; license?: string };
  const files = existsSync(folder)
    ? readdirSync(folder).filter((file) => /^(?:licen[cs]e|notice)(?:[.-].*)?$/i.test(file)).sort()
    : [];
  return {
    name, version, license, text: files.map((file) => readFileSync(join(folder, file), 'utf8').trim()).join('\n\n'),
  };
}

function noticesText(libraries: readonly BundledLibrary[]): string {
  const parts = libraries.map(({ name, version, license, text }) =>
    `${'='.repeat(80)}\n${name} ${version}: ${license}\n${'='.repeat(80)}\n\n${text === '' ? 'Its package holds no text of the licence.' : text}`);
  return `The built files hold parts of these libraries, each under its own licence.\n\n${parts.join('\n\n')}\n`;
}

function bannerText(libraries: readonly BundledLibrary[]): string {
  const lines = libraries.map(({ name, version, license }) => ` * ${name} ${version}: ${license}`);
  return `/*! Holds parts of these libraries; their licences are in NOTICES.txt, which goes with this file.\n${lines.join('\n')}\n */`;
}
