import { attribute, attributesOf, plainText } from './xml-elements.ts';

/** A sheet of a workbook. */
export interface WorkbookSheet {
  readonly name: string;
  /** Path of its part in the package; `undefined` for one without cells, as a sheet with a chart. */
  readonly path: string | undefined;
  readonly isHidden: boolean;
}

/**
 * The sheets of a workbook in their order.
 * @param workbook the part `xl/workbook.xml`.
 * @param relations the part `xl/_rels/workbook.xml.rels`, which says where each sheet lies.
 */
export function sheetsOf(workbook: string, relations: string): WorkbookSheet[] {
  const worksheets = attributesOf(relations, 'Relationship')
    .filter((each) => attribute(each, 'Type')?.endsWith('/worksheet'));
  return attributesOf(workbook, 'sheet').map((attributes) => {
    const id = attribute(attributes, '\\w+:id');
    const relation = worksheets.find((each) => attribute(each, 'Id') === id);
    const target = relation && attribute(relation, 'Target');
    return {
      name: attribute(attributes, 'name') ?? '',
      path: target === undefined ? undefined : target.startsWith('/') ? target.slice(1) : `xl/${target}`,
      isHidden: /hidden/i.test(attribute(attributes, 'state') ?? ''),
    };
  });
}

/** Ranges of a workbook that have a name, by that name. @param workbook the part `xl/workbook.xml`. */
export function namedRanges(workbook: string): Map<string, string> {
  const found = workbook.matchAll(/<(?:\w+:)?definedName(\s[^<>]*)>([^<]*)</g);
  return new Map([...found].map(([, attributes = '', range = '']) => [
    attribute(attributes, 'name') ?? '', plainText(range),
  ]));
}
