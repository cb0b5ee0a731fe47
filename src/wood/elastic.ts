import { figure, type Ratio, ratio, readTable } from "../units/index.ts";
import { type Given, given } from "../worked/index.ts";
import { elasticRows } from "./data/elastic.ts";
import { handbook } from "./sources.ts";

const names = {
  E_T: "stiffness along the rings over that along the grain",
  E_R: "stiffness across the rings over that along the grain",
  G_LR: "shear stiffness, grain and radius",
  G_LT: "shear stiffness, grain and ring",
  G_RT: "shear stiffness, radius and ring",
  mu_LR: "Poisson's ratio LR",
  mu_LT: "Poisson's ratio LT",
  mu_RT: "Poisson's ratio RT",
  mu_TR: "Poisson's ratio TR",
  mu_RL: "Poisson's ratio RL",
  mu_TL: "Poisson's ratio TL",
} as const;

/** Elastic ratios of a species; one is undefined where the table prints a dash. */
export type ElasticRatios = Readonly<Record<keyof typeof names, Given<Ratio> | undefined>>;

const table: ReadonlyMap<string, ElasticRatios> = new Map(
  readTable(elasticRows).map((row) => {
    const source = handbook("Tables 5-1 and 5-2", row.k === "memory" ? "memory" : "secondary");
    const entries = Object.entries(names).map(([column, says]) => {
      const value = figure(row, column);
      return [column, value === undefined ? undefined : given(says, ratio(value), "1", source)];
    });
    return [row.key ?? "", Object.fromEntries(entries) as ElasticRatios];
  }),
);

/** Elastic ratios by species key; undefined where the handbook has none. */
export const elasticRatios = (speciesKey: string): ElasticRatios | undefined =>
  table.get(speciesKey);
