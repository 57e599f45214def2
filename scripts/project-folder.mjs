import { fileURLToPath } from 'node:url';

/** Absolute path of the project's top folder, wherever a script is called from. */
export const projectFolder = fileURLToPath(new URL('..', import.meta.url));
