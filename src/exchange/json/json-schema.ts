import {
  DETAIL_KEYS, ISSUE_STATES, SCHEMA, SHEET_NAMES, titleWithUnit, type Column, type InputColumn, type Sheet,
} from '../../schedule/index.ts';
import { FORMAT } from './format.ts';
import { VERSION } from './migrations.ts';

type JsonSchema = Readonly<Record<string, unknown>>;

/** A text in a column of numbers: a formula, or a number as it may be typed, with a unit behind it. */
const TYPED_NUMBER = String.raw`^\s*(=|[+\-−]?\s*[.,]?\d)`;

/** Keys of columns, or names. */
const KEYS: JsonSchema = { type: 'array', items: { type: 'string' } };
const bySheet = (schema: JsonSchema): JsonSchema => ({ type: 'object', additionalProperties: schema });

const SHEETS = object(SHEET_NAMES.map((name) => [name, { type: 'array', items: { $ref: `#/$defs/${name}` } }]));
const ACCEPTED: JsonSchema = { type: 'array', items: { $ref: '#/$defs/acceptance' } };
const VARIANT_PART = { required: ['sheets'], ...object([['sheets', SHEETS], ['accepted', ACCEPTED]]) };

/** Texts by name. */
const NAMED_TEXTS: JsonSchema = { type: 'object', additionalProperties: { type: 'string' } };

/**
 * The JSON Schema (draft 2020-12) of schedule files, made from the schema of the sheets. It is as strict about values
 * as reading is, apart from texts in columns of numbers, which only reading can judge; unknown keys pass in both.
 */
export function jsonSchema(): JsonSchema {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    $id: `urn:${FORMAT}:${VERSION}`,
    title: 'Load schedule for extra-low-voltage control panels',
    description: 'A text that begins with = in a column of numbers is a formula. It names cells as [qty] in '
      + 'the same row, [devices.qty@TAG] by tag, [devices.qty#3] by number, [devices.qty#3:#5] as a range.',
    type: 'object',
    required: ['format', 'version', 'sheets'],
    properties: {
      format: { const: FORMAT },
      version: { const: VERSION },
      details: object(DETAIL_KEYS.map((key) => [key, { type: ['string', 'number', 'null'] }])),
      sheets: SHEETS,
      accepted: ACCEPTED,
      revisions: { type: 'array', items: { $ref: '#/$defs/revision' } },
      view: {
        description: 'How the schedule is looked at.',
        ...object([
          ['rare', {
            ...KEYS, description: 'Rare columns that are shown although nothing stands in them: SHEET or SHEET.GROUP.',
          }],
          ['hidden', { ...bySheet(KEYS), description: 'Columns that are put out of sight, by key.' }],
          ['frozen', { ...bySheet({ type: 'string' }), description: 'The last column that stays in view, by key.' }],
          ['wide', {
            ...bySheet({ type: 'object', additionalProperties: { type: 'number', exclusiveMinimum: 0 } }),
            description: 'Widths of columns in sizes of type, by key.',
          }],
          ['loadTable', {
            description: 'What of the load table is handed over: what it is for, sections that are left out, pictures of all runs.',
            ...object([['form', { type: 'string' }], ['without', KEYS], ['allPictures', { type: 'boolean' }]]),
          }],
        ]),
      },
      lists: {
        description: 'What an office calls things in its takeoffs.',
        ...object([
          ['headings', {
            ...NAMED_TEXTS, description: 'What stands below a heading: a field of takeoffs, or ignore.',
          }],
          ['names', {
            ...NAMED_TEXTS,
            description: 'Names that count nothing, each with leave-out; those of device types are their aliases.',
          }],
        ]),
      },
      variants: {
        description: 'Other ways to do it, kept beside the schedule; nothing of them counts before it is taken over.',
        type: 'array', items: { $ref: '#/$defs/variant' },
      },
    },
    $defs: {
      ...Object.fromEntries(SHEET_NAMES.map((name) => [name, rowSchema(SCHEMA[name])])),
      acceptance: {
        description: 'A finding that a person accepts, with the reason.',
        required: ['sheet', 'tag', 'rule', 'reason', 'name', 'date'],
        ...object([
          ['sheet', { enum: SHEET_NAMES }],
          ...['tag', 'rule', 'reason', 'name', 'date'].map((key): [string, JsonSchema] => [key, { type: 'string' }]),
          ['row', {
            type: 'integer', minimum: 0,
            description: 'Number of the row, from 1, where its tag is empty or stands twice; 0: it is gone.',
          }],
          ['key', { type: 'string', description: 'Key of the column; every column where it is left out.' }],
          ['value', { type: ['string', 'number', 'boolean', 'null'], description: 'The value when it was accepted.' }],
          ['limit', { type: ['string', 'number', 'boolean', 'null'], description: 'The limit when it was accepted.' }],
          ['waiting', {
            type: 'integer', minimum: 0, description: 'How many rows waited for what is missing when it was accepted.',
          }],
        ]),
      },
      revision: {
        description: 'One issue of the schedule, for the history in the title block; the first one stands first.',
        required: ['revision'],
        ...object([
          ['revision', { type: ['string', 'number'] }],
          ...['date', 'name', 'text'].map((key): [string, JsonSchema] => [key, { type: 'string' }]),
          ['state', { enum: ISSUE_STATES, description: 'What it was issued for.' }],
          ['digest', {
            type: 'string', pattern: '^[0-9a-f]{64}$',
            description: 'The SHA-256 of the schedule as it was issued, without this entry. With it the entry stays as it is.',
          }],
        ]),
      },
      variant: {
        description: 'The sheets that differ, and those that their formulas name: both parts state the same ones.',
        required: ['name', 'base', 'tried'],
        ...object([
          ['name', { type: 'string', minLength: 1, description: 'Tells it from the other variants.' }],
          ['note', { type: 'string' }],
          ['date', { type: 'string', description: 'Date on which it was kept last, YYYY-MM-DD.' }],
          ['base', { description: 'The sheets as they were when it was tried out.', ...VARIANT_PART }],
          ['tried', { description: 'The same sheets as they are in it.', ...VARIANT_PART }],
        ]),
      },
    },
  };
}

