import { DropLeafDiagram } from "./drop-leaf-diagram.tsx";
import { PlainTableDiagram } from "./plain-table-diagram.tsx";

type Props = {
  /** name of the kind of furniture */
  readonly kind: string;
  /** name of the question that is touched */
  readonly dimension: string | undefined;
  readonly texts: Readonly<Record<string, string>>;
};

/** A small drawing that shows which dimension is meant: the one being touched, in blue. */
export function Diagram({ kind, ...rest }: Props) {
  return kind === "drop-leaf-table" ? (
    <DropLeafDiagram {...rest} />
  ) : (
    <PlainTableDiagram {...rest} />
  );
}
