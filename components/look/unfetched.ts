import { message } from '../../src/words/index.ts';

/** What is said of a part of the software that did not come. */
export const UNFETCHED = message('This part could not be fetched. Check the connection, then try again.');
