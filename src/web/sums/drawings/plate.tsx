import {
  createContext,
  type ReactNode,
  type RefObject,
  useContext,
  useLayoutEffect,
  useState,
} from "react";

/** Height of every plate, in its own units; the width follows the place it has. */
export const PLATE_HEIGHT = 280;
const WIDE = 640;
/** On a phone the plate is narrower, so that what is drawn does not shrink to nothing. */
const NARROW = 440;
const NARROW_BELOW_PX = 480;

/** A plate's width and the size of its lettering, both in its own units. */
export type PlateSize = { readonly width: number; readonly letter: number };

const Size = createContext<PlateSize>({ width: WIDE, letter: 15 });
export const PlateSizing = Size.Provider;
export const usePlate = (): PlateSize => useContext(Size);

/**
 * The plate that suits a place of some width: the drawing shrinks with it, its lettering must not.
 *
 * @param width  of the place [px]
 * @param height  of the place, not below what the drawing takes at that width [px]
 * @param letter  as large as letters are to be [px]
 */
export function plateFor(width: number, height: number, letter: number): PlateSize {
  const units = width < NARROW_BELOW_PX ? NARROW : WIDE;
  const scale = Math.min(width / units, height / PLATE_HEIGHT);
  return { width: units, letter: Math.min(24, Math.max(8, letter / scale)) };
}

/** The size of the plate in a figure, kept up as the figure changes. */
export function usePlateSize(figure: RefObject<HTMLElement | null>): PlateSize {
  const [size, setSize] = useState<PlateSize>({ width: WIDE, letter: 15 });
  useLayoutEffect(() => {
    const place = figure.current;
    if (!place) return;
    const measure = () => {
      const plate = place.querySelector("svg")?.getBoundingClientRect();
      if (!plate || plate.width === 0) return;
      const letter = Number.parseFloat(getComputedStyle(place).fontSize);
      const next = plateFor(plate.width, plate.height, letter);
      setSize((now) => (now.width === next.width && now.letter === next.letter ? now : next));
    };
    measure();
    const watcher = new ResizeObserver(measure);
    watcher.observe(place);
    return () => watcher.disconnect();
  }, [figure]);
  return size;
}

export function Plate({ says, children }: { readonly says: string; readonly children: ReactNode }) {
  const { width } = usePlate();
  return (
    <svg
      className="plate"
      viewBox={`0 0 ${width} ${PLATE_HEIGHT}`}
      role="img"
      aria-label={says.replace(/\s+/g, " ")}
    >
      {children}
    </svg>
  );
}
