import type { Plugin } from 'vite';
import { KNOWN_PLUGINS } from '../src/schedule/formula/known-functions.ts';

const list = '/hyperformula/es/interpreter/plugin/index.mjs';
const line = /^export \{ (\w+) \} from "[^"]+";$/gm;

/**
 * Leaves the formula engine's functions that no formula may call out of the build.
 *
 * @returns a plugin of Vite, for builds only; it fails where the engine lists its functions in another way
 */
export function knownPlugins(): Plugin {
  let kept = 0;
  return {
    name: 'known-plugins',
    apply: 'build',
    buildStart() {
      kept = 0;
    },
    transform: {
      order: 'pre',
      filter: { id: `**${list}` },
      handler(code) {
        const lines = [...code.matchAll(line)].filter(([, name]) => KNOWN_PLUGINS.includes(name!)).map(([all]) => all);
        kept = lines.length;
        return { code: lines.join('\n'), map: null };
      },
    },
    buildEnd(error) {
      if (error || kept === KNOWN_PLUGINS.length) return;
      this.error(
        `Found ${kept} of ${KNOWN_PLUGINS.length} function plugins of the formula engine: its list has changed.`
      );
    },
  };
}
