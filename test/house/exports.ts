import type { Comment, Node, Statement } from "@babel/types";

/** A function or type which a file exports; functions alone have `params`. */
export interface Declared {
  readonly name: string;
  readonly node: Node;
  readonly params: readonly Node[] | undefined;
  readonly doc: string | undefined;
}

/** Functions and types a statement declares; `doc` may stand before the word `export`. */
function declared(statement: Node, outer: Node): readonly Declared[] {
  const doc = docOf(statement.leadingComments) ?? docOf(outer.leadingComments);
  switch (statement.type) {
    case "FunctionDeclaration":
    case "TSDeclareFunction":
      return [
        { name: statement.id?.name ?? "default", node: statement, params: statement.params, doc },
      ];
    case "ArrowFunctionExpression":
    case "FunctionExpression":
      return [{ name: "default", node: statement, params: statement.params, doc }];
    case "TSInterfaceDeclaration":
    case "TSTypeAliasDeclaration":
      return [{ name: statement.id.name, node: statement, params: undefined, doc }];
    case "VariableDeclaration":
      return statement.declarations.flatMap((one): Declared[] => {
        if (one.id.type !== "Identifier") return [];
        const params = functionParams(one.id.typeAnnotation, one.init);
        return params ? [{ name: one.id.name, node: one, params, doc }] : [];
      });
    default:
      return [];
  }
}

function functionParams(
  type: Node | null | undefined,
  init: Node | null | undefined,
): readonly Node[] | undefined {
  const own = type?.type === "TSTypeAnnotation" ? type.typeAnnotation : undefined;
  if (own?.type === "TSFunctionType") return own.parameters;
  const isFunction =
    init?.type === "ArrowFunctionExpression" || init?.type === "FunctionExpression";
  return isFunction ? init.params : undefined;
}

/** What a file exports and declares itself, `export { a }` of a local name included. */
export function exported(body: readonly Statement[]): readonly Declared[] {
  const local = body.flatMap((statement) => declared(statement, statement));
  return body.flatMap((statement): readonly Declared[] => {
    if (statement.type === "ExportDefaultDeclaration") {
      return declared(statement.declaration, statement);
    }
    if (statement.type !== "ExportNamedDeclaration" || statement.source) return [];
    if (statement.declaration) return declared(statement.declaration, statement);
    const names = statement.specifiers.flatMap((one) =>
      one.type === "ExportSpecifier" ? [one.local.name] : [],
    );
    return local.filter((one) => names.includes(one.name));
  });
}

/** The doc comment that belongs to a node: the last block comment before it, if it is one. */
export function docOf(comments: readonly Comment[] | null | undefined): string | undefined {
  const last = comments?.at(-1);
  if (last?.type !== "CommentBlock" || !last.value.startsWith("*")) return undefined;
  return last.value
    .split("\n")
    .map((line) => line.replace(/^\s*\*+ ?/, ""))
    .join("\n");
}
