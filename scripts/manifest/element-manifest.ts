import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as analyser from '@custom-elements-manifest/analyzer';
import type {
  Attribute, ClassDeclaration, ClassMember, CssCustomProperty, CustomElement, Event, JavaScriptModule, Package,
} from 'custom-elements-manifest/schema';
import type typescript from 'typescript';
import type { SourceFile } from 'typescript';
import * as door from '../../components/load-schedule/index.ts';
import { tokens } from '../../components/look/tokens.styles.ts';
import { projectFolder } from '../project-folder.mjs';
import { returnedValues } from './returned-values.ts';

/** What the analyser exports besides what its types say: its own compiler, whose trees it reads. */
const { create, ts } = analyser as unknown as {
  readonly create: (given: { modules: SourceFile[]; plugins: analyser.Plugin[] }) => Package;
  readonly ts: typeof typescript;
};

/** The element as the manifest describes it; `:state()` is newer than the format's own types. */
export interface ElementDeclaration extends ClassDeclaration, CustomElement {
  readonly cssStates?: readonly { readonly name: string; readonly description?: string }[];
  attributes: Attribute[];
  members: ClassMember[];
  events: Event[];
  cssProperties: CssCustomProperty[];
}

export interface ElementManifest extends Package {
  modules: JavaScriptModule[];
}

/** Folders of the element, its events and their names in the package. */
const folders = ['components/load-schedule', 'components/takeoff-reader'];
const doorPath = 'dist/modules/components/load-schedule/index.js';
const definePath = 'dist/modules/components/load-schedule/load-schedule.define.js';

/** What Lit or the browser calls, and no page. */
const calledByOthers = /Callback$|^(?:scheduleUpdate|willUpdate|render)$/;

/**
 * Describes the element for tools, in the format of the custom-elements manifest: what its class says in comments, the
 * defaults that a new element has, the classes of its events.
 *
 * @see https://github.com/webcomponents/custom-elements-manifest
 */
export function elementManifest(): ElementManifest {
  const declarations = analysed();
  const element = declarations.find((each): each is ElementDeclaration => each.name === door.LoadScheduleElement.name);
  if (element?.tagName === undefined) throw new Error('The class of the element or its tag was not found.');
  const events = eventClasses(declarations);
  refuseUnknown('event', element.events.filter(({ description }) => description !== undefined), [...events.keys()]);
  refuseUnknown('attribute', element.attributes, attributeNames(element));
  const described = [publicElement(element, events), ...events.values()].map(withoutOrigin);
  return {
    schemaVersion: '1.0.0',
    readme: '',
    modules: [
      {
        kind: 'javascript-module', path: doorPath, declarations: described,
        exports: described.map(({ name }) => ({ kind: 'js', name, declaration: { name, module: doorPath } })),
      },
      {
        kind: 'javascript-module', path: definePath, declarations: [],
        exports: [
          {
            kind: 'custom-element-definition', name: element.tagName,
            declaration: { name: element.name, module: doorPath },
          },
        ],
      },
    ],
  };
}

/** A comment that tells of what is not there any more, or is written in another way, would be left out unseen. */
function refuseUnknown(kind: string, described: readonly { readonly name: string }[], names: readonly string[]): void {
  const unknown = described.map(({ name }) => name).filter((name) => !names.includes(name));
  if (unknown.length > 0) {
    throw new Error(`The comment of the element tells of ${kind} ${unknown.join(', ')}, which there is not.`);
  }
}

/** The element of a manifest. */
export function elementOf(manifest: ElementManifest): ElementDeclaration {
  return manifest.modules[0]!.declarations![0] as ElementDeclaration;
}

function analysed(): ClassDeclaration[] {
  const files = folders.flatMap((folder) => readdirSync(join(projectFolder, folder))
    .filter((name) => name.endsWith('.ts')).map((name) => `${folder}/${name}`));
  const modules = files.map((file) =>
    ts.createSourceFile(file, readFileSync(join(projectFolder, file), 'utf8'), ts.ScriptTarget.ES2022, true));
  const { modules: read } = create({ modules, plugins: [returnedValues] });
  return read.flatMap(({ declarations = [] }) => declarations)
    .filter((each): each is ClassDeclaration => each.kind === 'class');
}

