import type { ClassDeclaration } from 'custom-elements-manifest/schema';
import { elementOf, type ElementManifest } from './element-manifest.ts';

interface Described {
  readonly name: string;
  readonly description?: string;
}

/**
 * What pages use and no comment describes.
 *
 * @returns names such as `attribute src` and `ElvLoadEvent sheet`
 */
export function missingDescriptions(manifest: ElementManifest): string[] {
  const element = elementOf(manifest);
  const classes = manifest.modules[0]!.declarations! as ClassDeclaration[];
  const described: [kind: string, parts: readonly Described[]][] = [
    [
      'attribute', element.attributes,
    ], ['event', element.events], ['slot', element.slots ?? []], ['part', element.cssParts ?? []],
    ['custom property', element.cssProperties], ['state', element.cssStates ?? []],
    ...classes.map(({ name, members = [] }): [string, readonly Described[]] => [name, members]),
  ];
  return described.flatMap(([kind, parts]) =>
    parts.filter(({ description = '' }) => description === '').map(({ name }) => `${kind} ${name}`));
}
