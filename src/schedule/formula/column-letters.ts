/** Letters of a column, as spreadsheets name it, by its place from 0: 0 is A, 26 is AA. */
export function columnLetters(place: number): string {
  return (place >= 26 ? columnLetters(Math.floor(place / 26) - 1) : '') + String.fromCharCode(65 + (place % 26));
}

/** Place of a column, from 0, by its letters in either case: A is 0, AA is 26; -1 for no letters. */
export function columnPlace(letters: string): number {
  return Array.from(letters.toUpperCase()).reduce((place, letter) => (place + 1) * 26 + letter.charCodeAt(0) - 65, -1);
}
