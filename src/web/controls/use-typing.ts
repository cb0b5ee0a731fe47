import { useCallback, useEffect, useRef, useState } from "react";

/** Typing is taken as done after so long without a key [ms]. */
const REST_MS = 700;

type Typing = {
  /** what stands in the field */
  readonly text: string;
  /** whether a fault in it is to be said: once typing has rested, or the field is left */
  readonly isSettled: boolean;
  readonly write: (text: string) => void;
  readonly leave: () => void;
  readonly settle: () => void;
  readonly giveUp: () => void;
};

/**
 * A field's text while it is typed. A text that can be read shows its effect at once, and is kept
 * when typing rests or the field is left, in whatever way; one that cannot be read stays in the field
 * and does no harm.
 *
 * @param stands  the text that is kept
 * @param isGood  whether a text can be read
 * @param preview  shows a text's effect, or with none what is kept
 * @param keep  keeps it
 */
export function useTyping(
  stands: string,
  isGood: (text: string) => boolean,
  preview: (text: string | undefined) => void,
  keep: (text: string) => void,
): Typing {
  const [typed, setTyped] = useState<string>();
  const [isSettled, setSettled] = useState(true);
  const now = useRef({ typed, stands, isGood, preview, keep });
  now.current = { typed, stands, isGood, preview, keep };
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);

  const settle = useCallback(() => {
    clearTimeout(timer.current);
    setSettled(true);
    const { typed: text, stands: before, isGood: reads, preview: show, keep: take } = now.current;
    if (text === undefined || !reads(text)) return;
    now.current.typed = undefined;
    setTyped(undefined);
    if (text.trim() === before) show(undefined);
    else take(text);
  }, []);
  // A field that goes away, or whose page is hidden or closed, is left without a blur.
  useEffect(() => {
    const onHidden = () => document.visibilityState === "hidden" && settle();
    window.addEventListener("pagehide", settle);
    document.addEventListener("visibilitychange", onHidden);
    return () => {
      window.removeEventListener("pagehide", settle);
      document.removeEventListener("visibilitychange", onHidden);
      settle();
    };
  }, [settle]);

  return {
    text: typed ?? stands,
    isSettled,
    write: (text) => {
      now.current.typed = text;
      setTyped(text);
      setSettled(false);
      preview(isGood(text) ? text : undefined);
      clearTimeout(timer.current);
      timer.current = setTimeout(settle, REST_MS);
    },
    leave: settle,
    settle,
    giveUp: () => {
      clearTimeout(timer.current);
      setTyped(undefined);
      setSettled(true);
      preview(undefined);
    },
  };
}
