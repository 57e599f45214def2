/** One message in the other languages. */
export interface Translation {
  readonly de: string;
  readonly fr: string;
}

/** Messages of one area by their English text. */
export type Area = Readonly<Record<string, Translation>>;
