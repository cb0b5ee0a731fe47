import { useEffect } from "react";
import type { LengthUnit } from "../units/index.ts";
import { useKept } from "./kept.ts";
import { QuickSums } from "./sums/screen.tsx";
import { useTexts } from "./sums/use-texts.ts";

type Theme = "day" | "evening";

const isTheme = (kept: unknown): kept is Theme => kept === "day" || kept === "evening";
const isSide = (kept: unknown): kept is LengthUnit => kept === "inch" || kept === "mm";

const firstTheme = (): Theme =>
  window.matchMedia("(prefers-color-scheme: dark)").matches ? "evening" : "day";
const firstSide = (): LengthUnit => (navigator.language === "en-US" ? "inch" : "mm");

export function App() {
  const [theme, setTheme] = useKept<Theme>("latewood/theme", firstTheme(), isTheme);
  const [units, setUnits] = useKept<LengthUnit>("latewood/units", firstSide(), isSide);
  const texts = useTexts(units);
  useEffect(() => {
    document.documentElement.dataset.theme = theme;
  }, [theme]);
  return (
    <>
      <button
        type="button"
        className="skip"
        onClick={() => document.getElementById("questions")?.focus()}
      >
        To the questions
      </button>
      <header className="head">
        <b className="wordmark">Latewood</b>
        <span className="head-where">Quick sums</span>
        <div className="head-tools">
          <Either
            label="Units"
            words={["inch", "mm"] as const}
            chosen={units}
            choose={(side) => {
              texts.pinAll();
              setUnits(side);
            }}
          />
          <Either
            label="Light"
            words={["day", "evening"] as const}
            chosen={theme}
            choose={setTheme}
          />
        </div>
      </header>
      <QuickSums units={units} texts={texts} />
    </>
  );
}

/** One of two words, both in sight. */
function Either<W extends string>(props: {
  readonly label: string;
  readonly words: readonly [W, W];
  readonly chosen: W;
  readonly choose: (word: W) => void;
}) {
  const { label, words, chosen, choose } = props;
  return (
    <fieldset className="either" aria-label={label}>
      {words.map((word) => (
        <button
          key={word}
          type="button"
          aria-pressed={word === chosen}
          onClick={() => word !== chosen && choose(word)}
        >
          {word}
        </button>
      ))}
    </fieldset>
  );
}
