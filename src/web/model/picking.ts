import { type OrthographicCamera, Raycaster, Vector2 } from "three";
import type { Standing } from "./standing.ts";
import type { Size, Spot } from "./view.ts";

/** The key of the part that is seen at a place of the picture, counted from its upper left corner. */
export function partAt(
  spot: Spot,
  size: Size,
  camera: OrthographicCamera,
  standing: readonly Standing[],
): string | undefined {
  const ray = new Raycaster();
  ray.setFromCamera(
    new Vector2((2 * spot.x) / size.width - 1, 1 - (2 * spot.y) / size.height),
    camera,
  );
  const [first] = ray.intersectObjects(
    standing.map(({ faces }) => faces),
    false,
  );
  return standing.find(({ faces }) => faces === first?.object)?.part.key;
}
