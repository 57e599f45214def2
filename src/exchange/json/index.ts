export { FORMAT } from './format.ts';
export { jsonSchema } from './json-schema.ts';
export { VERSION } from './migrations.ts';
export { parseJson } from './parse-json.ts';
export { areVariants } from './read-variants.ts';
export { readSchedule, type ReadSchedule } from './read-schedule.ts';
export { writeSchedule } from './write-schedule.ts';
