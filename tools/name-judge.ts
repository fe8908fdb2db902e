import ts from "typescript";
import { saysUnit, type Unitless } from "./unit-suffix.ts";

export interface Verdict {
  readonly file: string;
  readonly line: number;
  readonly message: string;
}

interface Charge {
  /** Files whose exported functions, types and constants are judged whole. */
  readonly science: (file: string) => boolean;
  /** Files whose entry schemas (objects with a `schema`) are judged. */
  readonly entries: (file: string) => boolean;
  /** Files in which constants may be named after foreign units. */
  readonly conversions: (file: string) => boolean;
  readonly unitless: Unitless;
}

/** Judges every numeric name that leaves `science` or enters the book, and the sources of science functions. */
export function judgeNames(program: ts.Program, charge: Charge): Verdict[] {
  const checker = program.getTypeChecker();
  const verdicts = new Map<string, Verdict>();
  const seen = new Set<ts.Type>();
  // What an index.ts hands out is what others call; only there must the docstring name a source.
  const publicly = new Set<ts.Symbol>();

  const say = (at: ts.Node, message: string) => {
    const source = at.getSourceFile();
    const line = source.getLineAndCharacterOfPosition(at.getStart()).line + 1;
    verdicts.set(`${source.fileName}:${line}:${message}`, { file: source.fileName, line, message });
  };
  const ours = (type: ts.Type) =>
    (type.aliasSymbol ?? type.symbol)?.declarations?.some((made) => {
      const file = made.getSourceFile().fileName;
      return charge.science(file) || charge.entries(file);
    }) ?? false;

  const holdsNumbers = (type: ts.Type) => {
    const element = checker.getIndexTypeOfType(type, ts.IndexKind.Number);
    return element !== undefined && (element.flags & ts.TypeFlags.Number) !== 0;
  };

  /** A numeric name must say its unit; inside objects and arrays the same holds for what they hold. */
  function judge(name: string, given: ts.Type, at: ts.Node): void {
    const type = checker.getNonNullableType(given);
    if (type.flags & ts.TypeFlags.Number) {
      if (!saysUnit(name) && !charge.unitless(name, at.getSourceFile().fileName)) {
        say(at, `${name} is a number without a unit in its name, and not on the list of unitless names`);
      }
      return;
    }
    if (type.isUnionOrIntersection()) for (const part of type.types) judge(name, part, at);
    else if (type.flags & ts.TypeFlags.Object && type.getCallSignatures().length === 0)
      judgeObject(name, type, at);
  }

  function judgeObject(name: string, type: ts.Type, at: ts.Node): void {
    const element =
      checker.getIndexTypeOfType(type, ts.IndexKind.Number) ??
      checker.getIndexTypeOfType(type, ts.IndexKind.String);
    if (element) judge(name, element, at);
    if (checker.isArrayType(type) || checker.isTupleType(type) || seen.has(type)) return;
    // Schemas are inferred: their objects belong to no declaration of ours, but their fields do.
    const fields = type.getProperties();
    if (
      !ours(type) &&
      !fields.every((field) =>
        field.declarations?.some((made) => ours(checker.getTypeAtLocation(made.parent))),
      )
    ) {
      if (type.symbol?.name !== "__type" && type.symbol?.name !== "__object") return;
    }
    seen.add(type);
    for (const field of fields) {
      const made = field.valueDeclaration ?? field.declarations?.[0];
      const place =
        made &&
        (charge.science(made.getSourceFile().fileName) || charge.entries(made.getSourceFile().fileName))
          ? made
          : at;
      judge(field.name, checker.getTypeOfSymbolAtLocation(field, at), place);
    }
  }

  function judgeFunction(name: string, signature: ts.Signature, at: ts.Node): void {
    for (const parameter of signature.parameters) {
      const made = parameter.valueDeclaration ?? at;
      judge(parameter.name, checker.getTypeOfSymbolAtLocation(parameter, made), made);
    }
    judge(name, signature.getReturnType(), at);
  }

  function judgeExport(symbol: ts.Symbol, file: string): void {
    const made = symbol.declarations?.[0];
    if (!made || made.getSourceFile().fileName !== file || ts.isExportSpecifier(made)) return;
    if (ts.isInterfaceDeclaration(made) || ts.isTypeAliasDeclaration(made)) {
      // The name of a type measures nothing; what its fields hold does.
      const declared = checker.getDeclaredTypeOfSymbol(symbol);
      for (const part of declared.isUnion() ? declared.types : [declared]) {
        if (part.flags & ts.TypeFlags.Object && !holdsNumbers(part)) judge(symbol.name, part, made);
      }
      return;
    }
    const type = checker.getTypeOfSymbolAtLocation(symbol, made);
    const signatures = ts.isClassDeclaration(made) ? [] : type.getCallSignatures();
    for (const signature of signatures) judgeFunction(symbol.name, signature, made);
    if (signatures.length > 0 && publicly.has(symbol)) {
      const source = symbol.getJsDocTags(checker).find((tag) => tag.name === "source");
      if (!ts.displayPartsToString(source?.text).trim())
        say(made, `${symbol.name} has no @source in its docstring`);
    } else if (signatures.length === 0 && ts.isVariableDeclaration(made) && !charge.conversions(file))
      judge(symbol.name, checker.getBaseTypeOfLiteralType(type), made);
  }

  /** The data that a schema lets through, as the schema library types it. */
  function judgeSchema(property: ts.PropertyAssignment | ts.ShorthandPropertyAssignment): void {
    const schema = checker.getTypeAtLocation(
      ts.isPropertyAssignment(property) ? property.initializer : property.name,
    );
    const types = schema.getProperty("~types");
    const output =
      types &&
      checker.getNonNullableType(checker.getTypeOfSymbolAtLocation(types, property)).getProperty("output");
    if (output) judge("data", checker.getTypeOfSymbolAtLocation(output, property), property);
  }

  function findSchemas(node: ts.Node): void {
    const assigned = ts.isPropertyAssignment(node) || ts.isShorthandPropertyAssignment(node);
    if (assigned && node.name.getText() === "schema") judgeSchema(node);
    ts.forEachChild(node, findSchemas);
  }

  for (const source of program.getSourceFiles()) {
    const module = checker.getSymbolAtLocation(source);
    if (!module || !charge.science(source.fileName) || !source.fileName.endsWith("/index.ts")) continue;
    for (const symbol of checker.getExportsOfModule(module)) {
      publicly.add(symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol);
    }
  }
  for (const source of program.getSourceFiles()) {
    if (charge.science(source.fileName)) {
      const module = checker.getSymbolAtLocation(source);
      for (const symbol of module ? checker.getExportsOfModule(module) : [])
        judgeExport(symbol, source.fileName);
    }
    if (charge.entries(source.fileName)) findSchemas(source);
  }
  return [...verdicts.values()].sort(
    (one, other) => one.file.localeCompare(other.file) || one.line - other.line,
  );
}