function object(properties: readonly (readonly [string, JsonSchema])[]): JsonSchema {
  return { type: 'object', properties: Object.fromEntries(properties) };
}

function rowSchema(sheet: Sheet): JsonSchema {
  const cells = sheet.columns.map((column) => [column.key, cellSchema(column)] as const);
  return { title: sheet.title, description: sheet.help, ...object(cells) };
}

function cellSchema(column: Column): JsonSchema {
  const title = titleWithUnit(column);
  if (column.role === 'computed') {
    return { title, description: `${column.help} Worked out; ignored on reading.`, readOnly: true };
  }
  const { help, suggestions, default: value } = column;
  const names = suggestions?.map(({ label, value: stands, source }) => `${label} for ${stands} (${source})`);
  const description = names === undefined ? help : `${help} Names: ${names.join('; ')}.`;
  return { title, description, ...valueSchema(column), ...(value === undefined ? {} : { default: value }) };
}

function valueSchema(column: InputColumn): JsonSchema {
  switch (column.kind) {
    case 'text':
    case 'reference': return { type: ['string', 'number', 'null'] };
    case 'boolean': return { type: ['boolean', 'null'] };
    case 'choice': return { enum: [...column.choices!, null] };
    default: {
      const names = column.suggestions === undefined ? [] : [{ enum: column.suggestions.map(({ label }) => label) }];
      return { anyOf: [numberSchema(column), { type: 'string', pattern: TYPED_NUMBER }, ...names, { type: 'null' }] };
    }
  }
}

function numberSchema({ kind, metres, min, above, max }: InputColumn): JsonSchema {
  return {
    type: kind === 'integer' && metres !== true ? 'integer' : 'number',
    ...(min === undefined ? {} : { minimum: min }),
    ...(above === undefined ? {} : { exclusiveMinimum: above }),
    ...(max === undefined ? {} : { maximum: max }),
  };
}
