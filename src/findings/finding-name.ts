import type { Finding } from './finding.ts';

/** What tells a finding from the others of a schedule while its rows stay. */
export function findingName({ sheet, id, key, rule }: Finding): string {
  return `${sheet} ${id} ${key} ${rule}`;
}
