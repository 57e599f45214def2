import Ajv from 'ajv';
import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { LoadScheduleElement } from '../../components/load-schedule/index.ts';
import { tokens } from '../../components/look/index.ts';
import { elementManifest, elementOf } from '../../scripts/manifest/element-manifest.ts';
import { missingDescriptions } from '../../scripts/manifest/missing-descriptions.ts';
import { referencePage } from '../../scripts/manifest/reference-page.ts';

const project = join(import.meta.dirname, '../..');
const manifest = elementManifest();
const element = elementOf(manifest);
const sources = textIn('components');

function textIn(folder: string): string {
  return readdirSync(join(project, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
    .map((entry) => readFileSync(join(entry.parentPath, entry.name), 'utf8')).join('\n');
}

const names = (parts: readonly { readonly name: string }[] = []): string[] => parts.map(({ name }) => name).sort();

const found = (text: string, pattern: RegExp): string[] =>
  [...new Set([...text.matchAll(pattern)].map(([, name]) => name!))].sort();

describe('the manifest of the element', () => {
  test('is one as the format has it', () => {
    const schema = JSON.parse(
      readFileSync(createRequire(import.meta.url).resolve('custom-elements-manifest/schema.json'), 'utf8')
    ) as object;
    const validate = new Ajv({ strict: false, allErrors: true }).compile(schema);
    validate(manifest);
    expect(validate.errors).toBeNull();
  });

  test('describes everything that a page uses', () => {
    expect(missingDescriptions(manifest)).toEqual([]);
  });

  test('finds what is not described', () => {
    const damaged = structuredClone(manifest);
    elementOf(damaged).attributes.find(({ name }) => name === 'src')!.description = '';
    delete elementOf(damaged).members.find(({ name }) => name === 'undo')!.description;
    expect(missingDescriptions(damaged)).toEqual(['attribute src', 'LoadScheduleElement undo']);
  });

  test('names the parts, slots, states and custom properties that there are, and no others', () => {
    const template = readFileSync(join(project, 'components/load-schedule/load-schedule.ts'), 'utf8')
      .replace(/\/\*\*[\s\S]*?\*\//g, '');
    expect(names(element.cssParts)).toEqual(found(template, /\spart="([\w-]+)"/g));
    expect(names(element.slots)).toEqual(found(template, /<slot name="([\w-]+)"/g));
    expect(names(element.cssProperties)).toEqual(found(tokens.cssText, /(--elv-[\w-]+):/g));
    const states = readFileSync(join(project, 'components/load-schedule/element-states.ts'), 'utf8');
    expect(names([...element.cssStates ?? []])).toEqual(found(states, /:state\((\w+)\)/g));
  });

  test('names the events that are fired', () => {
    expect(names(element.events)).toEqual(['elv-change', 'elv-columns', 'elv-error', 'elv-language', 'elv-load', 'elv-save']);
    for (const { type } of element.events) expect(sources.includes(`new ${type.text}(`), type.text).toBe(true);
  });
});

describe('what a page sets', () => {
  const fresh = new LoadScheduleElement() as unknown as Record<string, unknown>;
  const tests = textIn('tests/browser') + textIn('tests/pages');

  test.each(element.attributes.map((attribute) => [
    attribute.name, attribute,
  ] as const))('%s has a property, a default, and tests', (name, attribute) => {
    // `lang` is of every element, and has no default of its own.
    if (name !== 'lang') {
      expect(attribute.fieldName, 'property').toBeDefined();
      expect(fresh, 'accessor').toHaveProperty(attribute.fieldName!);
      expect(attribute.default, 'default').toBe(JSON.stringify(fresh[attribute.fieldName!]));
    }
    if (attribute.type?.text === 'boolean') expect(attribute.default, 'a presence means something').toBe('false');
    expect(new RegExp(`\\b${name}\\b|\\b${attribute.fieldName ?? name}\\b`).test(tests), 'named in a test').toBe(true);
  });

  test.each(element.members.map(({ name }) => name))('%s is named in a test', (name) => {
    expect(new RegExp(`\\.${name}\\b|\\b${name}[:,]`).test(tests)).toBe(true);
  });
});

test('the reference page says what the comments say; after a change of them, run this test with -u', async () => {
  await expect(referencePage(manifest)).toMatchFileSnapshot('../../components/load-schedule/reference.md');
});
