import { type StationName, stations } from "./stations.ts";

type Props = {
  readonly id: string;
  readonly current: StationName;
  /** how far a station is settled, in few words */
  readonly says: Partial<Readonly<Record<StationName, string>>>;
};

/** The job's stations down one edge; a piece walks along them. */
export function StationStick({ id, current, says }: Props) {
  return (
    <nav className="stick" aria-label="The job">
      <ol>
        {stations.map(({ name, title, isBuilt }) => (
          <li key={name}>
            {isBuilt ? (
              <a
                href={`#/piece/${id}/${name}`}
                aria-current={name === current ? "page" : undefined}
              >
                <span>{title}</span>
                <small>{says[name]}</small>
              </a>
            ) : (
              <span className="stick-to-come">
                <span>{title}</span>
                <small>not built yet</small>
              </span>
            )}
          </li>
        ))}
      </ol>
    </nav>
  );
}
