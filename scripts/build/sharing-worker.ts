import type { Plugin } from 'vite';

/** How the worker that shares devices out is started in the source. */
const started =
  'new Worker(new URL(\'../../src/allocation/sharing-worker.ts\', import.meta.url), { type: \'module\' })';

function replaceStart(name: string, replacement: string): Plugin {
  let found = 0;
  return {
    name,
    apply: 'build',
    buildStart() {
      found = 0;
    },
    transform: {
      order: 'pre',
      filter: { id: '**/components/**/*.ts', code: 'new Worker(' },
      handler(code) {
        if (code.includes(started)) found += 1;
        return { code: code.replace(started, replacement), map: null };
      },
    },
    buildEnd(error) {
      if (!error && found !== 1) {
        this.error(`The worker that shares out is started in ${found} places as expected, and not in one.`);
      }
    },
  };
}

/** Lets the address of the worker stand as bundlers understand it, with the name that the worker has in the package. */
export function keepWorkerAddress(): Plugin {
  return replaceStart('keep-worker-address', started.replace('.ts\'', '.js\''));
}

/**
 * Leaves the worker out of a build of one file: a second file is not there, and a worker made of text is forbidden on
 * strict pages. Sharing out then runs on the page in short steps, as wherever a worker cannot start.
 */
export function withoutWorker(): Plugin {
  return replaceStart('without-worker', '(() => { throw new Error(\'One file holds no worker.\'); })()');
}
