import { useCallback, useState } from "react";

/** What the browser keeps may be anything by the time it is read; `sound` says whether to use it. */
function readKept<T>(key: string, first: T, sound: (kept: unknown) => kept is T): T {
  try {
    const text = localStorage.getItem(key);
    const kept: unknown = text === null ? undefined : JSON.parse(text);
    return sound(kept) ? kept : first;
  } catch {
    // Private windows refuse storage, and a damaged entry is no reason to fail: start afresh.
    return first;
  }
}

/** State that outlives a reload. */
export function useKept<T>(
  key: string,
  first: T,
  sound: (kept: unknown) => kept is T,
): readonly [T, (next: T) => void] {
  const [value, setValue] = useState(() => readKept(key, first, sound));
  const keep = useCallback(
    (next: T) => {
      setValue(next);
      try {
        localStorage.setItem(key, JSON.stringify(next));
      } catch {
        // Storage refused: the page works on, it only forgets at a reload.
      }
    },
    [key],
  );
  return [value, keep];
}
