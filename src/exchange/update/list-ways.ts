/** What becomes of the rows of a list: they update those of their tag, come behind the others, or in their place. */
export const LIST_WAYS = ['update', 'append', 'replace'] as const;
/** One of `LIST_WAYS`. */
export type ListWay = (typeof LIST_WAYS)[number];
