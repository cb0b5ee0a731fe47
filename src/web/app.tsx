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
  const other: LengthUnit = units === "inch" ? "mm" : "inch";
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
          <button
            type="button"
            onClick={() => {
              texts.pinAll();
              setUnits(other);
            }}
            aria-label={`Units: ${units}. Change to ${other}`}
          >
            <span aria-hidden="true" className="pair">
              <i data-on={units === "inch"}>inch</i>
              <i data-on={units === "mm"}>mm</i>
            </span>
          </button>
          <button
            type="button"
            onClick={() => setTheme(theme === "day" ? "evening" : "day")}
            aria-label={`Theme: ${theme}. Change to ${theme === "day" ? "evening" : "day"}`}
          >
            <span aria-hidden="true" className="pair">
              <i data-on={theme === "day"}>day</i>
              <i data-on={theme === "evening"}>evening</i>
            </span>
          </button>
        </div>
      </header>
      <QuickSums units={units} texts={texts} />
    </>
  );
}
