import type { Finding } from "../../worked/index.ts";
import { Typeset } from "./typeset.tsx";

/** The shape of each verdict, of what stops the sum, and of what stands on weak ground. */
const marks = {
  ok: "M2.5 9.5l4.5 5 8.5-12",
  watch: "M9 2l7.5 14h-15z",
  fails: "M1.5 1.5h15v15h-15zM4 4l10 10M14 4L4 14",
  "not-judged": "M3 9h12",
  stopped: "M1.5 9a7.5 7.5 0 1 0 15 0a7.5 7.5 0 1 0-15 0M9 4.5v6M9 12.5v2",
  note: "M4 1.5h7l3.5 3.5v11.5H4zM6.5 8h5M6.5 12h5",
  unproven: "M9 1.5L16.5 9L9 16.5L1.5 9z",
} as const;

export function Mark({ of }: { readonly of: keyof typeof marks }) {
  return (
    <svg className="mark" viewBox="0 0 18 18" aria-hidden="true">
      <path d={marks[of]} />
    </svg>
  );
}

const words = { ok: "Proven.", watch: "Watch.", fails: "Stops.", "not-judged": "Not judged." };

export function FindingLine({ finding }: { readonly finding: Finding }) {
  const { verdict, says } = finding;
  return (
    <p className="finding" data-verdict={verdict}>
      <Mark of={verdict} />
      <span>
        <b>{words[verdict]}</b> <Typeset text={says} />
      </span>
    </p>
  );
}
