import { Matrix4, type OrthographicCamera, Vector3 } from "three";
import { axesOf, type Place, type Size, type View } from "./view.ts";

/** Sets the camera to a view, far enough off and deep enough for all the points [mm]. */
export function aim(
  camera: OrthographicCamera,
  view: View,
  size: Size,
  points: readonly Place[],
): void {
  const { right, up, out } = axesOf(view);
  const target = new Vector3(...view.target);
  const reach = Math.max(100, ...points.map((point) => target.distanceTo(new Vector3(...point))));
  const [across, upward] = [(size.width * view.mmPerPx) / 2, (size.height * view.mmPerPx) / 2];
  camera.left = -across;
  camera.right = across;
  camera.top = upward;
  camera.bottom = -upward;
  camera.near = 0;
  camera.far = 4 * reach;
  camera.position.copy(target).addScaledVector(new Vector3(...out), 2 * reach);
  camera.quaternion.setFromRotationMatrix(
    new Matrix4().makeBasis(new Vector3(...right), new Vector3(...up), new Vector3(...out)),
  );
  camera.updateProjectionMatrix();
  camera.updateMatrixWorld();
}
