/** A text as a formula of a spreadsheet holds it. */
export const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;
