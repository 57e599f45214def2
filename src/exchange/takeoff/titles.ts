import { isPlaceTitle, looksLikeArea, OTHER, ranksOf } from './area-words.ts';
import { plainKey } from './plain-words.ts';

/** A title that stands above lines. */
export interface Title {
  readonly line: number;
  readonly text: string;
  /** How much it takes in. */
  readonly ranks: readonly number[];
  /** Its text as it is compared, where that names a place. */
  readonly place: string | undefined;
  /** It stands where rooms do, so that it may be one of them that has no devices. */
  readonly isRoom: boolean;
}

const titleOf = (line: number, text: string, isRoom: boolean): Title =>
  ({ line, text, ranks: ranksOf(text), place: isPlaceTitle(text) ? plainKey(text) : undefined, isRoom });

/**
 * The titles that hold for the lines below them, as a building over its storeys: one of the same kind takes the place
 * of another, and of what stood below that. One that stands right below another is within it.
 */
export class Titles {
  #titles: readonly Title[] = [];
  /** The sheet, where its name is that of a place. */
  readonly #sheet: Title | undefined;
  #isRightBelow = false;

  /** @param sheet its name, where it may be an area. */
  constructor(sheet: string | undefined) {
    if (sheet !== undefined && isPlaceTitle(sheet)) this.#sheet = titleOf(0, sheet, false);
  }

  add(line: number, text: string, isRoom: boolean): void {
    const added = titleOf(line, text, isRoom);
    const { ranks } = added;
    const alike = this.#titles.findIndex((title) => haveCommon(title.ranks, ranks));
    const above = alike >= 0 ? this.#titles.slice(0, alike)
      : this.#titles.filter((title) => this.#isRightBelow ? !title.ranks.includes(OTHER) || looksLikeArea(title.text)
        : Math.min(...title.ranks) < Math.min(...ranks));
    this.#titles = [...above, added];
    this.#isRightBelow = true;
  }

  /** A line stands below them. */
  read(): void {
    this.#isRightBelow = false;
  }

  /** From the one that takes in the most on; behind the sheet, unless one of them is of its kind. */
  get all(): readonly Title[] {
    const sheet = this.#sheet;
    const isSaid = sheet === undefined || this.#titles.some(({ ranks }) => haveCommon(ranks, sheet.ranks));
    return isSaid ? this.#titles : [sheet, ...this.#titles];
  }

  /** Those that name a place, apart from what a room says itself; L2 without devices does not hold for L3. */
  within(room: string): readonly Title[] {
    const own = ` ${plainKey(room)} `;
    return this.all.filter(({ place, text, isRoom }) => place !== undefined && !own.includes(` ${place} `)
      && !(isRoom && numbered(text) === numbered(room)));
  }
}

/** A text without its numbers, which alone tell rooms of one kind apart. */
function numbered(text: string): string {
  return text.toLowerCase().replace(/\d+/g, '#').trim();
}

function haveCommon(one: readonly number[], other: readonly number[]): boolean {
  return one.some((each) => other.includes(each));
}
