import { existsSync, readFileSync, statSync } from "node:fs";
import { basename, dirname, join, relative } from "node:path";
import ts from "typescript";

export interface FirstScripts {
  readonly total_bytes: number;
  /** By file, as the server sends it, largest first. */
  readonly files: readonly { readonly path: string; readonly sent_bytes: number }[];
}

/** The first name of a script written anywhere inside an expression: bundlers wrap addresses in several `new URL`. */
function scriptIn(node: ts.Node): string | undefined {
  if (ts.isStringLiteralLike(node) && /\.m?js$/.test(node.text)) return node.text;
  return ts.forEachChild(node, scriptIn);
}

/** What a script needs before it runs (static imports), and the workers that it starts. */
function neededBy(path: string): readonly string[] {
  const source = ts.createSourceFile(
    path,
    readFileSync(path, "utf8"),
    ts.ScriptTarget.Latest,
    false,
    ts.ScriptKind.JS,
  );
  const needed: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) {
      if (node.moduleSpecifier && ts.isStringLiteralLike(node.moduleSpecifier))
        needed.push(node.moduleSpecifier.text);
    }
    if (
      ts.isNewExpression(node) &&
      ts.isIdentifier(node.expression) &&
      /^(Shared)?Worker$/.test(node.expression.text)
    ) {
      const address = node.arguments?.[0];
      const worker = address && scriptIn(address);
      // A worker that cannot be followed would silently weigh nothing.
      if (!worker)
        throw new Error(`${basename(path)} starts a worker whose script cannot be told from its address`);
      needed.push(worker);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return needed;
}

const scriptsOf = (html: string) =>
  [
    ...html.matchAll(/<script\b[^>]*\bsrc="([^"]+)"|<link\b[^>]*\brel="modulepreload"[^>]*\bhref="([^"]+)"/g),
  ].map(([, script, preload]) => script ?? preload ?? "");

/** The packed copy that the build lays beside a script; a script too small to have one is sent as it is. */
const sentBytes = (path: string) => statSync(existsSync(`${path}.br`) ? `${path}.br` : path).size;

/**
 * The compressed script that the first screen of a built app needs: what index.html names, all that these import
 * statically, and the workers they start with the same. What is imported on demand does not count.
 */
export function firstScripts(folder: string): FirstScripts {
  const sizes = new Map<string, number>();
  const add = (from: string, address: string): void => {
    const path = address.startsWith("/") ? join(folder, address) : join(from, address);
    const name = relative(folder, path);
    if (sizes.has(name)) return;
    if (!existsSync(path))
      throw new Error(`${relative(folder, from) || "index.html"} needs ${address}, which was not built`);
    sizes.set(name, sentBytes(path));
    for (const needed of neededBy(path)) add(dirname(path), needed);
  };
  for (const address of scriptsOf(readFileSync(join(folder, "index.html"), "utf8"))) add(folder, address);
  if (sizes.size === 0) throw new Error(`${folder}/index.html names no script`);
  const files = [...sizes].map(([path, sent_bytes]) => ({ path, sent_bytes }));
  files.sort((one, other) => other.sent_bytes - one.sent_bytes);
  return { files, total_bytes: files.reduce((sum, file) => sum + file.sent_bytes, 0) };
}
