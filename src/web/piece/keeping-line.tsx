import type { Keeping } from "./edit-queue.ts";

const clock = new Intl.DateTimeFormat(undefined, { hour: "2-digit", minute: "2-digit" });

/** Whether what is seen is kept. */
export function KeepingLine(props: {
  readonly keeping: Keeping;
  readonly isDemo: boolean;
  readonly retry: () => void;
}) {
  const { keeping, isDemo, retry } = props;
  if (keeping.is === "waiting") {
    return (
      <span className="head-where not-kept" role="alert">
        Not kept yet: {keeping.said.map((s) => `${s.reason} ${s.remedy}`).join(" ")}{" "}
        <button type="button" className="in-line" onClick={retry}>
          Try again
        </button>
      </span>
    );
  }
  return (
    <span className="head-where">
      {isDemo ? (
        <>
          invented demo<span className="head-more"> piece · </span>
        </>
      ) : undefined}
      <span className="head-more">{wordsFor(keeping)}</span>
    </span>
  );
}

function wordsFor(keeping: Exclude<Keeping, { readonly is: "waiting" }>): string {
  if (keeping.is !== "kept") return keeping.is;
  return keeping.at ? `every edit kept, ${clock.format(keeping.at)}` : "every edit is kept";
}
