import type { ReactNode } from "react";
import type { LengthUnit } from "../units/index.ts";
import { Either } from "./controls/either.tsx";

export type Theme = "day" | "evening";

type Props = {
  readonly where: string;
  readonly aside?: ReactNode;
  readonly children?: ReactNode;
  readonly units: LengthUnit;
  readonly setUnits: (units: LengthUnit) => void;
  readonly theme: Theme;
  readonly setTheme: (theme: Theme) => void;
  readonly skipTo: string;
  readonly skipWord: string;
};

/** The head of every screen: where one is, and the things that change everywhere. */
export function Head(props: Props) {
  const { where, aside, children, units, setUnits, theme, setTheme, skipTo, skipWord } = props;
  return (
    <>
      <button
        type="button"
        className="skip"
        onClick={() => document.getElementById(skipTo)?.focus()}
      >
        {skipWord}
      </button>
      <header className="head">
        <a className="wordmark" href="#/pieces">
          Latewood
        </a>
        <span className="head-piece">{where}</span>
        {aside}
        <div className="head-tools">
          {children}
          <a className="head-link" href="#/emc">
            Quick sums
          </a>
          <Either label="Units" words={["inch", "mm"] as const} chosen={units} choose={setUnits} />
          <Either
            label="Light"
            words={["day", "evening"] as const}
            chosen={theme}
            choose={setTheme}
          />
        </div>
      </header>
    </>
  );
}
