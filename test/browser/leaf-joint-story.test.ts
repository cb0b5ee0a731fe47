import { expect, test } from "vitest";
import { startLatewood } from "../kit/browser.ts";
import { openSupper } from "./piece-page.ts";

const latewood = startLatewood();

test("a maker changes the bit, sees the joint bind and where, moves the pin till it is free, and prints the section", async () => {
  const page = await latewood.open({ width: 1440, height: 900 });
  const bench = await openSupper(page);
  const caption = () => page.locator(".leaf-section figcaption").textContent();
  const stick = () => page.getByRole("navigation", { name: "The job" }).textContent();
  const proof = async () => {
    await page.getByRole("link", { name: /Proof/ }).click();
    const first = page.locator(".proof-group li").first();
    const [words, count] = [await first.textContent(), await stick()];
    await page.getByRole("link", { name: /Shape/ }).click();
    return { words: words ?? "", count: count ?? "" };
  };
  await expect.poll(caption).toContain("Swings free");

  // The fillet is cut already; then the only bit at hand turns out larger.
  await bench.write("Leaf joint: fillet", "3.2 mm");
  await bench.write("Leaf joint: radius of the round-over", "14 mm");
  await bench.write("Leaf joint: radius of the cove", "14 mm");
  await expect.poll(caption).toMatch(/Binds \d+° down, at the foot of the round-over\./);
  expect(await page.locator(".leaf-binds").count()).toBe(1);
  const bound = await proof();
  expect(bound.words).toMatch(/Stops.*binds \d+° down/s);
  expect(bound.count).toContain("1 stops");

  // Turned there in the section, by its button.
  await page.getByRole("button", { name: "Turn it there" }).click();
  const turn = page.getByLabel("Turn the leaf", { exact: true });
  expect(await turn.getAttribute("aria-valuetext")).toMatch(/^\d+° down$/);

  // The green line lies lower than the pin: so the hinge is let in less deep.
  await bench.write("Leaf joint: pin over the underside", "1.8 mm");
  await expect.poll(caption).toContain("Swings free");
  const free = await proof();
  expect(free.count).not.toContain("stops");
  await bench.kept();

  // On paper: the sheet of the section is there, and its PDF has one page.
  await page.getByRole("link", { name: /Papers/ }).click();
  await page
    .getByText(/Joint of the leaves in section/)
    .first()
    .waitFor();
  const address = new URL(page.url());
  const id = /#\/piece\/([^/]+)\//.exec(address.hash)?.[1];
  const pdf = await page.request.get(
    new URL(`/api/pieces/${id}/papers.pdf?paper=letter&sheets=leaf-joint`, address.origin).href,
  );
  expect(pdf.status()).toBe(200);
  const bytes = await pdf.body();
  expect(bytes.subarray(0, 5).toString()).toBe("%PDF-");
  expect(bytes.toString("latin1").match(/\/Type \/Page\b/g)?.length).toBe(1);
});
