import { useEffect, useState } from "react";
import { topics } from "../reckon/index.ts";
import type { LengthUnit } from "../units/index.ts";
import { Boundary } from "./boundary.tsx";
import { Head, type Theme } from "./head.tsx";
import { useKept } from "./kept.ts";
import { PieceScreen } from "./piece/screen.tsx";
import { stationNamed } from "./piece/stations.ts";
import { PiecesScreen } from "./pieces/screen.tsx";
import { QuickSums } from "./sums/screen.tsx";
import { useTexts } from "./sums/use-texts.ts";

const isTheme = (kept: unknown): kept is Theme => kept === "day" || kept === "evening";
const isSide = (kept: unknown): kept is LengthUnit => kept === "inch" || kept === "mm";

const firstTheme = (): Theme =>
  window.matchMedia("(prefers-color-scheme: dark)").matches ? "evening" : "day";
const firstSide = (): LengthUnit => (navigator.language === "en-US" ? "inch" : "mm");

const wordsNow = () => window.location.hash.replace(/^#\/?/, "").split("/");

/** The address's words behind its hash: `piece`, a piece's id, a station; or a quick sum. */
function useWords(): readonly string[] {
  const [now, setNow] = useState(wordsNow);
  useEffect(() => {
    const follow = () => setNow(wordsNow());
    window.addEventListener("hashchange", follow);
    return () => window.removeEventListener("hashchange", follow);
  }, []);
  return now;
}

export function App() {
  return (
    <Boundary>
      <Places />
    </Boundary>
  );
}

function Places() {
  const [theme, setTheme] = useKept<Theme>("latewood/theme", firstTheme(), isTheme);
  const [units, setUnits] = useKept<LengthUnit>("latewood/units", firstSide(), isSide);
  const texts = useTexts(units);
  const [place = "", id, station] = useWords();
  useEffect(() => {
    document.documentElement.dataset.theme = theme;
  }, [theme]);
  if (place === "piece" && id !== undefined) {
    const at = stationNamed(station);
    return <PieceScreen key={id} id={id} station={at} theme={theme} setTheme={setTheme} />;
  }
  if (topics.some((topic) => topic.name === place)) {
    const turn = (side: LengthUnit) => {
      texts.pinAll();
      setUnits(side);
    };
    return (
      <>
        <Head
          where="Quick sums"
          units={units}
          setUnits={turn}
          theme={theme}
          setTheme={setTheme}
          skipTo="questions"
          skipWord="To the questions"
        />
        <QuickSums units={units} texts={texts} />
      </>
    );
  }
  return <PiecesScreen units={units} setUnits={setUnits} theme={theme} setTheme={setTheme} />;
}
