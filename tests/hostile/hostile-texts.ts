/** Texts made to break whatever shows, saves or reads them; each is a text that a person could paste. */
export const HOSTILE_TEXTS: readonly string[] = [
  // Markup that would run.
  '<script>alert(1)</script>', '<img src=x onerror=alert(1)>', '"><svg onload=alert(1)>',
  '</textarea><script>alert(1)</script>',
  '</template><iframe srcdoc="<script>alert(1)</script>">', 'javascript:alert(1)',
  '<a href="javascript:alert(1)">x</a>', ']]><x/>', '<!--', '-->',
  // Formulas that a spreadsheet would run.
  '=1+1', '=cmd|\'/C calc\'!A0', '+1+1', '-1+1', '@SUM(1)', '=HYPERLINK("http://192.0.2.1/";"x")',
  '=WEBSERVICE("http://192.0.2.1/")', '\t=1+1', '\r=1+1',
  // Names that a program gives to its own things.
  '__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty', 'valueOf', 'then', 'null', 'undefined', 'NaN',
  'Infinity', 'true',
  // Braces of templates and messages.
  '{', '}', '{name}', '{n, plural, one {x}', '${1+1}', '{{1+1}}', '%s %d %n', '\\u0041', '\\', '\'', '"', '""', '`',
  // Characters that change how others are shown, halves of characters, ends of lines.
  '\u202egnp.exe', '\u2066x', '\ufeffx', '\u0000', 'a\u0000b', '\ud800', 'x\udc00y', '\u2028', '\u2029', 'a\r\nb',
  'a\rb', '\v\f', '\u0007',
  'e\u0301'.repeat(50), '\u{1f9d1}\u200d\u{1f527}', 'İıſK', '٣٫٥', '１２',
  // Numbers at the edge.
  '1e308', '-1e308', '1e999', '-0', '0x10', '1e-400', '9007199254740993', '1,2,3', '1.2.3', '--1', '5 %%', '1 A A',
  '1 MW',
  // Long ones.
  'x'.repeat(100_000), '('.repeat(5000), '['.repeat(5000), '"'.repeat(5001), ','.repeat(20_000),
  `=${'('.repeat(1000)}1${')'.repeat(1000)}`, `=${'-'.repeat(1900)}1`,
];
