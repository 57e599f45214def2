import type { ClassDeclaration, ClassField, ClassMethod } from 'custom-elements-manifest/schema';
import { elementOf, type ElementManifest } from './element-manifest.ts';

/**
 * The reference of the element as a page in Markdown.
 *
 * @param manifest what the element's comments say
 */
export function referencePage(manifest: ElementManifest): string {
  const element = elementOf(manifest);
  const members = element.members;
  const fields =
    members.filter((member): member is ClassField & { readonly readonly?: boolean } => member.kind === 'field');
  const methods = members.filter((member): member is ClassMethod => member.kind === 'method');
  const eventClasses = new Map(
    manifest.modules[0]!.declarations!.slice(1).map((each) => [each.name, each as ClassDeclaration]),
  );
  const sections = [
    table('Attributes', [
      'attribute', 'type', 'default', 'meaning',
    ], element.attributes.map(({ name, type, default: value, description }) =>
      [code(name), code(type?.text), code(value), description])),
    table('Properties', [
      'property', 'type', 'default', 'meaning',
    ], fields.map(({ name, type, default: value, description, readonly }) =>
      [code(name), code(type?.text), readonly === true ? 'read only' : code(value), description])),
    table('Methods', ['method', 'returns', 'meaning'], methods.map((method) =>
      [code(signature(method)), code(method.return?.type?.text), meaningOf(method)])),
    table('Events', ['event', 'class', 'carries', 'when'], element.events.map(({ name, type, description }) =>
      [code(name), code(type.text), carried(eventClasses.get(type.text)), description])),
    table(
      'Slots', ['slot', 'meaning'], (element.slots ?? []).map(({ name, description }) => [code(name), description])
    ),
    table(
      'Parts', ['part', 'meaning'],
      (element.cssParts ?? []).map(({ name, description }) => [code(`::part(${name})`), description])
    ),
    table(
      'States', ['state', 'meaning'],
      (element.cssStates ?? []).map(({ name, description }) => [code(`:state(${name})`), description])
    ),
    table('Custom properties', ['property', 'default', 'meaning'],
      element.cssProperties.map(({ name, default: value, description }) => [code(name), code(value), description])),
  ];
  return `# \`<${element.tagName!}>\`\n\n${element.description!}\n\nThis page is made from the comments of the element.\n\n`
    + sections.filter((section) => section !== '').join('\n');
}

function table(title: string, headings: readonly string[], rows: readonly (readonly (string | undefined)[])[]): string {
  if (rows.length === 0) return '';
  const line = (cells: readonly (string | undefined)[]) => `| ${cells.map((cell = '') => inCell(cell)).join(' | ')} |`;
  return [`## ${title}\n`, line(headings), line(headings.map(() => '---')), ...rows.map(line), ''].join('\n');
}

function code(text: string | undefined): string {
  return text === undefined || text === '' ? '' : `\`${text}\``;
}

function inCell(text: string): string {
  return text.replaceAll('|', '\\|').replace(/\s*\n\s*/g, ' ');
}

function signature({ name, parameters = [], static: isStatic }: ClassMethod): string {
  return `${isStatic === true ? 'static ' : ''}${name}(${parameters.map((parameter) => `${parameter.name}${parameter.optional === true ? '?' : ''}: ${parameter.type?.text ?? 'unknown'}`).join(', ')})`;
}

function meaningOf({ description = '', parameters = [], return: returned }: ClassMethod): string {
  const notes = parameters.filter((parameter) => parameter.description !== undefined)
    .map((parameter) => `\`${parameter.name}\`: ${withStop(parameter.description!)}`);
  return [
    description, ...notes, ...(returned?.description === undefined ? [] : [`Returns ${withStop(returned.description)}`])
  ].join(' ');
}

function carried(declaration: ClassDeclaration | undefined): string {
  return (declaration?.members ?? [])
    .filter((member): member is ClassField => member.kind === 'field' && member.static !== true)
    .map(({ name, description = '' }) => `\`${name}\`: ${withStop(description)}`).join(' ');
}

function withStop(text: string): string {
  return /[.!?]$/.test(text.trim()) ? text.trim() : `${text.trim()}.`;
}
