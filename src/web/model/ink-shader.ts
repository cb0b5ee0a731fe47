/**
 * Edges as strips of the screen, as wide at any distance. Each instance is one edge; the strip's
 * `position` counts across it from -1 to 1, and along it 0 at its start, 1 at its end, beyond
 * both for the round caps. Parallel rays only. Strokes shorter than a pixel grow faint: or the
 * rims of small holes, seen from afar, would be blots, and some show through thin wood.
 */
export const vertexShader = /* glsl */ `
attribute vec3 instanceStart;
attribute vec3 instanceEnd;
uniform vec2 uHalf;
uniform float uReach;
uniform float uPixel;
varying float vAcross;
varying float vAlong;
varying float vLength;
varying float vInk;

void main() {
  mat4 seen = projectionMatrix * modelViewMatrix;
  vec4 start = seen * vec4(instanceStart, 1.0);
  vec4 end = seen * vec4(instanceEnd, 1.0);
  vec2 way = (end.xy - start.xy) * uHalf;
  vLength = length(way);
  // Squared, for many short strokes lie over one another.
  float share = min(1.0, vLength / uPixel);
  vInk = share * share;
  way = vLength > 1e-3 ? way / vLength : vec2(1.0, 0.0);
  // Half a pixel more than the pen, for its soft edge.
  float reach = uReach + 0.5;
  bool isEnd = position.y > 0.5;
  float beyond = position.y < 0.0 ? -reach : position.y > 1.0 ? reach : 0.0;
  vAcross = position.x * reach;
  vAlong = (isEnd ? vLength : 0.0) + beyond;
  vec4 at = isEnd ? end : start;
  at.xy += (vec2(way.y, -way.x) * vAcross + way * beyond) / uHalf;
  gl_Position = at;
}
`;

/** How much of the pixel the pen covers; many samples of a thin line still make steps. */
export const fragmentShader = /* glsl */ `
uniform vec3 uColor;
uniform float uReach;
uniform vec2 uDash;
varying float vAcross;
varying float vAlong;
varying float vLength;
varying float vInk;

void main() {
  float past = max(0.0, max(-vAlong, vAlong - vLength));
  float cover = clamp(uReach + 0.5 - length(vec2(vAcross, past)), 0.0, 1.0);
  if (uDash.y > 0.0) {
    float at = mod(vAlong, uDash.x + uDash.y);
    cover *= clamp(min(at, uDash.x - at) + 0.5, 0.0, 1.0);
  }
  gl_FragColor = vec4(uColor, cover * vInk);
  #include <colorspace_fragment>
}
`;
