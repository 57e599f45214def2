import { IntlMessageFormat } from 'intl-messageformat';
import { isWellFormed, languageOf, type Language } from './language.ts';
import type { MessageValue, ValuesOf } from './values-of.ts';

export type MessageValues = Readonly<Record<string, MessageValue>>;
/** The messages of one language by the English ones. */
export type Translations = ReadonlyMap<string, string>;

/**
 * Speaks one language to a person. A message is written in English where it is said, as ICU MessageFormat has it
 * (`{name}`, `{n, plural, one {# row} other {# rows}}`), and is the key under which the catalogue holds the other
 * languages.
 */
export interface Words {
  readonly language: Language;
  /** BCP 47 tag by whose custom numbers are written. */
  readonly locale: string;
  /**
   * Says a message with its values, each of which has to be given. Figures stand with the decimal sign of the locale.
   */
  say<Message extends string>(message: Message, ...values: ValuesOf<Message>): string;
  /** Says a text of the schema, which may hold braces of its own: a title, a help, the words of a rule. */
  text(message: string): string;
  /** Writes a number with the decimal sign of the locale: all its digits, or as many decimals as are asked for. */
  number(value: number, decimals?: number): string;
  /** Writes a date that is given as YYYY-MM-DD as the locale has it; any other text stays as it is. */
  date(text: string): string;
  /** A title of the schema as it stands within a sentence: «demand», in German «Strombedarf» and «nutzbarer Strom». */
  within(title: string): string;
}

/**
 * Makes the words of a language.
 * @param locale BCP 47 tag; one that is not well-formed, as a page's `lang` may be, counts as English.
 * @param translations messages of that language; English ones need none.
 */
export function makeWords(locale: string, translations?: Translations): Words {
  const tag = isWellFormed(locale) ? locale : 'en';
  const language = translations === undefined ? 'en' : languageOf(tag);
  const formats = new Map<string, { readonly format: IntlMessageFormat; readonly counted: ReadonlySet<string> }>();
  const numbers = new Map<number | undefined, Intl.NumberFormat>();
  const text = (message: string): string => translations?.get(message) ?? CALLED[message] ?? message;
  const number = (value: number, decimals?: number): string => {
    let format = numbers.get(decimals);
    if (format === undefined) numbers.set(decimals, format = numberFormat(tag, decimals));
    // Without the noise of the last digits: 0.3, not 0.30000000000000004.
    return format.format(decimals === undefined ? Number(value.toPrecision(12)) : value);
  };
  let dates: Intl.DateTimeFormat | undefined;
  const date = (entered: string): string => {
    const at = new Date(/^\d{4}-\d\d-\d\d$/.test(entered) ? entered : Number.NaN);
    // A day that no month has is taken for one of the next month by some engines.
    return Number.isNaN(at.valueOf()) || !at.toISOString().startsWith(entered) ? entered
      : (dates ??= dateFormat(tag, language)).format(at);
  };
  const written = (value: MessageValue): string => {
    if (typeof value === 'string') return value;
    if (typeof value === 'number') return number(value);
    return `${number(value.value, value.decimals)}${value.unit === '' ? '' : ` ${value.unit}`}`;
  };
  const formatters = {
    getNumberFormat: () => ({ format: (value: number) => number(value) }) as Intl.NumberFormat,
    getDateTimeFormat: (...of: ConstructorParameters<typeof Intl.DateTimeFormat>) => new Intl.DateTimeFormat(...of),
    getPluralRules: (...of: ConstructorParameters<typeof Intl.PluralRules>) => new Intl.PluralRules(...of),
  };
  const prepared = (message: string) => {
    const known = formats.get(message);
    if (known !== undefined) return known;
    const format = new IntlMessageFormat(text(message), language, undefined, { ignoreTag: true, formatters });
    const made = { format, counted: countedIn(format.getAst()) };
    formats.set(message, made);
    return made;
  };
  const say: Words['say'] = (message: string, values: MessageValues = {}): string => {
    const { format, counted } = prepared(message);
    const given: Record<string, string | number> = {};
    for (const [name, value] of Object.entries(values)) {
      given[name] = typeof value === 'number' && counted.has(name) ? value : written(value);
    }
    return String(format.format(given));
  };
  const within = (title: string): string => {
    const own = text(title);
    const keeps = language === 'de' ? !ADJECTIVE_BEFORE_NOUN.test(own) : /^\p{Lu}{2}/u.test(own);
    return keeps ? own : own.charAt(0).toLowerCase() + own.slice(1);
  };
  return { language, locale: tag, say, text, number, date, within };
}

/** A German title that begins with an adjective, which is small within a sentence: «nutzbarer Strom». */
const ADJECTIVE_BEFORE_NOUN = /^\p{Lu}\p{Ll}+(?:e|er|es) \p{Lu}/u;

/** What choices are called whose keys are no words; all else that English says stands where it is said. */
const CALLED: Readonly<Partial<Record<string, string>>> = {
  'dc': 'DC', 'dcCoil': 'DC coil', 'free': 'free-standing', 'wall': 'on a wall', 'row-end-free': 'end of a row',
  'row-end-wall': 'end of a row on a wall', 'row-middle-free': 'middle of a row',
  'row-middle-wall': 'middle of a row on a wall',
  'row-middle-wall-covered': 'middle of a row on a wall with a covered top', 'flush': 'let into a wall',
};

/** English, which needs no catalogue. */
export const ENGLISH: Words = makeWords('en');

function numberFormat(locale: string, decimals: number | undefined): Intl.NumberFormat {
  const digits = decimals === undefined ? { maximumFractionDigits: 20 }
    : { minimumFractionDigits: decimals, maximumFractionDigits: decimals };
  return new Intl.NumberFormat(
    locale, { ...digits, useGrouping: false, signDisplay: 'negative', numberingSystem: 'latn' }
  );
}

/** Day, month and year; in English the month by its name, since its regions have day and month the other way round. */
function dateFormat(locale: string, language: Language): Intl.DateTimeFormat {
  return new Intl.DateTimeFormat(locale, {
    day: language === 'en' ? 'numeric' : '2-digit', month: language === 'en' ? 'short' : '2-digit', year: 'numeric',
    timeZone: 'UTC', calendar: 'gregory', numberingSystem: 'latn',
  });
}

type MessageParts = ReturnType<IntlMessageFormat['getAst']>;

/** Names of the values that decide between singular and plural, which must stay numbers. */
function countedIn(parts: MessageParts, names = new Set<string>()): ReadonlySet<string> {
  for (const part of parts) {
    if (!('options' in part)) continue;
    names.add(part.value);
    for (const { value } of Object.values(part.options)) countedIn(value, names);
  }
  return names;
}
