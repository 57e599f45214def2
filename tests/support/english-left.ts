/**
 * Words that neither German nor French has: where one stands in a sentence of theirs, something was left in English.
 */
export const ENGLISH_LEFT = new RegExp(String.raw`(?<!\p{L})(?:${[
  'the', 'of', 'and', 'is', 'are', 'has', 'have', 'not', 'with', 'that', 'this', 'which', 'there', 'it', 'its', 'must', 'may', 'can', 'cannot',
  'be', 'by', 'for', 'from', 'row', 'rows', 'sheet', 'column', 'quantity', 'enter', 'choose', 'known', 'unknown', 'supply', 'supplies', 'branch',
  'device', 'devices', 'demand', 'current', 'rated', 'output', 'outputs', 'run', 'runs', 'feed', 'over', 'near', 'within',
].join('|')})(?!\p{L})`, 'iu');