/** The event classes that the door exports, by the name of their events. */
function eventClasses(declarations: readonly ClassDeclaration[]): Map<string, ClassDeclaration> {
  const classes = new Map<string, ClassDeclaration>();
  for (const exported of Object.values(door)) {
    if (!('type' in exported)) continue;
    const declaration = declarations.find(({ name }) => name === exported.name);
    if (declaration === undefined) throw new Error(`The class ${exported.name} was not found.`);
    const { kind, name, description = '', superclass, members = [] } = declaration;
    classes.set(exported.type, { kind, name, description, superclass, members: members.filter(isPublic) });
  }
  return classes;
}

/**
 * Attributes of the element, in the order of its comment: those that it watches, and those that a property of the same
 * name reads.
 */
function attributeNames({ attributes, members }: ElementDeclaration): string[] {
  const { observedAttributes } = door.LoadScheduleElement;
  const known = new Set([...observedAttributes, ...members.filter(isPublic).map(({ name }) => name)]);
  return [...new Set([...attributes.map(({ name }) => name).filter((name) => known.has(name)), ...observedAttributes])];
}

function publicElement(element: ElementDeclaration, events: ReadonlyMap<string, ClassDeclaration>): ElementDeclaration {
  const { elementProperties } = door.LoadScheduleElement;
  const fresh = new door.LoadScheduleElement() as unknown as Readonly<Record<string, unknown>>;
  const members = element.members.filter(isPublic);
  const propertyOf = new Map<string, string>();
  for (const [property, { attribute, state }] of elementProperties) {
    if (state !== true && attribute !== false) {
      propertyOf.set(typeof attribute === 'string' ? attribute : String(property), String(property));
    }
  }
  for (const { name } of element.attributes) {
    if (!propertyOf.has(name) && members.some((member) => member.name === name)) propertyOf.set(name, name);
  }
  const fields = new Map(members.flatMap((member) => (member.kind === 'field' ? [[member.name, member]] : [])));
  const defaults =
    new Map([...propertyOf.values()].map((property) => [property, { default: JSON.stringify(fresh[property]) }]));
  return {
    ...element,
    superclass: { name: 'LitElement', package: 'lit' },
    attributes: attributeNames(element).map((name) => {
      const fieldName = propertyOf.get(name);
      const { description = '' } = element.attributes.find((attribute) => attribute.name === name) ?? {};
      const { type } = fields.get(fieldName ?? '') ?? {};
      return {
        name, description, ...(type && { type }),
        ...(fieldName !== undefined && { fieldName, ...defaults.get(fieldName) })
      };
    }),
    members: members.map((member) => ({ ...member, ...defaults.get(member.name) })),
    events: [...events].map(([name, { name: text }]) => {
      const place = element.events.findIndex((event) => event.name === name);
      return { place, event: { name, description: element.events[place]?.description ?? '', type: { text } } };
    }).sort((a, b) => a.place - b.place).map(({ event }) => event),
    cssProperties: element.cssProperties.map((property) => {
      const value = new RegExp(`${property.name}: ([^;]+);`).exec(tokens.cssText)?.[1];
      return { ...property, ...(value !== undefined && { default: value }) };
    }),
  };
}

/** Whether pages use a member. */
function isPublic(member: ClassMember): boolean {
  const { name, privacy = 'public' } = member;
  const isOfClass = member.kind === 'field' && member.static === true;
  return privacy === 'public' && !isOfClass && !name.startsWith('#') && !calledByOthers.test(name);
}

/** Leaves out which of its own classes a part comes from: a page sees one class. */
function withoutOrigin<Declaration extends ClassDeclaration>(declaration: Declaration): Declaration {
  return JSON.parse(JSON.stringify(
    declaration, (key, value: unknown) => (key === 'inheritedFrom' ? undefined : value)
  )) as Declaration;
}
