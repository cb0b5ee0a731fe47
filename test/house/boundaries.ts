import { posix } from "node:path";
import type { Node } from "@babel/types";
import type { Room } from "../../src/rooms.ts";
import { freeNames } from "./free-names.ts";
import { type Breach, everyNode, placeOf, type Sources, syntaxTree } from "./sources.ts";

/** What would make the same input give another answer elsewhere, or tie the core to one place. */
const closedToCore: ReadonlySet<string> = new Set(
  `Date Temporal performance fetch XMLHttpRequest WebSocket EventSource
  window document self global globalThis navigator location localStorage sessionStorage indexedDB
  process Buffer require crypto eval Function
  setTimeout setInterval setImmediate requestAnimationFrame requestIdleCallback`.split(/\s+/),
);

interface Import {
  readonly node: Node;
  /** Undefined when it is computed, so that nobody can read it beforehand. */
  readonly target: string | undefined;
}

const textOf = (node: Node | undefined): string | undefined => {
  if (node?.type === "StringLiteral") return node.value;
  if (node?.type === "TemplateLiteral" && node.expressions.length === 0) {
    return node.quasis[0]?.value.cooked ?? undefined;
  }
  return undefined;
};

/** `new URL("./x.ts", import.meta.url)` is how a worker is named, so it counts as an import. */
function isModuleUrl(node: Node): node is Extract<Node, { type: "NewExpression" }> {
  return (
    node.type === "NewExpression" &&
    node.callee.type === "Identifier" &&
    node.callee.name === "URL" &&
    node.arguments[1]?.type === "MemberExpression" &&
    node.arguments[1].object.type === "MetaProperty"
  );
}

function* importsOf(tree: Node): Generator<Import> {
  for (const node of everyNode(tree)) {
    switch (node.type) {
      case "ImportDeclaration":
      case "ExportAllDeclaration":
        yield { node, target: node.source.value };
        break;
      case "ExportNamedDeclaration":
        if (node.source) yield { node, target: node.source.value };
        break;
      case "TSImportType":
        yield { node, target: textOf(node.argument as Node) };
        break;
      case "TSExternalModuleReference":
        yield { node, target: node.expression.value };
        break;
      case "ImportExpression":
        yield { node, target: textOf(node.source) };
        break;
      case "CallExpression":
        if (node.callee.type === "Import") yield { node, target: textOf(node.arguments[0]) };
        break;
      default:
        if (isModuleUrl(node)) yield { node, target: textOf(node.arguments[0]) };
    }
  }
}

const packageOf = (target: string) =>
  target
    .split("/")
    .slice(0, target.startsWith("@") ? 2 : 1)
    .join("/");

/** Which rule an import breaks, with words for it; undefined when it is as it should be. */
function judge(
  path: string,
  room: Room,
  target: string | undefined,
  rooms: readonly Room[],
): readonly [rule: string, says: string] | undefined {
  if (target === undefined) return ["unreadable-import", "imports something computed"];
  if (target.startsWith("node:")) {
    if (room.core || room.name === "web") return ["node-import", `imports ${target}`];
    return undefined;
  }
  if (!target.startsWith(".")) {
    const name = packageOf(target);
    if (room.packages.includes(name)) return undefined;
    return ["package", `imports the package ${name}, which ${room.name} does not list`];
  }
  const file = posix.join(posix.dirname(path), target.replace(/\?.*$/, ""));
  const [top, other, ...rest] = file.split("/");
  if (top !== "src") return ["outside", `imports ${target}, outside src`];
  if (other === room.name) return undefined;
  if (!rooms.some((one) => one.name === other)) {
    return ["unknown-room", `imports ${target}, which is in no room of src/rooms.ts`];
  }
  if (!room.mayImport.includes(other ?? "")) {
    return ["arrow", `${room.name} imports ${other}, an arrow src/rooms.ts does not list`];
  }
  if (rest.length > 1 || !/^(index(\.[jt]s)?)?$/.test(rest[0] ?? "")) {
    return ["door", `imports ${target}; the door is ../${other}/index.ts`];
  }
  return undefined;
}

function isSeedless(name: string, node: Node, parent: Node | undefined): boolean {
  if (name !== "Math" || parent === undefined) return false;
  if (parent.type === "MemberExpression" && parent.object === node) {
    const { property } = parent;
    return (
      (property.type === "Identifier" && !parent.computed && property.name === "random") ||
      (parent.computed && (textOf(property) ?? "random") === "random")
    );
  }
  // Handed on whole or taken apart, its random goes along.
  return true;
}

function* closedNames(path: string, tree: Node): Generator<Breach> {
  for (const { name, node, parent } of freeNames(tree)) {
    const place = placeOf(path, node);
    if (closedToCore.has(name)) yield { rule: "free-global", place, says: `uses ${name}` };
    if (isSeedless(name, node, parent)) {
      yield { rule: "free-global", place, says: "uses Math.random, or lets it out of sight" };
    }
  }
}

/** Everything in the sources that src/rooms.ts does not allow. */
export function boundaryBreaches(sources: Sources, rooms: readonly Room[]): readonly Breach[] {
  return [...sources].flatMap(([path, text]) => {
    const [, folder = "", ...rest] = path.split("/");
    // The table itself stands in src/ and in no room.
    if (rest.length === 0 && folder === "rooms.ts") return [];
    const room = rooms.find((one) => one.name === folder);
    if (room === undefined || rest.length === 0) {
      return [{ rule: "unknown-room", place: path, says: "is in no room of src/rooms.ts" }];
    }
    const tree = syntaxTree(path, text);
    const imports = [...importsOf(tree.program)].flatMap(({ node, target }) => {
      const verdict = judge(path, room, target, rooms);
      if (verdict === undefined) return [];
      return [{ rule: verdict[0], place: placeOf(path, node), says: verdict[1] }];
    });
    return room.core ? [...imports, ...closedNames(path, tree.program)] : imports;
  });
}
