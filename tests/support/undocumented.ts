/**
 * Finds the exported names of a TypeScript file that say nothing about themselves.
 */
import ts from "typescript";

/**
 * The exported names of a source text that have no doc comment, in order. Names passed on from another file
 * (`export … from`) are documented there. Of an overloaded function one signature must have a comment.
 */
export function undocumented(fileName: string, text: string): string[] {
  const source = ts.createSourceFile(fileName, text, ts.ScriptTarget.Latest, true);
  const listed = listedExports(source);
  const documented = new Map<string, boolean>();
  for (const statement of source.statements) {
    for (const { name, node } of declarations(statement)) {
      if (!isExported(statement) && !listed.has(name)) continue;
      documented.set(name, (documented.get(name) ?? false) || hasComment(statement) || hasComment(node));
    }
  }
  return [...documented].filter(([, has]) => !has).map(([name]) => name);
}

type Declared = { name: string; node: ts.Node };

/** The names that a statement declares. */
function declarations(statement: ts.Statement): Declared[] {
  if (ts.isVariableStatement(statement)) {
    return statement.declarationList.declarations.map((node) => ({ name: node.name.getText(), node }));
  }
  if (ts.isExportAssignment(statement)) return [{ name: "default", node: statement }];
  const named =
    ts.isFunctionDeclaration(statement) ||
    ts.isClassDeclaration(statement) ||
    ts.isTypeAliasDeclaration(statement) ||
    ts.isInterfaceDeclaration(statement) ||
    ts.isEnumDeclaration(statement);
  return named ? [{ name: statement.name?.text ?? "default", node: statement }] : [];
}

/** The local names in `export { a, b as c };`. */
function listedExports(source: ts.SourceFile): Set<string> {
  const lists = source.statements.filter(ts.isExportDeclaration).filter((list) => !list.moduleSpecifier);
  const names = lists.flatMap(({ exportClause: clause }) =>
    clause && ts.isNamedExports(clause) ? clause.elements.map((one) => (one.propertyName ?? one.name).text) : [],
  );
  return new Set(names);
}

function isExported(statement: ts.Statement): boolean {
  if (ts.isExportAssignment(statement)) return true;
  const modifiers = ts.canHaveModifiers(statement) ? ts.getModifiers(statement) : undefined;
  return modifiers?.some((modifier) => modifier.kind === ts.SyntaxKind.ExportKeyword) ?? false;
}

function hasComment(node: ts.Node): boolean {
  return ts.getJSDocCommentsAndTags(node).some((doc) => {
    const text = ts.getTextOfJSDocComment(doc.comment) ?? "";
    return text.trim() !== "" || (ts.isJSDoc(doc) && (doc.tags?.length ?? 0) > 0);
  });
}
