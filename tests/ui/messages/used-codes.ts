import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import ts from 'typescript';

/** A code that some source gives a refusal or question, and the names of the values it passes when they are in sight. */
export type UsedCode = {
  readonly where: string;
  readonly code: string;
  readonly values: readonly string[] | undefined;
};

const shape = /^[a-z]+(-[a-z]+)*$/;

function sources(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.tsx?$/.test(file))
    .map((file) => path.join(folder, file));
}

/** The string literals an expression can come to: a literal, or both sides of a conditional. */
function literals(node: ts.Expression): readonly string[] {
  if (ts.isStringLiteral(node)) return [node.text];
  return ts.isConditionalExpression(node) ? [...literals(node.whenTrue), ...literals(node.whenFalse)] : [];
}

/** Property names of an object literal; none for a missing argument; undefined when they cannot be seen. */
function names(node: ts.Expression | undefined): readonly string[] | undefined {
  if (node === undefined) return [];
  if (!ts.isObjectLiteralExpression(node)) return undefined;
  const keys = node.properties.map((property) => property.name?.getText());
  return keys.every((key) => key !== undefined) ? keys : undefined;
}

function property(node: ts.ObjectLiteralExpression, name: string): ts.Expression | undefined {
  const found = node.properties.find((one) => one.name?.getText() === name);
  if (found === undefined) return undefined;
  if (ts.isPropertyAssignment(found)) return found.initializer;
  return ts.isShorthandPropertyAssignment(found) ? found.name : undefined;
}

function codesOf(node: ts.Node): readonly Omit<UsedCode, 'where'>[] {
  if (ts.isCallExpression(node) && ts.isIdentifier(node.expression)) {
    const place = { invalid: 1, wrong: 0 }[node.expression.text];
    const code = place === undefined ? undefined : node.arguments[place];
    if (place === undefined || code === undefined) return [];
    return literals(code).map((one) => ({ code: one, values: names(node.arguments[place + 1]) }));
  }
  if (ts.isObjectLiteralExpression(node)) {
    const isIssue = property(node, 'message') !== undefined;
    const code = property(node, isIssue ? 'message' : 'code');
    if (code === undefined || (!isIssue && property(node, 'field') === undefined)) return [];
    // An entry of a table gets its values where it is used.
    const values = ts.isPropertyAssignment(node.parent)
      ? undefined
      : names(property(node, isIssue ? 'params' : 'values'));
    return literals(code).map((one) => ({ code: one, values }));
  }
  return [];
}

/** Every code written in the sources of these folders. */
export function usedCodes(folders: readonly string[]): readonly UsedCode[] {
  return folders.flatMap(sources).flatMap((file) => {
    const tree = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true);
    const found: UsedCode[] = [];
    const visit = (node: ts.Node): void => {
      for (const one of codesOf(node)) if (shape.test(one.code)) found.push({ ...one, where: file });
      ts.forEachChild(node, visit);
    };
    visit(tree);
    return found;
  });
}
