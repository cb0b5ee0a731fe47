import { checkPiece } from "../src/checks/index.ts";
import { answer, demoPieces, override, pieceOf } from "../src/kinds/index.ts";
import { sectionOf, toleranceStudy } from "../src/motion/index.ts";
import { applyEdit, type PieceDocument, weigh } from "../src/piece/index.ts";
import { demoShop } from "../src/shop/index.ts";
import { createKernel, createSolids } from "../src/solid/index.ts";
import { createWorkup } from "../src/workup/index.ts";
import { type Spread, spread, took } from "./spread.ts";

/** How often each is measured, and how often before, unmeasured. */
const RUNS = 100;
const WARM = 30;

function measured(name: string, call: (i: number) => unknown): Spread {
  for (let i = 0; i < WARM; i++) call(i);
  return spread(
    name,
    Array.from({ length: RUNS }, (_, i) => took(() => call(WARM + i))),
  );
}

/** The demo drop-leaf table: its checks, its joint's tolerance study, and what an edit costs. */
export async function leaves(): Promise<readonly Spread[]> {
  const demo = demoPieces().find(({ assemblies }) => assemblies.table?.kind === "drop-leaf-table");
  const read = demo && pieceOf(demo, demoShop);
  if (!demo || !read?.ok) throw new Error("there is no demo drop-leaf table");
  const { piece } = read;
  const weighing = weigh(piece);
  const joint = piece.joints.find(({ kind }) => kind === "leaf");
  const section = joint?.kind === "leaf" ? sectionOf(joint.leaf) : undefined;
  if (!section) throw new Error("the demo table has no rule joint");
  const { pinError, setOutError, cutterError, thicknessError } = demoShop;
  const spreads = {
    "pin across": pinError,
    "pin height": pinError,
    "set-out": setOutError,
    "round-over": cutterError,
    cove: cutterError,
    thickness: thicknessError,
  };
  const work = createWorkup(demoShop);
  const solids = createSolids(await createKernel());
  const drawn = (document: PieceDocument) => {
    const outcome = pieceOf(document, demoShop);
    if (!outcome.ok) throw new Error("the demo is no piece after a change");
    for (const part of outcome.piece.parts) solids.of(part);
  };
  const pin = { key: "table/leaf-joint.pin-out", says: "pin" };
  const pinned = (i: number) =>
    applyEdit(demo, override(demo, pin, `${0.3 + (i % 40) / 100} mm`)).document;
  const widened = (i: number) =>
    applyEdit(demo, answer(demo, "table", "leaf", `${280 + (i % 40) / 2} mm`)).document;
  const result = [
    measured("all checks of the demo drop-leaf table", () => checkPiece(piece, weighing, demoShop)),
    measured("2,000 joints made with the shop’s errors", (i) =>
      toleranceStudy(section, spreads, 2000, i + 1),
    ),
    measured("its parts, masses, cut list and findings after a pin is moved", (i) =>
      work(pinned(i)),
    ),
    measured("the same after its leaves are made wider", (i) => work(widened(i))),
    measured("its shapes after its leaves are made wider", (i) => drawn(widened(i))),
  ];
  solids.free();
  return result;
}
