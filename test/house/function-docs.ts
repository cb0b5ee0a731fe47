import type { Node } from "@babel/types";
import type { Room } from "../../src/rooms.ts";
import { type Declared, docOf, exported } from "./exports.ts";
import { type Breach, everyNode, placeOf, type Sources, syntaxTree } from "./sources.ts";

const brandsFile = "src/units/brands.ts";
/** Rooms where a bare number is the matter itself. */
const ofBareNumbers = ["units", "geometry"];

/** Names exported as `export type Mm = Unit<"mm">`. */
export function brandNames(sources: Sources): ReadonlySet<string> {
  const tree = syntaxTree(brandsFile, sources.get(brandsFile) ?? "");
  const names = tree.program.body.flatMap((statement) => {
    const type = statement.type === "ExportNamedDeclaration" ? statement.declaration : undefined;
    if (type?.type !== "TSTypeAliasDeclaration") return [];
    const is = type.typeAnnotation;
    const isBrand = is.type === "TSTypeReference" && referenceName(is) === "Unit";
    return isBrand ? [type.id.name] : [];
  });
  return new Set(names);
}

function referenceName(node: Node): string | undefined {
  if (node.type !== "TSTypeReference") return undefined;
  const { typeName } = node;
  if (typeName.type === "Identifier") return typeName.name;
  return typeName.type === "TSQualifiedName" && typeName.right.type === "Identifier"
    ? typeName.right.name
    : undefined;
}

// A unit is a word or a sign in square brackets: [mm], [1], [per %MC].
const hasUnit = (text: string) => /\[[^\]\s][^\]]*\]/.test(text);

/** Text of each `@param`, by name; a text runs until the next tag. */
function paramTexts(doc: string): ReadonlyMap<string, string> {
  const tags = doc.split(/^\s*@/m).slice(1);
  return new Map(
    tags.flatMap((tag): [string, string][] => {
      const found = /^param\s+([\w$.]+)\s*([\s\S]*)$/.exec(tag);
      return found?.[1] === undefined ? [] : [[found[1], found[2] ?? ""]];
    }),
  );
}

interface Rules {
  readonly path: string;
  readonly brands: ReadonlySet<string>;
  readonly bareToo: boolean;
}

/** Nodes of a type outside any inline `{ … }`, whose members are judged one by one. */
function* ownTypeNodes(node: Node): Generator<Node> {
  if (node.type === "TSTypeLiteral") return;
  yield node;
  for (const value of Object.values(node)) {
    for (const child of Array.isArray(value) ? value : [value]) {
      if (typeof child?.type === "string" && child.type.startsWith("TS"))
        yield* ownTypeNodes(child);
    }
  }
}

function needsUnit(type: Node | null | undefined, rules: Rules): boolean {
  if (!type) return false;
  return [...ownTypeNodes(type)].some(
    (node) =>
      rules.brands.has(referenceName(node) ?? "") ||
      (rules.bareToo && node.type === "TSNumberKeyword"),
  );
}

interface Parameter {
  readonly node: Node;
  readonly name: string;
  readonly type: Node | null | undefined;
  readonly isNumberByDefault: boolean;
}

function parameterOf(node: Node, at: number): Parameter {
  const isDefaulted = node.type === "AssignmentPattern";
  const target = isDefaulted ? node.left : node.type === "RestElement" ? node.argument : node;
  const holder = node.type === "RestElement" && node.typeAnnotation ? node : target;
  return {
    node,
    name: target.type === "Identifier" ? target.name : `parameter ${at + 1}`,
    type: "typeAnnotation" in holder ? holder.typeAnnotation : undefined,
    isNumberByDefault: isDefaulted && node.right.type === "NumericLiteral",
  };
}

function* parameterBreaches(
  name: string,
  params: readonly Node[],
  doc: string,
  rules: Rules,
): Generator<Breach> {
  const texts = paramTexts(doc);
  for (const [at, node] of params.entries()) {
    const param = parameterOf(node, at);
    const place = placeOf(rules.path, node);
    const bare = rules.bareToo && param.isNumberByDefault && !param.type;
    if ((bare || needsUnit(param.type, rules)) && !hasUnit(texts.get(param.name) ?? "")) {
      yield { rule: "param-unit", place, says: `${name}: @param ${param.name} has no [unit]` };
    }
    if (!param.type) continue;
    for (const member of numericMembers(param.type, rules)) {
      const tagged = [...texts].find(
        ([key]) => key === member.name || key.endsWith(`.${member.name}`),
      );
      if (hasUnit(member.doc ?? "") || hasUnit(tagged?.[1] ?? "")) continue;
      yield { rule: "param-unit", place, says: `${name}: ${member.name} has no [unit]` };
    }
  }
}

interface Member {
  readonly node: Node;
  readonly name: string;
  readonly doc: string | undefined;
}

/** Members, at any depth, whose type needs a unit. */
function numericMembers(type: Node, rules: Rules): readonly Member[] {
  return [...everyNode(type)].flatMap((node): Member[] => {
    if (node.type !== "TSPropertySignature" || !needsUnit(node.typeAnnotation, rules)) return [];
    const name = node.key.type === "Identifier" ? node.key.name : "a member";
    return [{ node, name, doc: docOf(node.leadingComments) }];
  });
}

function* breachesOf(one: Declared, rules: Rules): Generator<Breach> {
  const place = placeOf(rules.path, one.node);
  if (one.params === undefined) {
    for (const member of numericMembers(one.node, { ...rules, bareToo: false })) {
      if (hasUnit(member.doc ?? "")) continue;
      const says = `${one.name}.${member.name}: no doc comment with a [unit]`;
      yield { rule: "member-unit", place: placeOf(rules.path, member.node), says };
    }
    return;
  }
  if (one.doc === undefined || /^\s*(@|$)/.test(one.doc)) {
    yield { rule: "no-doc", place, says: `${one.name} has no doc comment saying what it is` };
  }
  yield* parameterBreaches(one.name, one.params, one.doc ?? "", rules);
}

/** Every exported function or type of a core room whose docs leave out what the house asks for. */
export function functionDocBreaches(sources: Sources, rooms: readonly Room[]): readonly Breach[] {
  const brands = brandNames(sources);
  return [...sources].flatMap(([path, text]) => {
    const [, folder = "", ...rest] = path.split("/");
    const room = rooms.find((one) => one.name === folder);
    if (!room?.core || rest.includes("data")) return [];
    const rules = { path, brands, bareToo: !ofBareNumbers.includes(room.name) };
    return exported(syntaxTree(path, text).program.body).flatMap((one) => [
      ...breachesOf(one, rules),
    ]);
  });
}
