/** The job in its order, as marks on the stick; those that are built so far can be turned to. */
export const stations = [
  { name: "shape", title: "Shape", isBuilt: true },
  { name: "proof", title: "Proof", isBuilt: true },
  { name: "timber", title: "Timber", isBuilt: false },
  { name: "glueup", title: "Glue-up", isBuilt: false },
  { name: "machines", title: "Machines", isBuilt: false },
  { name: "bench", title: "Bench", isBuilt: false },
  { name: "papers", title: "Papers", isBuilt: true },
  { name: "price", title: "Price", isBuilt: false },
] as const;

export type StationName = (typeof stations)[number]["name"];

/** What a station is called. */
export const titleOf = (name: StationName): string =>
  stations.find((s) => s.name === name)?.title ?? "";

/** A built station by its name in the address; the first where it names none. */
export const stationNamed = (name: string | undefined): StationName =>
  stations.find((s) => s.name === name && s.isBuilt)?.name ?? "shape";
