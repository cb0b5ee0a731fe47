import {
  Color,
  DataTexture,
  LinearFilter,
  Mesh,
  PlaneGeometry,
  RedFormat,
  ShaderMaterial,
  UnsignedByteType,
} from "three";
import { type Footprint, shadowUnder } from "./shadow.ts";
import type { Tones } from "./tones.ts";

const vertexShader = /* glsl */ `
varying vec2 vAt;
void main() {
  vAt = uv;
  gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
}
`;
const fragmentShader = /* glsl */ `
uniform sampler2D uShadow;
uniform vec3 uColor;
uniform float uShade;
varying vec2 vAt;
void main() {
  gl_FragColor = vec4(uColor, uShade * texture2D(uShadow, vAt).r);
  #include <colorspace_fragment>
}
`;

/** A soft shadow painted on the floor; there is no floor else, and none seen from below. */
export type Ground = {
  readonly mesh: Mesh;
  readonly shade: (prints: readonly Footprint[]) => void;
  readonly paint: (tones: Tones) => void;
  readonly dispose: () => void;
};

export function createGround(): Ground {
  const uniforms = {
    uShadow: { value: null as DataTexture | null },
    uColor: { value: new Color() },
    uShade: { value: 0 },
  };
  const material = new ShaderMaterial({
    vertexShader,
    fragmentShader,
    uniforms,
    transparent: true,
    depthWrite: false,
  });
  const geometry = new PlaneGeometry(1, 1);
  const mesh = new Mesh(geometry, material);
  return {
    mesh,
    shade: (prints) => {
      uniforms.uShadow.value?.dispose();
      const shadow = shadowUnder(prints);
      mesh.visible = shadow !== undefined;
      if (!shadow) return;
      const { cells, columns, rows, x, y } = shadow;
      const texture = new DataTexture(cells, columns, rows, RedFormat, UnsignedByteType);
      texture.unpackAlignment = 1;
      texture.minFilter = LinearFilter;
      texture.magFilter = LinearFilter;
      texture.needsUpdate = true;
      uniforms.uShadow.value = texture;
      mesh.position.set((x[0] + x[1]) / 2, (y[0] + y[1]) / 2, 0);
      mesh.scale.set(x[1] - x[0], y[1] - y[0], 1);
    },
    paint: ({ shadow, shade }) => {
      uniforms.uColor.value.copy(shadow);
      uniforms.uShade.value = shade;
    },
    dispose: () => {
      uniforms.uShadow.value?.dispose();
      material.dispose();
      geometry.dispose();
    },
  };
}
