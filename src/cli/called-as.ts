/**
 * How a person calls a command: by its own name where the package is installed, by the script of that name within the
 * project, where the sources run as they are.
 * @param name of the script: `table`.
 */
export function calledAs(name: string): string {
  return process.argv[1]?.endsWith('.ts') === true ? `npm run -s ${name} --` : `elv-${name}`;
}
