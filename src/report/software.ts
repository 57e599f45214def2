/** Name and version of this software, as printed on each page; a test holds it against the package. */
export const SOFTWARE = 'elv-load-schedule 0.1.0';
