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
  /** whether the answer on the sheet is the last that worked, not that of the texts */
  readonly isOld: () => Promise<boolean>;
  /** what stops the sum, as said beside the answer; empty while nothing is said */
  readonly complaint: () => Promise<string>;
  /** where the drawing, the figures and the fields lie */
  readonly layout: () => Promise<string>;
  readonly press: (button: string) => Promise<void>;
  /** what a screen reader was told last */
  readonly spoken: () => Promise<string | null>;
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
    isOld: async () => (await page.locator("#answer").getAttribute("data-stale")) === "true",
    complaint: async () => (await page.locator(".complaints").allTextContents()).join(" "),
    layout: () =>
      page.locator(".drawing, .results, .working, .field").evaluateAll((parts) =>
        parts
          .map((part) => part.getBoundingClientRect())
          .map(({ x, y, width, height }) => [x, y, width, height].map(Math.round).join(" "))
          .join("; "),
      ),
    press: (button) => page.getByRole("button", { name: button, exact: true }).click(),
    spoken: () => page.getByRole("status").textContent(),
  };
}

/** The texts of the page's drawing that reach over the edge of their plate. */
export const textsOffPlate = (page: Page): Promise<readonly string[]> =>
  page.locator(".plate").evaluate((plate) => {
    const edge = plate.getBoundingClientRect();
    return [...plate.querySelectorAll("text")]
      .filter((text) => {
        const { left, right, top, bottom } = text.getBoundingClientRect();
        const isIn =
          left >= edge.left - 0.5 &&
          right <= edge.right + 0.5 &&
          top >= edge.top - 0.5 &&
          bottom <= edge.bottom + 0.5;
        return !isIn;
      })
      .map((text) => text.textContent ?? "");
  });
