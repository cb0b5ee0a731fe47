import type { Locator, Page } from "playwright-core";

/** A piece on the bench, told in what a maker does there. */
export type PiecePage = {
  readonly page: Page;
  readonly field: (label: string) => Locator;
  readonly write: (label: string, text: string) => Promise<void>;
  /** the piece's overall size, as the title strip says it */
  readonly overAll: () => Promise<string>;
  /** waits until what is seen is kept */
  readonly kept: () => Promise<void>;
  readonly press: (button: string | RegExp) => Promise<void>;
  /** frames the model has drawn so far */
  readonly frames: () => Promise<number>;
  /** marks of the parts that are lifted in the cut list */
  readonly liftedRows: () => Promise<readonly string[]>;
};

const said = (page: Page, term: string) =>
  page.locator(".title-strip div", { hasText: term }).locator("dd").textContent();

export function piecePage(page: Page): PiecePage {
  const field = (label: string) => page.getByLabel(label, { exact: true });
  return {
    page,
    field,
    write: async (label, text) => {
      await field(label).fill(text);
      await field(label).press("Enter");
    },
    overAll: async () => (await said(page, "Over all")) ?? "",
    kept: async () => {
      await page
        .locator(".head-where", { hasText: /every edit kept, / })
        .waitFor({ state: "attached" });
    },
    press: (button) => page.getByRole("button", { name: button, exact: true }).click(),
    frames: async () => Number(await page.locator("canvas").getAttribute("data-frames")),
    liftedRows: async () =>
      page.locator('.cut-list tr[data-lifted="true"] .mark-button').allTextContents(),
  };
}

/** Opens the invented breakfast table from the list of pieces. */
export async function openDemo(page: Page): Promise<PiecePage> {
  await page
    .getByRole("link", { name: /Tallow Wharf breakfast table/ })
    .first()
    .click();
  return drawn(page);
}

/** Opens the invented drop-leaf table from the list of pieces, and waits until all of it is drawn. */
export async function openSupper(page: Page): Promise<PiecePage> {
  await page
    .getByRole("link", { name: /Quill Lane supper table/ })
    .first()
    .click();
  const bench = await drawn(page, "Drop-leaf table");
  // As many as the stick says there are: shapes come one after the other.
  await page.waitForFunction(() => {
    const said = /(\d+) parts/.exec(document.querySelector(".stick")?.textContent ?? "")?.[1];
    return said !== undefined && said === document.querySelector("canvas")?.dataset.parts;
  });
  return bench;
}

/** Waits until the model stands on its sheet. */
export async function drawn(page: Page, title = "Plain table"): Promise<PiecePage> {
  await page.getByRole("heading", { level: 1, name: title }).waitFor();
  await page.locator("canvas[data-frames]").waitFor();
  await page.waitForFunction(
    () => Number(document.querySelector("canvas")?.getAttribute("data-parts")) > 0,
  );
  return piecePage(page);
}
