import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';
import { KNOWN_PLUGINS } from '../src/schedule/formula/known-functions.ts';
import { withoutUnused } from './leave-out-unused.ts';
import { projectFolder } from './project-folder.mjs';

/** The formula engine, and what it reads formulas with. */
const engine = ['node_modules/hyperformula/es', 'node_modules/chevrotain/lib_esm/src'];
/** Their modules, but for those that check a licence, which stay as they are. */
const shortened = /\/(?:hyperformula\/es\/(?!license\/)|chevrotain\/lib_esm\/src\/)[\w/]+\.m?js$/;
/** A method of a class, as the modules of the one and of the other are written, with its name. */
const method =
  /^ {2}(?:static )?(\w+)\([^\n]*\) \{\n[^]*?^ {2}\}$|^ {4}\w+\.prototype\.(\w+) = function \([^]*?^ {4}\};$/gm;
/** Where a method can be meant: after a dot, or as a text, as the methods of functions are listed. */
const said = /(?<=[.'"])\w+/g;
const comments = /\/\*[^]*?\*\/|^\s*\/\/.*$/gm;
/** How many methods there are to leave out at least, so that nothing grows unseen. */
const least = 150;

/**
 * Leaves the formula engine's methods out of the build whose names are said neither in `src/engine` nor in what is kept
 * of the two: about 8 KB gzipped. It goes by names alone, so what it leaves out is never called.
 *
 * @returns a plugin of Vite, for builds only, that stands after `leaveOutUnused`; it fails where the engine is written
 * in another way
 */
export function leaveOutUnreached(): Plugin {
  let reached = new Set<string>();
  let left = 0;
  return {
    name: 'leave-out-unreached',
    apply: 'build',
    buildStart() {
      left = 0;
      reached = reachedNames();
    },
    transform: {
      order: 'pre',
      filter: { id: shortened },
      handler(code) {
        const shorter = code.replace(method, (text, ofClass?: string, ofPrototype?: string) => {
          if (reached.has(ofClass ?? ofPrototype!)) return text;
          left += 1;
          return '';
        });
        return { code: shorter, map: null };
      },
    },
    buildEnd(error) {
      if (!error && left < least) this.error(`Only ${left} methods of the formula engine are left out, not ${least}.`);
    },
  };
}

/** The names that are said outside of methods, and by the methods of these names, and so on. */
function reachedNames(): Set<string> {
  const bodies = new Map<string, string>();
  const rest = engine.flatMap(texts).map(({ path, text }) => !shortened.test(path) ? text
    : text.replace(method, (body, ofClass?: string, ofPrototype?: string) => {
      const name = ofClass ?? ofPrototype!;
      bodies.set(name, `${bodies.get(name) ?? ''}\n${body.replace(`.${name} = `, '')}`);
      return '';
    }));
  const callers = texts('src/engine').map(({ text }) => text);
  const reached = new Set(['constructor', ...[...rest, ...callers].join('\n').match(said)!]);
  // A set goes on to what is added to it while it is gone through.
  for (const name of reached) for (const other of bodies.get(name)?.match(said) ?? []) reached.add(other);
  return reached;
}

/** The modules of a folder that are built, as far as they are used, without their comments. */
function texts(folder: string): { readonly path: string; readonly text: string }[] {
  return readdirSync(join(projectFolder, folder), { recursive: true, encoding: 'utf8' })
    .map((name) => `/${folder}/${name.replaceAll('\\', '/')}`)
    .filter((path) => /\.m?[jt]s$/.test(path) && isBuilt(path))
    .map((path) => ({ path, text: withoutUnused(path, readFileSync(join(projectFolder, path), 'utf8')).replace(comments, '') }));
}

/** Whether a module is no list of names, and no plugin of functions that no formula may call. */
function isBuilt(path: string): boolean {
  const [, plugin] = /\/interpreter\/plugin\/(\w+)\.mjs$/.exec(path) ?? [];
  return !/\/i18n\/languages\/|\/functionMetadata\/|\/plugin\/index/.test(path)
    && (plugin === undefined || KNOWN_PLUGINS.includes(plugin) || !/(?<!Function)Plugin$/.test(plugin));
}
