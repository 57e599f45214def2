/** Markup that needs no escaping any more. */
export class Markup {
  readonly text: string;

  constructor(text: string) {
    this.text = text;
  }
}

type Part = string | number | Markup | readonly Markup[];

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;',
};

/** Template tag for HTML: every text put in is escaped, markup is taken as it is. */
export function html(strings: TemplateStringsArray, ...parts: readonly Part[]): Markup {
  return new Markup(strings.reduce((all, text, index) => all + written(parts[index - 1]!) + text));
}

function written(part: Part): string {
  if (part instanceof Markup) return part.text;
  if (typeof part === 'object') return part.map(({ text }) => text).join('');
  return escaped(String(part));
}

/** A text as HTML and XML have it, in elements and in attributes. */
export function escaped(text: string): string {
  // Control characters, which HTML does not allow, would stop a reader of XML as well.
  // eslint-disable-next-line no-control-regex -- they are what is looked for
  return text.replace(/[&<>"']/g, (sign) => ENTITIES[sign]!).replace(/[\0-\x08\x0b\x0c\x0e-\x1f]/g, '\ufffd');
}
