import type { Quantity } from './quantity.ts';

/** What a message may be given: a text that is said already, a number, or a figure with its unit. */
export type MessageValue = string | number | Quantity;

/** What stands before the first brace of a message, that brace, and what follows it. */
type Cut<Text extends string> =
  Text extends `${infer Before}{${infer After}`
    ? Before extends `${infer Earlier}}${infer Between}` ? [Earlier, '}', `${Between}{${After}`] : [Before, '{', After]
    : Text extends `${infer Before}}${infer After}` ? [Before, '}', After] : [Text, '', ''];

/**
 * Names of the values that a message is given, as ICU MessageFormat has them: `{name}`, and `{n, plural, one {…} other
 * {…}}`, whose choices are messages in turn.
 * @template Inside what is read: the text of a message or the choices of a value, the innermost first.
 */
type Names<Text extends string, Inside extends readonly string[], Found extends string> =
  Cut<Text> extends [infer Before extends string, infer Brace, infer After extends string]
    ? Brace extends '' ? Found
      : Inside extends readonly ['choices', ...infer Outside extends string[]]
        ? Brace extends '{' ? Names<After, ['text', ...Inside], Found> : Names<After, Outside, Found>
        : Brace extends '}'
          ? Inside extends readonly ['text', ...infer Outside extends string[]] ? Names<After, Outside, Found> : Found
          : After extends `${infer Name}}${infer Rest}`
            ? Name extends `${infer Counted},${infer Kind},${string}`
              ? After extends `${Counted},${Kind},${infer Choices}` ? Names<Choices, ['choices', ...Inside], Found
                | Counted> : never
              : Names<Rest, Inside, Found | Name>
            : Before
    : never;

/** Names of the values that a message is given; any, where the message is not known when it is compiled. */
export type NamesIn<Message extends string> = string extends Message ? string
  : Message extends string ? Names<Message, ['text'], never> : never;

/**
 * What `say` takes behind a message: its values by name, all of them; nothing where it has none.
 * @template Known names that are given elsewhere.
 */
export type ValuesOf<Message extends string, Known extends string = never> =
  string extends Message ? [values?: Readonly<Record<string, MessageValue>>]
    : [Exclude<NamesIn<Message>, Known>] extends [never] ? []
      : [values: Readonly<Record<Exclude<NamesIn<Message>, Known>, MessageValue>>];
