const CHARACTERS: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };

/** Attributes of every element of a name, in one pass whatever the text is. */
export function attributesOf(xml: string, name: string): string[] {
  return [...xml.matchAll(new RegExp(`<(?:\\w+:)?${name}(\\s[^<>]*)>`, 'g'))].map(([, attributes = '']) => attributes);
}

/** Value of an attribute among those of an element. */
export function attribute(attributes: string, name: string): string | undefined {
  const found = new RegExp(`\\s${name}=(["'])(.*?)\\1`, 's').exec(attributes)?.[2];
  return found === undefined ? undefined : plainText(found);
}

/** A text as it reads, where XML writes some signs in another way. */
export function plainText(text: string): string {
  return text.replace(/&(?:#x([\da-f]+)|#(\d+)|(\w+));/gi, (whole, hex?: string, decimal?: string, name?: string) => {
    if (hex !== undefined) return signOf(parseInt(hex, 16)) ?? whole;
    return decimal !== undefined ? signOf(Number(decimal)) ?? whole : CHARACTERS[name!] ?? whole;
  });
}

function signOf(code: number): string | undefined {
  return code <= 0x10ffff ? String.fromCodePoint(code) : undefined;
}
