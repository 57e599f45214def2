export * from './accept-finding.ts';
export * from './insert-rows.ts';
export * from './move-rows.ts';
export * from './paste-cells.ts';
export * from './remove-rows.ts';
export * from './rename-tag.ts';
export * from './set-cells.ts';
export * from './set-revisions.ts';
