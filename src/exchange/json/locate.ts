import { visit } from 'jsonc-parser';
import type { Problem } from '../problem.ts';

/**
 * Adds to each problem the line and the character at which its path begins in the text; a path that is not there takes
 * the place of what would contain it.
 */
export function locate(text: string, problems: readonly Problem[]): Problem[] {
  const wanted = new Set(problems.flatMap(({ path }) => pathsAround(path)));
  const places = new Map<string, { line: number; column: number }>();
  const note = (line: number, character: number, path: () => readonly (string | number)[]) => {
    const parts = path();
    const name = parts.length === 0 ? '' : `/${parts.join('/')}`;
    if (wanted.has(name) && !places.has(name)) places.set(name, { line: line + 1, column: character + 1 });
  };
  visit(text, {
    onObjectBegin: (_offset, _length, line, character, path) => { note(line, character, path); },
    onArrayBegin: (_offset, _length, line, character, path) => { note(line, character, path); },
    onLiteralValue: (_value, _offset, _length, line, character, path) => { note(line, character, path); },
  });
  return problems.map((problem) => {
    const path = pathsAround(problem.path).find((each) => places.has(each));
    return path === undefined ? problem : { ...problem, ...places.get(path) };
  });
}

/** A path and all that contain it, the innermost first. */
function pathsAround(path: string): string[] {
  const parts = path.split('/');
  return parts.map((_, index) => parts.slice(0, parts.length - index).join('/'));
}
