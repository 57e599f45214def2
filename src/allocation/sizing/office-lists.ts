import relayModules from '../../../data/relay-modules.json' with { type: 'json' };
import supplyRatings from '../../../data/supply-ratings.json' with { type: 'json' };

/** What an office keeps to choose from. */
export interface OfficeLists {
  /** Rated currents of supplies [A], each above 0. */
  readonly ratings: readonly number[];
  /** Ways of relay modules, each 1 or more. */
  readonly ways: readonly number[];
  /** Rating of a protected way where no row of the schedule says another [A], above 0; 4 by default. */
  readonly wayRating?: number;
}

/** The lists of the folder `data`, and a rating of ways that goes with thin field cables; common practice, no source. */
export const OFFICE_LISTS: OfficeLists = { ratings: supplyRatings.ratings, ways: relayModules.ways, wayRating: 4 };
