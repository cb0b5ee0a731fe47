import { type Topic, topicNamed } from "../../../reckon/index.ts";
import { Lettering, Plate, pathOf } from "./kit.tsx";
import { sweep, type View } from "./view.ts";

const topic: Topic = topicNamed("emc");
const humidities = Array.from({ length: 48 }, (_, i) => i * 2);
const [LEFT, RIGHT, TOP, BOTTOM] = [90, 580, 24, 232] as const;
const xOf = (humidity: number) => LEFT + ((RIGHT - LEFT) * humidity) / 100;
const yOf = (moisture: number) => BOTTOM - ((BOTTOM - TOP) * moisture) / 24;

/** Moisture content against humidity at this temperature, with the asked point on it. */
export function EmcDrawing({ view }: { readonly view: View }) {
  const temperature = view.value("temperature") ?? 20;
  const curve = sweep(
    topic,
    { temperature: `${temperature} C` },
    "humidity",
    humidities.map((h) => `${h} %`),
  );
  const points = curve.flatMap((m, i) =>
    m === undefined || m > 24 ? [] : [[xOf(humidities[i] ?? 0), yOf(m)] as const],
  );
  const humidity = view.value("humidity") ?? view.result("humidity") ?? 0;
  const moisture = view.result("moisture") ?? view.value("moisture") ?? 0;
  const [x, y] = [xOf(humidity), yOf(Math.min(24, moisture))];
  return (
    <Plate says={`Moisture content against humidity at ${view.label("temperature")}.`}>
      {[0, 20, 40, 60, 80, 100].map((h) => (
        <g key={h}>
          <path className="grid" d={`M${xOf(h)} ${TOP}V${BOTTOM}`} />
          <Lettering at={[xOf(h), BOTTOM + 20]} text={`${h}`} className="aside" />
        </g>
      ))}
      {[0, 6, 12, 18, 24].map((m) => (
        <g key={m}>
          <path className="grid" d={`M${LEFT} ${yOf(m)}H${RIGHT}`} />
          <Lettering at={[LEFT - 10, yOf(m) + 5]} anchor="end" text={`${m}`} className="aside" />
        </g>
      ))}
      <path className="curve" d={pathOf(points)} />
      <path className="drop" d={`M${x} ${BOTTOM}V${y}H${LEFT}`} />
      <circle className="dot" cx={x} cy={y} r={5} />
      <Lettering
        at={[RIGHT, BOTTOM + 40]}
        anchor="end"
        className="aside"
        text="relative humidity, %"
      />
      <Lettering
        at={[LEFT, TOP - 8]}
        anchor="start"
        className="aside"
        text={`moisture content, %, at ${view.label("temperature")}`}
      />
    </Plate>
  );
}
