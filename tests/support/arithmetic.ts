/**
 * Value of a formula that holds only numbers: `=3*(4+0.5)`.
 *
 * Knows `+ - * /`, signs, parentheses and the decimal point, with the precedence of OpenFormula (OASIS
 * OpenDocument part 4, 5.5).
 * @param formula text that begins with `=`
 * @returns its value; `null` where a division by zero or an overflow leaves no finite one
 * @throws SyntaxError for anything else, so that a check never passes over what it did not understand
 *
 * @example evaluateArithmetic('=3*4') // 12
 */
export function evaluateArithmetic(formula: string): number | null {
  const tokens = formula.slice(1).match(/\d+\.?\d*|\.\d+|\S/g) ?? [];
  let place = 0;

  const fail = (): never => {
    throw new SyntaxError(`Only numbers, + - * / and parentheses are understood here: ${formula}`);
  };
  const takes = (token: string): boolean => {
    if (tokens[place] !== token) return false;
    place += 1;
    return true;
  };
  const factor = (): number => {
    if (takes('-')) return -factor();
    if (takes('+')) return factor();
    if (takes('(')) {
      const value = sum();
      return takes(')') ? value : fail();
    }
    const token = tokens[place] ?? fail();
    place += 1;
    return /^[\d.]*\d[\d.]*$/.test(token) ? Number(token) : fail();
  };
  const product = (): number => {
    let value = factor();
    for (;;) {
      if (takes('*')) value *= factor();
      else if (takes('/')) {
        const divisor = factor();
        value = divisor === 0 ? NaN : value / divisor;
      } else return value;
    }
  };
  const sum = (): number => {
    let value = product();
    for (;;) {
      if (takes('+')) value += product();
      else if (takes('-')) value -= product();
      else return value;
    }
  };

  const value = sum();
  if (place !== tokens.length) fail();
  return Number.isFinite(value) ? value : null;
}
