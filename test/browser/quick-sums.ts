import type { Locator, Page } from "playwright-core";

/** The quick sums page, told in what a maker does there. */
export type QuickSums = {
  readonly page: Page;
  readonly turnTo: (title: string) => Promise<void>;
  readonly write: (label: string, text: string) => Promise<void>;
  readonly field: (label: string) => Locator;
  /** the first figure of the answer, as it is set on the sheet */
  readonly figure: () => Promise<string | null>;
  readonly working: () => Promise<string | null>;
  readonly changeSide: (to: "inch" | "mm") => Promise<void>;
};

export function quickSums(page: Page): QuickSums {
  const field = (label: string) => page.getByLabel(label, { exact: true });
  return {
    page,
    field,
    turnTo: async (title) => {
      await page.getByRole("link", { name: title }).click();
      await page.getByRole("heading", { level: 1, name: title }).waitFor();
    },
    write: (label, text) => field(label).fill(text),
    figure: () => page.locator(".results strong").first().textContent(),
    working: () => page.getByRole("region", { name: /^Working/ }).textContent(),
    changeSide: (to) => page.getByRole("button", { name: to, exact: true }).click(),
  };
}
