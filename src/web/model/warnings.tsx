import { type Motion, type Turns, unsafeAt } from "../../piece/index.ts";
import { Mark } from "../controls/finding-line.tsx";
import { stateAt } from "./stance.ts";

/** How the piece stands, to those who only hear it; and to all, what is unsafe about it. */
export function Warnings(props: { readonly motions: readonly Motion[]; readonly turns: Turns }) {
  const { motions, turns } = props;
  const now = stateAt(motions, turns);
  return (
    <div className="model-unsafe" role="status">
      {now && <span className="spoken">It stands: {now.says}.</span>}
      {unsafeAt(motions, turns).map((says) => (
        <p key={says} className="finding" data-verdict="watch">
          <Mark of="watch" />
          <span>
            <b>Unsafe.</b> {says}
          </span>
        </p>
      ))}
    </div>
  );
}
