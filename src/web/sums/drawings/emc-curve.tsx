import { useId } from "react";
import { type Topic, topicNamed } from "../../../reckon/index.ts";
import { Lettering } from "./lettering.tsx";
import { type At, pathOf } from "./path.ts";
import { Plate, usePlate } from "./plate.tsx";
import { sweep, type View } from "./view.ts";

const topic: Topic = topicNamed("emc");
const humidities = [1, ...Array.from({ length: 49 }, (_, i) => 2 + i * 2), 99];
const [LEFT, TOP, BOTTOM] = [60, 34, 214];

/** Moisture content against humidity at this temperature, with what was asked on it. */
export function EmcDrawing({ view }: { readonly view: View }) {
  const clip = useId();
  const plate = usePlate();
  const right = plate.width - 40;
  const points = asked(view);
  // Indoor moisture fills the plate; only what is wetter gets a taller scale.
  const most = Math.max(24, ...points.map(([, m]) => 8 * Math.ceil(m / 8)));
  const xOf = (humidity: number) => LEFT + ((right - LEFT) * humidity) / 100;
  const yOf = (moisture: number) => BOTTOM - ((BOTTOM - TOP) * moisture) / most;
  const steps = Array.from({ length: 5 }, (_, i) => (most / 4) * i);
  const temperature = view.value("temperature") ?? 20;
  const curve = sweep(
    topic,
    { temperature: `${temperature} C` },
    "humidity",
    humidities.map((h) => `${h} %`),
  ).flatMap((m, i): readonly At[] => (m === undefined ? [] : [[xOf(humidities[i] ?? 0), yOf(m)]]));
  return (
    <Plate says={`Moisture content against humidity at ${view.label("temperature")}.`}>
      {[0, 20, 40, 60, 80, 100].map((h) => (
        <g key={h}>
          <path className="grid" d={`M${xOf(h)} ${TOP}V${BOTTOM}`} />
          <Lettering at={[xOf(h), BOTTOM + plate.letter + 4]} text={`${h}`} kind="aside" />
        </g>
      ))}
      {steps.map((m) => (
        <g key={m}>
          <path className="grid" d={`M${LEFT} ${yOf(m)}H${right}`} />
          <Lettering at={[LEFT - 8, yOf(m) + 5]} anchor="end" text={`${m}`} kind="aside" />
        </g>
      ))}
      <clipPath id={clip}>
        <rect x={LEFT} y={TOP} width={right - LEFT} height={BOTTOM - TOP} />
      </clipPath>
      <path className="curve" clipPath={`url(#${clip})`} d={pathOf(curve)} />
      {points.map(([humidity, moisture]) => (
        <g key={`${humidity} ${moisture}`}>
          <path className="drop" d={`M${xOf(humidity)} ${BOTTOM}V${yOf(moisture)}H${LEFT}`} />
          <circle className="dot" cx={xOf(humidity)} cy={yOf(moisture)} r={5} />
        </g>
      ))}
      <Lettering
        at={[right, BOTTOM + 2 * plate.letter + 14]}
        anchor="end"
        kind="aside"
        text="relative humidity, %"
      />
      <Lettering
        at={[LEFT, TOP - 12]}
        anchor="start"
        kind="aside"
        text={`moisture content, %, at ${view.label("temperature")}`}
      />
    </Plate>
  );
}

/** What was asked, as humidity and moisture: one way, the other, or both. */
function asked(view: View): readonly At[] {
  const pairs = [
    [view.value("humidity"), view.result("moisture")],
    [view.result("humidity"), view.value("moisture")],
  ] as const;
  return pairs.flatMap(([h, m]) => (h === undefined || m === undefined ? [] : [[h, m] as const]));
}
