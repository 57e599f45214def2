import type { CellValue } from '../../../schedule/index.ts';

/** The aliases in a cell: parted by semicolons, without spaces around them. */
export function readAliases(cell: CellValue | undefined): string[] {
  return typeof cell === 'string' ? cell.split(';').map((alias) => alias.trim()).filter((alias) => alias !== '') : [];
}

/** A name as an alias: a semicolon would part it. */
export function aliasOf(name: string): string {
  return name.replaceAll(';', ',').trim();
}

/** The cell with more aliases; what it has stays as it is written. */
export function withAliases(cell: CellValue | undefined, names: readonly string[]): string {
  const there = readAliases(cell);
  const known = new Set(there.map((alias) => alias.toLowerCase()));
  const more = names.map(aliasOf).filter((name) => known.size < known.add(name.toLowerCase()).size);
  return more.length === 0 && typeof cell === 'string' ? cell : [...there, ...more].join('; ');
}
