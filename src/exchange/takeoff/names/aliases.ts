import type { CellValue } from '../../../schedule/index.ts';

/** The aliases in a cell: parted by semicolons, without spaces around them. */
export function readAliases(cell: CellValue | undefined): string[] {
  return typeof cell === 'string' ? cell.split(';').map((alias) => alias.trim()).filter((alias) => alias !== '') : [];
}

/** A name as an alias: a semicolon would part it. */
export function aliasOf(name: string): string {
  return name.replaceAll(';', ',').trim();
}

/** The cell with more aliases. */
export function withAliases(cell: CellValue | undefined, names: readonly string[]): string {
  return [...readAliases(cell), ...names.map(aliasOf)].join('; ');
}
