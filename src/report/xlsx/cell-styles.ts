import { escaped } from '../html.ts';

/** How a cell looks. */
export interface CellStyle {
  /** A number format, such as `0.00`. */
  readonly format?: string;
  readonly font?: 'heading' | 'inherited' | 'title';
  readonly isComputed?: boolean;
  readonly wraps?: boolean;
  /** A number stands on the left, as texts do. */
  readonly isLeft?: boolean;
}

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
type Font = NonNullable<CellStyle['font']> | 'usual';
const FONTS: readonly Font[] = ['usual', 'heading', 'inherited', 'title'];
const BASE = '<sz val="10"/><name val="Arial"/>';
const FONT_XML: Readonly<Record<Font, string>> = {
  usual: BASE, heading: `<b/>${BASE}`, inherited: '<i/><sz val="10"/><color rgb="FF5A636C"/><name val="Arial"/>',
  title: '<b/><sz val="14"/><name val="Arial"/>',
};
/** The first two fills are fixed by the format. */
const FILLS = ['<patternFill patternType="none"/>', '<patternFill patternType="gray125"/>',
  '<patternFill patternType="solid"><fgColor rgb="FFF2F4F6"/></patternFill>'];
/** Numbers of formats below this one are the format's own. */
const FIRST_FORMAT = 164;

/** How a cell looks as long as a condition holds. */
export interface ConditionalStyle {
  readonly format?: string;
  /** Colours as RRGGBB. */
  readonly fill?: string;
  readonly ink?: string;
  readonly isBold?: boolean;
}

/** The looks of the cells of a workbook, each kept once and named by its number. */
export class CellStyles {
  readonly #styles: CellStyle[] = [];
  readonly #numbers = new Map<string, number>();
  readonly #formats: string[] = [];

  readonly #conditional: string[] = [];

  constructor() {
    this.number({});
  }

  /** The number of a look, for the cells that have it. */
  number(style: CellStyle): number {
    const { format = '', font = 'usual', isComputed = false, wraps = false, isLeft = false } = style;
    const name = [format, font, isComputed, wraps, isLeft].join(' ');
    const known = this.#numbers.get(name);
    if (known !== undefined) return known;
    if (format !== '') this.#format(format);
    this.#numbers.set(name, this.#styles.length);
    this.#styles.push(style);
    return this.#styles.length - 1;
  }

  /** Whether texts of a look wrap. */
  wraps(number: number): boolean {
    return this.#styles[number]?.wraps === true;
  }

  /** The number of a look that hangs on a condition. */
  conditional({ format, fill, ink, isBold }: ConditionalStyle): number {
    const xml = '<dxf>'
      + (ink === undefined && isBold !== true ? '' : `<font>${isBold === true ? '<b/>' : ''}${ink === undefined ? '' : `<color rgb="FF${ink}"/>`}</font>`)
      + (format === undefined ? '' : `<numFmt numFmtId="${this.#format(format)}" formatCode="${escaped(format)}"/>`)
      + (fill === undefined ? '' : `<fill><patternFill patternType="solid"><fgColor rgb="FF${fill}"/><bgColor rgb="FF${fill}"/></patternFill></fill>`)
      + '</dxf>';
    if (!this.#conditional.includes(xml)) this.#conditional.push(xml);
    return this.#conditional.indexOf(xml);
  }

  #format(format: string): number {
    if (!this.#formats.includes(format)) this.#formats.push(format);
    return FIRST_FORMAT + this.#formats.indexOf(format);
  }

  /** The part of the file that lists them. */
  xml(): string {
    const formats =
      this.#formats.map((code, index) => `<numFmt numFmtId="${FIRST_FORMAT + index}" formatCode="${escaped(code)}"/>`);
    const fonts = FONTS.map((font): string => `<font>${FONT_XML[font]}</font>`);
    const looks = this.#styles.map(({ format, font, isComputed, wraps, isLeft }) => {
      const number = format === undefined ? 0 : FIRST_FORMAT + this.#formats.indexOf(format);
      const fill = isComputed === true || font === 'heading' ? 2 : 0;
      return `<xf numFmtId="${number}" fontId="${FONTS.indexOf(font ?? 'usual')}" fillId="${fill}" borderId="0" xfId="0" applyNumberFormat="1" applyFont="1" applyFill="1" applyAlignment="1">`
        + `<alignment vertical="top"${isLeft === true ? ' horizontal="left"' : ''}${wraps === true ? ' wrapText="1"' : ''}/></xf>`;
    });
    return `<styleSheet xmlns="${MAIN}">${formats.length === 0 ? '' : counted('numFmts', formats)}${counted('fonts', fonts)}`
      + `${counted('fills', FILLS.map((fill) => `<fill>${fill}</fill>`))}<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>`
      + '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>'
      + `${counted('cellXfs', looks)}<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles>${this.#conditional.length === 0 ? '' : counted('dxfs', this.#conditional)}</styleSheet>`;
  }
}

function counted(name: string, items: readonly string[]): string {
  return `<${name} count="${items.length}">${items.join('')}</${name}>`;
}
