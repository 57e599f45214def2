/**
 * Functions that a formula may call: arithmetic, rounding, totals, conditions, texts and looking up, as in the small
 * and medium groups of functions of OpenFormula (OASIS OpenDocument 1.3, part 4, 2.3). Dates, finance, complex numbers,
 * statistical distributions and whatever fetches or changes by itself have no place in a load schedule; nor have REPT
 * and SUBSTITUTE, with which a short formula makes a text as large as the memory.
 */
const BY_PLUGIN: Readonly<Record<string, string>> = {
  AbsPlugin: 'ABS',
  BooleanPlugin: 'TRUE FALSE IF IFS AND OR XOR NOT SWITCH IFERROR IFNA CHOOSE',
  ConditionalAggregationPlugin: 'SUMIF COUNTIF AVERAGEIF SUMIFS COUNTIFS MINIFS MAXIFS',
  CountBlankPlugin: 'COUNTBLANK',
  CountUniquePlugin: 'COUNTUNIQUE',
  DegreesPlugin: 'DEGREES',
  ExpPlugin: 'EXP',
  InformationPlugin: 'COLUMNS ISERR ISNA ISERROR ISBLANK ISNUMBER ISLOGICAL ISTEXT ISNONTEXT INDEX NA ROWS',
  IsEvenPlugin: 'ISEVEN',
  IsOddPlugin: 'ISODD',
  LogarithmPlugin: 'LOG10 LOG LN',
  LookupPlugin: 'XLOOKUP MATCH',
  MathConstantsPlugin: 'PI SQRTPI',
  MathPlugin: 'FACT COMBIN GCD LCM MROUND QUOTIENT SIGN SUMX2MY2 SUMX2PY2 SUMXMY2',
  MedianPlugin: 'MEDIAN LARGE SMALL',
  ModuloPlugin: 'MOD',
  NumericAggregationPlugin: 'SUM SUMSQ MAX MIN MAXA MINA COUNT COUNTA AVERAGE AVERAGEA PRODUCT VAR.S VAR.P STDEV.S STDEV.P VAR VARP STDEV STDEVP',
  PercentilePlugin: 'PERCENTILE.INC PERCENTILE.EXC QUARTILE.INC QUARTILE.EXC PERCENTILE QUARTILE',
  PowerPlugin: 'POWER',
  RadiansPlugin: 'RADIANS',
  RoundingPlugin: 'TRUNC ROUNDUP ROUNDDOWN ROUND INT EVEN ODD CEILING.MATH CEILING CEILING.PRECISE FLOOR.MATH FLOOR FLOOR.PRECISE',
  SqrtPlugin: 'SQRT',
  SumprodPlugin: 'SUMPRODUCT',
  TextPlugin: 'CONCATENATE EXACT LEN LOWER MID TRIM T N RIGHT LEFT REPLACE SEARCH FIND UPPER VALUE TEXTJOIN',
  TrigonometryPlugin: 'ACOS ASIN COS SIN TAN ATAN ATAN2 COT',
};

/** Names of the formula engine's function plugins that hold a known function; the build leaves the others out. */
export const KNOWN_PLUGINS: readonly string[] = Object.keys(BY_PLUGIN);

/** Names of the functions that a formula may call. */
export const KNOWN_FUNCTIONS: ReadonlySet<string> =
  new Set(Object.values(BY_PLUGIN).flatMap((names) => names.split(' ')));
