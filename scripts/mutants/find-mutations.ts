import ts from 'typescript';

/** One change to a source file that its tests should notice. */
export interface Mutation {
  readonly file: string;
  readonly start: number;
  readonly end: number;
  readonly text: string;
  /** From 1. */
  readonly line: number;
  /** The line before and after, which names the mutation wherever it comes to stand. */
  readonly name: string;
}

const { SyntaxKind } = ts;

/** What an operator is changed into: the limit moved by one, or the opposite. */
const OPERATORS: Readonly<Partial<Record<ts.SyntaxKind, readonly string[]>>> = {
  [SyntaxKind.PlusToken]: ['-'],
  [SyntaxKind.MinusToken]: ['+'],
  [SyntaxKind.AsteriskToken]: ['/'],
  [SyntaxKind.SlashToken]: ['*'],
  [SyntaxKind.PercentToken]: ['*'],
  [SyntaxKind.PlusEqualsToken]: ['-='],
  [SyntaxKind.MinusEqualsToken]: ['+='],
  [SyntaxKind.LessThanToken]: ['<=', '>='],
  [SyntaxKind.LessThanEqualsToken]: ['<', '>'],
  [SyntaxKind.GreaterThanToken]: ['>=', '<='],
  [SyntaxKind.GreaterThanEqualsToken]: ['>', '<'],
  [SyntaxKind.EqualsEqualsEqualsToken]: ['!=='],
  [SyntaxKind.ExclamationEqualsEqualsToken]: ['==='],
  [SyntaxKind.AmpersandAmpersandToken]: ['||'],
  [SyntaxKind.BarBarToken]: ['&&'],
};

/** What a called function is changed into. */
const FUNCTIONS: Readonly<Record<string, string>> = {
  min: 'max', max: 'min', floor: 'ceil', ceil: 'floor', some: 'every', every: 'some', find: 'findLast',
  findLast: 'find',
};

/**
 * Every change of an operator, a limit or a condition in a source file. Types, and what a broken schema throws, have
 * none.
 */
export function findMutations(file: string, code: string): Mutation[] {
  const source = ts.createSourceFile(file, code, ts.ScriptTarget.Latest, true);
  const found: Mutation[] = [];

  const add = (node: ts.Node, text: string): void => {
    const [start, end] = [node.getStart(source), node.getEnd()];
    const { line } = source.getLineAndCharacterOfPosition(start);
    const from = source.getPositionOfLineAndCharacter(line, 0);
    const until = source.getLineEndOfPosition(end);
    const before = code.slice(from, until);
    const after = code.slice(from, start) + text + code.slice(end, until);
    found.push({ file, start, end, text, line: line + 1, name: `${file}: ${oneLine(before)} → ${oneLine(after)}` });
  };

  const visit = (node: ts.Node): void => {
    if (
      ts.isTypeNode(node) || ts.isInterfaceDeclaration(node) || ts.isImportDeclaration(node)
        || ts.isThrowStatement(node)
    ) return;
    if (ts.isIfStatement(node) && ts.isThrowStatement(node.thenStatement)) return;
    if (ts.isBinaryExpression(node)) {
      for (const text of OPERATORS[node.operatorToken.kind] ?? []) add(node.operatorToken, text);
      if (node.operatorToken.kind === SyntaxKind.QuestionQuestionToken) add(node, node.right.getText(source));
    } else if (ts.isIfStatement(node)) {
      add(node.expression, 'true');
      add(node.expression, 'false');
    } else if (ts.isConditionalExpression(node)) {
      add(node.condition, 'true');
      add(node.condition, 'false');
    } else if (ts.isPrefixUnaryExpression(node) && node.operator === SyntaxKind.ExclamationToken) {
      add(node, node.operand.getText(source));
    } else if (ts.isNumericLiteral(node)) {
      const value = Number(node.text);
      add(node, String(Number.isInteger(value) ? value + 1 : value * 1.25));
    } else if (node.kind === SyntaxKind.TrueKeyword) {
      add(node, 'false');
    } else if (node.kind === SyntaxKind.FalseKeyword) {
      add(node, 'true');
    } else if (ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression)) {
      const other = FUNCTIONS[node.expression.name.text];
      if (other !== undefined) add(node.expression.name, other);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

const oneLine = (text: string): string => text.replaceAll(/\s+/g, ' ').trim();
