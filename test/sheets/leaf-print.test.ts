import { describe, expect } from "vitest";
import { type Drawing, papers, type Sheet, writePdf } from "../../src/sheets/index.ts";
import { DOTS, type Picture, rendered, runsAcross, withPoppler } from "../kit/print.ts";
import { demos, fonts, planned } from "../kit/sheets.ts";

const asked = { fonts, made: new Date("2026-03-14T12:00:00Z") };
/** A tenth of a millimetre over a hundred, and half a dot for each of the two lines it is measured between. */
const within = (length: number) => (0.1 * length) / 100 + 1 / DOTS;
/** Edges are drawn so thick, in a fine pen and a usual one, and where a hatch line meets them [mm]. */
const EDGE = [0.28, 0.8] as const;

const demo = demos.find(({ piece }) => piece.joints.some(({ kind }) => kind === "leaf"));
if (!demo) throw new Error("no demo piece has a leaf");

function placed(sheet: Sheet, id: string) {
  const found = sheet.placed.find(({ drawing }) => drawing.id === id);
  if (!found) throw new Error(`${sheet.id} has no drawing ${id}`);
  return found;
}

/** Middles of a drawing's edges along a line through it, in its own millimetres. */
function edges(
  picture: Picture,
  sheet: Sheet,
  { drawing, at }: { readonly drawing: Drawing; readonly at: readonly [number, number] },
  along: "x" | "y",
  place: number,
): readonly number[] {
  const { height } = sheet.paper;
  const line =
    along === "x" ? height - at[1] - place / drawing.scale : at[0] + place / drawing.scale;
  return runsAcross(picture, along, line)
    .filter(({ wide }) => wide > EDGE[0] && wide < EDGE[1])
    .map(({ middle }) =>
      along === "x" ? (middle - at[0]) * drawing.scale : (height - middle - at[1]) * drawing.scale,
    );
}

const near = (all: readonly number[], place: number): number => {
  const found = [...all].sort((a, b) => Math.abs(a - place) - Math.abs(b - place))[0];
  if (found === undefined) throw new Error("nothing is drawn there");
  return found;
};

describe.each(["letter", "a4"] as const)("printed on %s", (paper) => {
  const { sheets } = planned(demo, { paper, units: "mm" });
  const page = (id: string) => {
    const sheet = sheets.find((one) => one.id === id);
    if (!sheet) throw new Error(`there is no sheet ${id}`);
    return sheet;
  };
  const print = async (sheet: Sheet) => rendered(await writePdf([sheet], asked), 1);

  withPoppler(
    "a leaf's joint is as large as its parts are",
    async () => {
      const sheet = page("leaf-joint");
      const picture = await print(sheet);
      const joint = demo.piece.joints.find(({ kind }) => kind === "leaf");
      if (joint?.kind !== "leaf") throw new Error("it has no leaf");
      const { hinge } = joint.leaf;
      const size = (key: string) => {
        const value = demo.piece.values.find((one) => one.key.endsWith(key));
        if (!value) throw new Error(`no value ${key}`);
        return value.inForce as number;
      };
      const drawn = placed(sheet, "leaf-joint-true");
      expect(drawn.drawing.scale).toBe(1);
      // Upright through the short plate, clear of its screws: underside, plate, face.
      const up = edges(picture, sheet, drawn, "y", -6.5);
      const thickness = near(up, size("top.thickness")) - near(up, 0);
      expect(Math.abs(thickness - size("top.thickness"))).toBeLessThan(within(thickness));
      // Level through both plates: their ends, so far apart as the hinge is long.
      const ends = edges(picture, sheet, drawn, "x", hinge.plate * 0.55);
      const pin = size("leaf-joint.pin-out");
      const long = near(ends, pin + hinge.long.reach) - near(ends, pin - hinge.short.reach);
      const meant = hinge.long.reach + hinge.short.reach;
      expect(Math.abs(long - meant)).toBeLessThan(within(meant));
      // Enlarged, level through the round-over a little over its foot: how far the arc is out there.
      const large = placed(sheet, "leaf-joint-large");
      const [radius, pinHeight] = [size("leaf-joint.radius"), size("leaf-joint.pin-height")];
      const above = 1.5;
      const arc = Math.sqrt(radius ** 2 - above ** 2);
      const level = edges(picture, sheet, large, "x", pinHeight + above);
      expect(Math.abs(near(level, arc) - arc)).toBeLessThan(within(arc));
    },
    60_000,
  );

  withPoppler(
    "an arm's pattern is: from its pivot to the cross, and across",
    async () => {
      const sheet = page("arms");
      const picture = await print(sheet);
      const first = placed(sheet, "arms-above-1");
      const dimension = first.drawing.dimensions.find(({ id }) => id.endsWith("tail-pivot"));
      if (dimension?.dimension !== "straight") throw new Error("its tail is not dimensioned");
      const arm = demo.piece.parts.find(({ role }) => role === "arm");
      const rail = arm?.blank.thickness ?? 0;
      // Across the arm, between pivot and tail.
      const middle = (dimension.from[0] + dimension.to[0]) / 2;
      const across = edges(picture, sheet, first, "y", middle + 6);
      expect(Math.abs(near(across, rail) - near(across, 0) - rail)).toBeLessThan(within(rail));
      // Along it a little over the outer face: the two slanted cuts, of which the arm's own is given by its blank.
      const second = placed(sheet, "arms-above-2");
      const at = rail / 4;
      const [bevel] = arm?.features.filter((f) => f.feature === "bevel") ?? [];
      const run = bevel?.feature === "bevel" ? bevel.run : 0;
      const slanted = (where: Parameters<typeof edges>[2], wanted: number) =>
        near(
          runsAcross(picture, "x", sheet.paper.height - where.at[1] - at)
            .filter(({ wide }) => wide > 0.3 && wide < 0.8)
            .map(({ middle: x }) => x - where.at[0]),
          wanted,
        );
      const tail = slanted(first, run * (1 - at / rail));
      const reach = slanted(second, (arm?.blank.length ?? 0) - run * (at / rail));
      const meant = (arm?.blank.length ?? 0) - run;
      expect(meant).toBeGreaterThan(100);
      expect(Math.abs(reach - tail - meant)).toBeLessThan(within(meant));
    },
    60_000,
  );

  withPoppler(
    "both stand within the paper they are made for",
    async () => {
      for (const id of ["leaf-joint", "arms"]) {
        const picture = await print(page(id));
        expect(Math.abs(picture.width / DOTS - papers[paper].width)).toBeLessThan(0.1);
      }
    },
    60_000,
  );
});
