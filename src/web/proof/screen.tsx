import { type LengthUnit, printQuantity } from "../../units/index.ts";
import type { Finding } from "../../worked/index.ts";
import type { Workup } from "../../workup/index.ts";
import { Chain } from "../controls/chain.tsx";
import { FindingLine } from "../controls/finding-line.tsx";
import { Typeset } from "../controls/typeset.tsx";
import { partsLit } from "../piece/lights.ts";

type Props = {
  readonly workup: Workup;
  readonly units: LengthUnit;
  readonly lifted: ReadonlySet<string>;
  readonly point: (keys: readonly string[]) => void;
};

/** The findings so far, in their groups, worst first. */
export function ProofScreen({ workup, units, lifted, point }: Props) {
  const { findings } = workup;
  const groups = [...new Set(findings.map((f) => f.group))];
  const count = (verdict: Finding["verdict"]) =>
    findings.filter((f) => f.verdict === verdict).length;
  return (
    <div className="proof">
      <h1>Proof</h1>
      <p className="tells">
        {count("ok")} proven, {count("watch")} to watch, {count("fails")} that stop the work,{" "}
        {count("not-judged")} not judged. More is judged as Latewood grows.
      </p>
      {groups.map((group) => {
        const own = findings.filter((f) => f.group === group);
        return (
          <section key={group} className="proof-group">
            <h2>
              {group} <span>{own.length}</span>
            </h2>
            <ul>
              {own.map((finding) => (
                <Row
                  key={finding.id}
                  finding={finding}
                  lights={partsLit(workup.piece, finding.lights)}
                  units={units}
                  lifted={lifted}
                  point={point}
                />
              ))}
            </ul>
          </section>
        );
      })}
    </div>
  );
}

type RowProps = Omit<Props, "workup"> & {
  readonly finding: Finding;
  /** keys of the parts that it speaks of */
  readonly lights: readonly string[];
};

function Row({ finding, lights, units, lifted, point }: RowProps) {
  const { margin, why } = finding;
  return (
    <li
      data-lifted={lights.some((key) => lifted.has(key))}
      onPointerEnter={() => point(lights)}
      onPointerLeave={() => point([])}
      onFocus={() => point(lights)}
      onBlur={() => point([])}
    >
      <FindingLine finding={finding} />
      {margin && (
        <p className="margin-line">
          <Typeset text={`${margin.says}: ${printQuantity(margin.value, margin.unit, units)}`} />
        </p>
      )}
      {why.length > 0 && (
        <details className="working in-proof">
          <summary>Working</summary>
          {why.map((worked) => (
            <Chain key={worked.says} of={worked} units={units} />
          ))}
        </details>
      )}
    </li>
  );
}
