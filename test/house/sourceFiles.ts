/** The project's own files, parsed, for the tests that hold the house to its rules. */
import { readdirSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

export const root = fileURLToPath(new URL('../../', import.meta.url));

/** One file of `src`, with forward slashes and without the path of the machine. */
export type SourceFile = {
  readonly path: string;
  /** First folder below `src`, or the file's own name where it lies in `src` itself. */
  readonly room: string;
  readonly text: string;
  readonly tree: ts.SourceFile;
};

export type Import = {
  readonly from: SourceFile;
  readonly line: number;
  /** As it is written. */
  readonly specifier: string;
  /** The file below the project root that it means; null for a package. */
  readonly target: string | null;
  readonly kind: 'value' | 'type';
  /** Names that are taken; `*` for the whole file. */
  readonly names: readonly string[];
};

export const sources: readonly SourceFile[] = filesBelow('src')
  .filter((path) => /\.(ts|tsx|js|astro|mdx)$/.test(path) && !path.endsWith('.d.ts'))
  .map(parsed);

/** Every file of a folder below the root, in a fixed order. */
export function filesBelow(folder: string): readonly string[] {
  return readdirSync(posix.join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => `${entry.parentPath.replaceAll('\\', '/')}/${entry.name}`.slice(root.length))
    .sort();
}

export function textOf(path: string): string {
  return readFileSync(`${root}${path}`, 'utf8');
}

/** Parses code that a test made up, as if it lay at `path`. */
export function parsedText(path: string, text: string): SourceFile {
  const code = path.endsWith('.astro') ? codeOfAstro(text) : text;
  const kind = path.endsWith('.tsx') || path.endsWith('.astro') ? ts.ScriptKind.TSX : undefined;
  const tree = ts.createSourceFile(path, code, ts.ScriptTarget.Latest, true, kind);
  return { path, room: path.split('/')[1] ?? '', text: code, tree };
}

function parsed(path: string): SourceFile {
  return parsedText(path, textOf(path));
}

/** Frontmatter and scripts of a page; everything else becomes empty lines, so that line numbers stay true. */
function codeOfAstro(text: string): string {
  let inFence = 'no';
  let inScript = 'no';
  return text
    .split('\n')
    .map((line, index) => {
      if (line.trim() === '---' && (index === 0 || inFence === 'yes')) {
        inFence = inFence === 'yes' ? 'no' : 'yes';
        return '';
      }
      if (/<script[^>]*>\s*$/.test(line)) inScript = 'yes';
      else if (line.includes('</script>')) inScript = 'no';
      else if (inFence === 'yes' || inScript === 'yes') return line;
      return '';
    })
    .join('\n');
}

export function at(file: SourceFile, node: ts.Node): string {
  return `${file.path}:${lineOf(file, node)}`;
}

export function lineOf(file: SourceFile, node: ts.Node): number {
  return file.tree.getLineAndCharacterOfPosition(node.getStart(file.tree)).line + 1;
}

/** Every node of a file, the outer ones first. */
export function nodesOf(file: SourceFile): readonly ts.Node[] {
  const found: ts.Node[] = [];
  const visit = (node: ts.Node): void => {
    found.push(node);
    ts.forEachChild(node, visit);
  };
  visit(file.tree);
  return found;
}

/** Static imports, re-exports, `import()`, `import('x').T`, and `new URL('x', import.meta.url)`. */
export function importsOf(file: SourceFile): readonly Import[] {
  return nodesOf(file).flatMap((node) => {
    const found = importAt(node);
    if (found === null) return [];
    return [{ from: file, line: lineOf(file, node), ...found, target: targetOf(file, found.specifier) }];
  });
}

function importAt(node: ts.Node): Pick<Import, 'specifier' | 'kind' | 'names'> | null {
  if (ts.isImportDeclaration(node) && ts.isStringLiteral(node.moduleSpecifier)) {
    const { kind, names } = clauseOf(node.importClause);
    return { specifier: node.moduleSpecifier.text, kind, names };
  }
  if (ts.isExportDeclaration(node) && node.moduleSpecifier && ts.isStringLiteral(node.moduleSpecifier)) {
    const names =
      node.exportClause && ts.isNamedExports(node.exportClause)
        ? node.exportClause.elements.map((one) => (one.propertyName ?? one.name).text)
        : ['*'];
    return { specifier: node.moduleSpecifier.text, kind: node.isTypeOnly ? 'type' : 'value', names };
  }
  if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) {
    const { literal } = node.argument;
    return ts.isStringLiteral(literal) ? { specifier: literal.text, kind: 'type', names: ['*'] } : null;
  }
  const called = ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword;
  const made = ts.isNewExpression(node) && node.expression.getText() === 'URL';
  const first = called || made ? node.arguments?.[0] : undefined;
  if (first === undefined || !ts.isStringLiteral(first)) return null;
  if (made && !/^\.{1,2}\/.*\.[jt]sx?$/.test(first.text)) return null;
  return { specifier: first.text, kind: 'value', names: ['*'] };
}

