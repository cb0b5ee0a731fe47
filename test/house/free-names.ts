import type { Node } from "@babel/types";
import { childrenOf } from "./sources.ts";

/** Names of a pattern: `{ a, b: [c], ...d }` binds a, c and d. */
function boundBy(pattern: Node | null | undefined): readonly string[] {
  switch (pattern?.type) {
    case "Identifier":
      return [pattern.name];
    case "AssignmentPattern":
      return boundBy(pattern.left);
    case "RestElement":
      return boundBy(pattern.argument);
    case "TSParameterProperty":
      return boundBy(pattern.parameter);
    case "ArrayPattern":
      return pattern.elements.flatMap(boundBy);
    case "ObjectPattern":
      return pattern.properties.flatMap((part) =>
        part.type === "RestElement" ? boundBy(part) : boundBy(part.value),
      );
    default:
      return [];
  }
}

const isFunction = (node: Node) =>
  /Function|Method/.test(node.type) && "params" in node && "body" in node;

/** Names a statement adds to the block it stands in. */
function declaredBy(statement: Node): readonly string[] {
  switch (statement.type) {
    case "VariableDeclaration":
      return statement.declarations.flatMap((one) => boundBy(one.id));
    case "FunctionDeclaration":
    case "ClassDeclaration":
    case "TSEnumDeclaration":
      return boundBy(statement.id);
    case "ImportDeclaration":
      return statement.specifiers.map((one) => one.local.name);
    case "ExportNamedDeclaration":
    case "ExportDefaultDeclaration":
      return statement.declaration ? declaredBy(statement.declaration) : [];
    default:
      return [];
  }
}

/** `var` names anywhere in a function's body, but not in functions within it. */
function hoisted(node: Node): readonly string[] {
  return childrenOf(node).flatMap((child) => {
    if (isFunction(child)) return [];
    const own =
      child.type === "VariableDeclaration" && child.kind === "var" ? declaredBy(child) : [];
    return [...own, ...hoisted(child)];
  });
}

/** Names that hold inside this node but not around it. */
function scopeOf(node: Node): readonly string[] {
  if (isFunction(node) && "params" in node) {
    const own = node.type === "FunctionExpression" ? boundBy(node.id) : [];
    return [...own, ...node.params.flatMap(boundBy), ...hoisted(node)];
  }
  switch (node.type) {
    case "Program":
      return [...node.body.flatMap(declaredBy), ...hoisted(node)];
    case "BlockStatement":
    case "StaticBlock":
      return node.body.flatMap(declaredBy);
    case "SwitchStatement":
      return node.cases.flatMap((one) => one.consequent.flatMap(declaredBy));
    case "ForStatement":
      return node.init ? declaredBy(node.init) : [];
    case "ForInStatement":
    case "ForOfStatement":
      return declaredBy(node.left);
    case "CatchClause":
      return boundBy(node.param);
    case "ClassExpression":
      return boundBy(node.id);
    default:
      return [];
  }
}

// These hold a value beside their type; every other TS node is types alone and vanishes on build.
const valueBearing =
  /^TS(As|Satisfies|NonNull|TypeAssertion|Instantiation|EnumDeclaration|EnumBody|EnumMember|ExportAssignment|ParameterProperty|ModuleDeclaration|ModuleBlock)/;

/** Child nodes which are evaluated: no types, no names of properties or labels. */
function evaluated(node: Node): readonly Node[] {
  const children = childrenOf(node).filter(
    (child) => !child.type.startsWith("TS") || valueBearing.test(child.type),
  );
  const without = (...names: readonly (Node | null | undefined)[]) =>
    children.filter((child) => !names.includes(child));
  switch (node.type) {
    case "MemberExpression":
    case "OptionalMemberExpression":
      return node.computed ? children : without(node.property);
    case "ObjectProperty":
      // In `{ a }` key and value are the same name; the value is the one that is read.
      return node.computed ? children : without(node.key);
    case "ObjectMethod":
    case "ClassMethod":
    case "ClassProperty":
    case "ClassAccessorProperty":
      return node.computed ? children : without(node.key);
    case "TSEnumMember":
      return without(node.id);
    case "LabeledStatement":
    case "BreakStatement":
    case "ContinueStatement":
      return without(node.label);
    case "ImportDeclaration":
    case "MetaProperty":
      return [];
    case "ExportSpecifier":
      return without(node.exported);
    case "ExportNamedDeclaration":
      return node.source || node.exportKind === "type" ? [] : children;
    default:
      return children;
  }
}

/** Every place where a name is read that the file itself does not declare. */
export function* freeNames(
  node: Node,
  known: ReadonlySet<string> = new Set(),
): Generator<{ readonly name: string; readonly node: Node; readonly parent: Node | undefined }> {
  yield* walk(node, undefined, known);
}

function* walk(
  node: Node,
  parent: Node | undefined,
  known: ReadonlySet<string>,
): ReturnType<typeof freeNames> {
  if (node.type === "Identifier" || node.type === "JSXIdentifier") {
    if (!known.has(node.name)) yield { name: node.name, node, parent };
    return;
  }
  const own = scopeOf(node);
  const inside = own.length > 0 ? new Set([...known, ...own]) : known;
  for (const child of evaluated(node)) yield* walk(child, node, inside);
}
