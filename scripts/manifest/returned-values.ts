import type { Plugin } from '@custom-elements-manifest/analyzer';
import type { ClassMethod, JavaScriptModule } from 'custom-elements-manifest/schema';

/**
 * Gives methods the type that their code says they return, with the words of `@returns`: of a comment without a type
 * the analyser makes a method without one.
 */
export const returnedValues: Plugin = {
  name: 'returned-values',
  analyzePhase({ ts, node, moduleDoc }) {
    if (!ts.isClassDeclaration(node)) return;
    const declaration = (moduleDoc as JavaScriptModule).declarations?.find(({ name }) => name === node.name?.text);
    if (declaration?.kind !== 'class') return;
    for (const member of node.members) {
      if (!ts.isMethodDeclaration(member) || member.type === undefined) continue;
      const name = member.name.getText();
      const method =
        declaration.members?.find((each): each is ClassMethod => each.kind === 'method' && each.name === name);
      if (method === undefined) continue;
      const description = ts.getTextOfJSDocComment(ts.getJSDocReturnTag(member)?.comment);
      method.return = { type: { text: member.type.getText() }, ...(description !== undefined && { description }) };
    }
  },
};
