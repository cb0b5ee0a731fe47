import { expect, test } from "vitest";
import { bulkOfPart, type Feature } from "../../src/piece/index.ts";
import { FINE_CHORD, solidOf } from "../../src/solid/index.ts";
import { mm } from "../../src/units/index.ts";
import { kernel } from "../kit/solids.ts";

const RADIUS = 12.7;
const blank = { length: mm(300), width: mm(80), thickness: mm(19) };

/** Volume and middle of a board with one moulding, in closed form and as a mesh. */
function both(feature: Feature) {
  const part = { key: "board", blank, features: [feature], isMirrored: false };
  return { bulk: bulkOfPart(part), solid: solidOf(kernel, part) };
}

/** What lies between a whole quarter round and its flats, all along the board, is less than this. */
const STRIP = FINE_CHORD * (Math.PI / 2) * RADIUS * blank.length;

// The hollow's centre lies over the back, on it, behind it by less and by more than a cut is begun outside.
test.each([2, 6.3, 6.8, 9, 12, 17])("a cove under a lip of %f mm weighs what sums say", (lip) => {
  const { bulk, solid } = both({
    ...{ feature: "cove", key: "cove", edge: "lower" },
    radius: mm(RADIUS),
    lip: mm(lip),
  });
  expect(solid.volume - bulk.volume).toBeLessThan(1e-3);
  expect(solid.volume - bulk.volume).toBeGreaterThan(-STRIP);
  const off = solid.centre.map((c, i) => Math.abs(c - (bulk.moment[i] ?? 0) / bulk.volume));
  expect(Math.max(...off)).toBeLessThan((STRIP * blank.width) / bulk.volume);
});

test("how much of a hollow that starts behind the back is in the wood, by slices", () => {
  const lip = 12;
  const { bulk } = both({
    ...{ feature: "cove", key: "cove", edge: "upper" },
    radius: mm(RADIUS),
    lip: mm(lip),
  });
  const behind = lip + RADIUS - blank.thickness;
  const slices = 200_000;
  const height = (RADIUS - behind) / slices;
  const area = Array.from({ length: slices }, (_, i) =>
    Math.sqrt(RADIUS ** 2 - (behind + (i + 0.5) * height) ** 2),
  ).reduce((sum, wide) => sum + wide * height, 0);
  const left = blank.length * (blank.width * blank.thickness - area);
  expect(Math.abs(bulk.volume - left) / left).toBeLessThan(1e-8);
});
