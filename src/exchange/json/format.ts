/** What `format` says in a schedule file. */
export const FORMAT = 'elv-load-schedule';
