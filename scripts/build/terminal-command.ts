import type { Plugin } from 'vite';

const commands = /^src\/cli\/(?:table|changes|share|takeoff|update|join|bill|terminals)\.js$/;

/** Puts the line before each terminal command by which a shell knows that Node runs it. */
export function terminalCommand(): Plugin {
  return {
    name: 'terminal-command',
    apply: 'build',
    renderChunk(code, { fileName }) {
      return commands.test(fileName) ? { code: `#!/usr/bin/env node\n${code}`, map: null } : null;
    },
  };
}
