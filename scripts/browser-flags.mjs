/**
 * How the browser of the tests is started. No sandbox, because it refuses one to root, as whom the machines of
 * continuous integration run; `gc()` for the test that nothing stays in memory; the rest keeps it from the network.
 */
export const browserFlags = [
  '--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage', '--disable-quic', '--no-first-run',
  '--disable-background-networking', '--disable-component-update', '--disable-sync', '--js-flags=--expose-gc',
];
