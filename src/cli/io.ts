/** Where a command writes: answers to `out`, complaints to `err`. Texts carry their line ends. */
export interface Io {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
}
