import type { OpenPiece } from "./use-piece.ts";
import type { ShopRead } from "./use-shop.ts";

/** What happened to the piece that its maker should know: not read yet, not kept, mended, not drawn. */
export function Notices(props: {
  readonly piece: OpenPiece;
  readonly shop: ShopRead;
  /** why the model could not be worked */
  readonly fault: string | undefined;
}) {
  const { piece, shop, fault } = props;
  const { document, keeping, dropped, repairs } = piece;
  // Once the piece is read, the head says what keeps it from being kept.
  const unread = !document && keeping.is === "waiting" ? keeping.said : shop.waiting;
  return (
    <>
      {unread.length > 0 && (
        <p className="repair" role="status">
          Not read yet: {unread.map((s) => `${s.reason} ${s.remedy}`).join(" ")}{" "}
          <button
            type="button"
            className="in-line"
            onClick={() => {
              if (!document) piece.retry();
              shop.retry();
            }}
          >
            Try again
          </button>
        </p>
      )}
      {dropped.length > 0 && (
        <div className="repair" role="alert">
          {dropped.map(({ place, reason, remedy }, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the list only grows, and goes as a whole
            <p key={i}>
              <b>Not kept: {place}.</b> {reason} {remedy}
            </p>
          ))}
          <p>
            What is shown stands without it.{" "}
            <button type="button" className="in-line" onClick={piece.noted}>
              I have read this
            </button>
          </p>
        </div>
      )}
      {repairs.map((says) => (
        <p className="repair" key={says} role="status">
          {says}
        </p>
      ))}
      {fault !== undefined && (
        <p className="repair" role="status">
          The model could not be worked: {fault}
        </p>
      )}
    </>
  );
}
