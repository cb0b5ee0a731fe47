/** Where a command writes: answers to `out`, complaints to `err`. Texts carry their line ends. */
export interface Io {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** Settles once the reader has taken enough of `out` for more to be written; memory needs none. */
  readonly drained?: () => Promise<void>;
}
