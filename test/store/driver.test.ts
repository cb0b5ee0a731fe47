import { describe, expect, test } from "vitest";
import { openDatabase } from "../../src/store/database.ts";
import { loadDriver } from "../../src/store/index.ts";
import { codeOf } from "./problems.ts";

const module = (mark: string) => ({ DatabaseSync: class {}, mark });
const from = (version: string, builtIn: unknown, packaged: () => Promise<unknown>) =>
  loadDriver({ version, builtIn: () => builtIn, packaged });
const missing = () => Promise.reject(new Error("Cannot find package\nand more"));

describe("the driver", () => {
  for (const [version, name] of [
    ["20.19.0", "@photostructure/sqlite"],
    ["22.12.0", "@photostructure/sqlite"],
    ["22.13.0", "node:sqlite"],
    ["23.0.0", "node:sqlite"],
    ["24.1.0", "node:sqlite"],
  ] as const) {
    test(`on Node ${version} is ${name}`, async () => {
      const { name: found } = await from(version, module("a"), async () => module("b"));
      expect(found).toBe(name);
    });
  }

  test("is the package where Node was built without its own", async () => {
    const found = await from("24.1.0", undefined, async () => module("b"));
    expect(found.name).toBe("@photostructure/sqlite");
  });

  test("that is nowhere is a Problem", async () => {
    expect(await codeOf(() => from("20.19.0", undefined, missing))).toBe("sqlite-missing");
    expect(await codeOf(() => from("24.1.0", undefined, async () => ({})))).toBe("sqlite-missing");
  });

  test("of the package works; Node's own too, where there is one", async () => {
    const packaged = await loadDriver({
      version: "20.19.0",
      builtIn: () => undefined,
      packaged: () => import("@photostructure/sqlite"),
    });
    for (const driver of [packaged, await loadDriver()]) {
      const db = openDatabase(driver, ":memory:");
      db.exec("CREATE TABLE t (n INTEGER, s TEXT) STRICT");
      expect(db.run("INSERT INTO t VALUES (?, ?), (?, ?)", 1, "a", 2, null)).toBe(2);
      expect(db.all("SELECT * FROM t ORDER BY n").map((row) => ({ ...(row as object) }))).toEqual([
        { n: 1, s: "a" },
        { n: 2, s: null },
      ]);
      expect(db.get("SELECT * FROM t WHERE n = 3")).toBeUndefined();
      expect(() =>
        db.transaction(() => {
          db.run("DELETE FROM t");
          throw new Error("no");
        }),
      ).toThrow("no");
      expect(db.get<{ n: number }>("SELECT count(*) AS n FROM t")?.n).toBe(2);
      db.close();
    }
  });
});
