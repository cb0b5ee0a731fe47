/** One of two words, both in sight. */
export function Either<W extends string>(props: {
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
