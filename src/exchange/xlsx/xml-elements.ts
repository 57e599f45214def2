const CHARACTERS: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };

/** An element of a text in XML. */
export interface XmlElement {
  readonly attributes: string;
  readonly inner: string;
}

/** Elements of a name, which do not lie within one another. */
export function elements(xml: string, name: string): XmlElement[] {
  return [...xml.matchAll(new RegExp(`<(?:\\w+:)?${name}(\\s[^>]*?)?(?:/>|>([^]*?)</(?:\\w+:)?${name}>)`, 'g'))]
    .map(([, attributes = '', inner = '']) => ({ attributes, inner }));
}

/** Attributes of every element of a name, in one pass whatever the text is. */
export function attributesOf(xml: string, name: string): string[] {
  return [...xml.matchAll(new RegExp(`<(?:\\w+:)?${name}(\\s[^<>]*)>`, 'g'))].map(([, attributes = '']) => attributes);
}

/** Value of an attribute among those of an element. */
export function attribute(attributes: string, name: string): string | undefined {
  const found = new RegExp(`\\s${name}=(["'])(.*?)\\1`, 's').exec(attributes)?.[2];
  return found === undefined ? undefined : plain(found);
}

/** The text of a cell, whole or in several runs. */
export function textIn(xml: string): string {
  return elements(xml, 't').map(({ inner }) => plain(inner)).join('');
}

function plain(text: string): string {
  return text.replace(/&(?:#x([\da-f]+)|#(\d+)|(\w+));/gi, (whole, hex?: string, decimal?: string, name?: string) => {
    if (hex !== undefined) return String.fromCodePoint(parseInt(hex, 16));
    return decimal !== undefined ? String.fromCodePoint(Number(decimal)) : CHARACTERS[name!] ?? whole;
  });
}