function clauseOf(clause: ts.ImportClause | undefined): Pick<Import, 'kind' | 'names'> {
  if (clause === undefined) return { kind: 'value', names: [] };
  const { namedBindings } = clause;
  const own = clause.name ? ['default'] : [];
  if (namedBindings === undefined) return { kind: clause.isTypeOnly ? 'type' : 'value', names: own };
  if (ts.isNamespaceImport(namedBindings)) {
    return { kind: clause.isTypeOnly ? 'type' : 'value', names: ['*', ...own] };
  }
  const { elements } = namedBindings;
  const onlyTypes = clause.isTypeOnly || (own.length === 0 && elements.every((one) => one.isTypeOnly));
  const names = elements.map((one) => (one.propertyName ?? one.name).text);
  return { kind: onlyTypes ? 'type' : 'value', names: [...own, ...names] };
}

function targetOf(file: SourceFile, specifier: string): string | null {
  if (!specifier.startsWith('.')) return null;
  return posix.join(posix.dirname(file.path), specifier.replace(/\?.*$/, ''));
}

/** Everything that a file gives to others, by name. */
export function exportsOf(file: SourceFile): readonly { readonly name: string; readonly node: ts.Node }[] {
  return file.tree.statements.flatMap((statement) => {
    if (!ts.canHaveModifiers(statement)) return [];
    const modifiers = ts.getModifiers(statement) ?? [];
    if (!modifiers.some((one) => one.kind === ts.SyntaxKind.ExportKeyword)) return [];
    if (ts.isVariableStatement(statement)) {
      return statement.declarationList.declarations.map((one) => ({ name: one.name.getText(), node: one }));
    }
    const named = statement as ts.Statement & { readonly name?: ts.Identifier };
    return [{ name: named.name?.text ?? 'default', node: statement as ts.Node }];
  });
}

/** The exported functions of a file: declarations, and constants that hold an arrow function. */
export function exportedFunctions(
  file: SourceFile,
): readonly { readonly name: string; readonly node: ts.FunctionDeclaration }[] {
  return exportsOf(file).flatMap(({ name, node }) =>
    ts.isFunctionDeclaration(node) ? [{ name, node }] : [],
  );
}

/** Name of an identifier that stands for a thing of its own, not for a key or a property of another. */
export function freeNames(file: SourceFile): readonly { readonly name: string; readonly node: ts.Node }[] {
  const found = nodesOf(file).filter((node) => ts.isIdentifier(node));
  const declared = new Set(found.filter((node) => isDeclared(node)).map((node) => node.text));
  return found
    .filter((node) => !isKey(node) && !declared.has(node.text))
    .map((node) => ({ name: node.text, node }));
}

function isDeclared(node: ts.Identifier): boolean {
  const { parent } = node;
  const declares =
    ts.isVariableDeclaration(parent) ||
    ts.isParameter(parent) ||
    ts.isBindingElement(parent) ||
    ts.isFunctionDeclaration(parent) ||
    ts.isTypeAliasDeclaration(parent) ||
    ts.isInterfaceDeclaration(parent) ||
    ts.isImportSpecifier(parent) ||
    ts.isImportClause(parent);
  return declares && parent.name === node;
}

function isKey(node: ts.Identifier): boolean {
  const { parent } = node;
  if (ts.isPropertyAccessExpression(parent)) return parent.name === node;
  if (ts.isQualifiedName(parent)) return parent.right === node;
  if (ts.isBindingElement(parent)) return parent.propertyName === node;
  const named =
    ts.isPropertyAssignment(parent) ||
    ts.isPropertySignature(parent) ||
    ts.isMethodSignature(parent) ||
    ts.isJsxAttribute(parent) ||
    ts.isNamedTupleMember(parent);
  return named && parent.name === node;
}
