import { Dimension } from "./kit.tsx";
import { Lettering } from "./lettering.tsx";
import { type At, pathOf } from "./path.ts";
import { Plate, usePlate } from "./plate.tsx";
import type { View } from "./view.ts";

const HEAD = 48;

/** A screw through one piece into another, with the two holes. */
export function ScrewDrawing({ view }: { readonly view: View }) {
  const plate = usePlate();
  const grip = view.value("grip") ?? 25;
  const scale = Math.min(5.5, 124 / grip);
  const half = (name: string) => Math.max(1, ((view.result(name) ?? 1) * scale) / 2);
  const [g, r, s] = [Math.max(8, grip * scale), half("lead-hole"), half("shank-hole")];
  const [left, right] = [plate.width * 0.36, plate.width - 120];
  const [joint, middle] = [88, (left + right) / 2];
  const tip = Math.min(10, g / 2);
  const threads = Math.max(2, Math.round(g / 9));
  const turns = Array.from(
    { length: threads },
    (_, i) => joint + 4 + (Math.max(0, g - tip - 4) * i) / threads,
  );
  return (
    <Plate
      says={`A screw with ${view.label("grip")} of thread in the lower piece; lead hole ${view.resultLabel("lead-hole")}, shank hole ${view.resultLabel("shank-hole")}.`}
    >
      <rect
        className="wood outlined"
        x={left}
        y={joint - HEAD}
        width={right - left}
        height={HEAD}
      />
      <rect
        className="wood wood-2 outlined"
        x={left}
        y={joint}
        width={right - left}
        height={Math.min(156, g + 30)}
      />
      <rect className="bore" x={middle - s} y={joint - HEAD} width={2 * s} height={HEAD} />
      <rect className="bore" x={middle - r} y={joint} width={2 * r} height={g} />
      <path className="steel" d={pathOf(screwOutline(middle, joint, { g, r, s, tip }), true)} />
      {turns.map((y) => (
        <path key={y} className="thread" d={`M${middle - s} ${y + 4}L${middle + s} ${y}`} />
      ))}
      <Dimension
        from={[right, joint]}
        to={[right, joint + g]}
        off={28}
        label={view.label("grip")}
        isTouched={view.touched === "grip"}
      />
      <Hole
        view={view}
        name="shank-hole"
        says="shank hole"
        at={[left, joint - HEAD / 2]}
        to={middle - s}
      />
      <Hole
        view={view}
        name="lead-hole"
        says="lead hole"
        at={[left, joint + g / 2 + 4]}
        to={middle - r}
      />
    </Plate>
  );
}

/** A hole's name and size on two lines beside the wood, with a leader to the hole. */
function Hole(props: {
  readonly view: View;
  readonly name: string;
  readonly says: string;
  readonly at: At;
  readonly to: number;
}) {
  const { view, name, says, at, to } = props;
  const { letter } = usePlate();
  const [x, y] = [at[0] - 14, at[1]];
  return (
    <>
      <Lettering at={[x, y - 2]} anchor="end" kind="aside" text={says} />
      <Lettering at={[x, y + letter]} anchor="end" text={view.resultLabel(name)} />
      <path className="leader" d={`M${x + 5} ${y}H${to}`} />
    </>
  );
}

type Screw = { readonly g: number; readonly r: number; readonly s: number; readonly tip: number };

/** Head, neck, shank and thread, from the upper face to the point. */
function screwOutline(x: number, joint: number, { g, r, s, tip }: Screw): readonly At[] {
  const head = joint - HEAD;
  const neck = Math.min(HEAD * 0.6, s * 1.2);
  const side: readonly At[] = [
    [2.1 * s, head],
    [0.96 * s, head + neck],
    [0.96 * s, joint],
    [1.1 * r, joint + Math.min(6, g - tip)],
    [1.1 * r, joint + g - tip],
  ];
  return [
    ...side.map(([dx, y]) => [x + dx, y] as const),
    [x, joint + g],
    ...side.toReversed().map(([dx, y]) => [x - dx, y] as const),
  ];
}
