/** Hands on the place and the face's direction in the part, where rings are told, and in the piece. */
export const vertexShader = /* glsl */ `
varying vec3 vAt;
varying vec3 vFace;
varying vec3 vWay;

void main() {
  vAt = position;
  vFace = normal;
  vWay = mat3(modelMatrix) * normal;
  gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
}
`;

/**
 * Flat tones by direction, and growth rings as the cylinders round each strip's pith that they are:
 * arcs where they meet end grain, straight lines along the grain on the faces, hardly seen there.
 * When rings crowd, every second is left out, and then again, so that their curve can still be
 * read; when even those crowd, none is drawn.
 */
export const fragmentShader = /* glsl */ `
uniform vec3 uWood;
uniform vec3 uWood2;
uniform vec3 uWood3;
uniform vec3 uRing;
uniform vec3 uWash;
uniform float uPixel;
uniform sampler2D uStrips;
uniform int uCount;
uniform float uTurned;
uniform float uLift;
varying vec3 vAt;
varying vec3 vFace;
varying vec3 vWay;

// Lines stand at least so far apart [px], and rings are left out in halves at most so often.
const float APART = 4.0;
const float HALVINGS = 2.5;

// Rings counted outwards: some 3.4 mm each, in slow waves of fat and lean years.
float years(float r) {
  return r / 3.4 + 0.16 * sin(r * 0.29) + 0.08 * sin(r * 0.77 + 1.3);
}
float yearsPerMm(float r) {
  return 1.0 / 3.4 + 0.0464 * cos(r * 0.29) + 0.0616 * cos(r * 0.77 + 1.3);
}

// How much of a line one pixel wide covers here, where u changes by du over a pixel of the screen.
float line(float u, float du) {
  float d = abs(fract(u + 0.5) - 0.5) / max(du, 1e-6);
  return 1.0 - smoothstep(0.5 * uPixel - 0.5, 0.5 * uPixel + 0.5, d);
}

float ringLines(float t, float dt) {
  float halvings = max(0.0, log2(dt * APART * uPixel));
  float whole = floor(halvings);
  float nth = exp2(whole);
  float all = line(t / nth, dt / nth) * (1.0 - (halvings - whole));
  float second = line(t / (2.0 * nth), dt / (2.0 * nth));
  return max(all, second) * (1.0 - smoothstep(HALVINGS - 0.5, HALVINGS + 0.5, halvings));
}

void main() {
  vec3 share = vWay * vWay;
  vec3 up = vWay.z > 0.0 ? uWood : uWood3 * 0.9;
  vec3 tone = share.z * up + share.y * uWood2 + share.x * uWood3;
  tone = mix(tone, uWash, uLift * 0.36);

  vec2 at = vec2(uTurned > 0.0 ? uTurned - vAt.y : vAt.y, vAt.z);
  vec2 atX = dFdx(at);
  vec2 atY = dFdy(at);
  vec4 strip = texelFetch(uStrips, ivec2(0), 0);
  float glue = 0.0;
  float across = max(length(vec2(atX.x, atY.x)), 1e-6);
  for (int i = 1; i < uCount; i++) {
    vec4 next = texelFetch(uStrips, ivec2(i, 0), 0);
    float d = abs(at.x - next.x) / across;
    glue = max(glue, 1.0 - smoothstep(0.5 * uPixel - 0.5, 0.5 * uPixel + 0.5, d));
    if (at.x >= next.x) strip = next;
  }

  vec2 fromPith = at - strip.yz;
  float r = length(fromPith);
  vec2 outwards = fromPith / max(r, 1e-3);
  float dr = length(vec2(dot(atX, outwards), dot(atY, outwards)));
  float t = years(r);
  float dt = yearsPerMm(r) * dr;
  float isEnd = smoothstep(0.3, 0.65, abs(vFace.x));

  // Latewood darkens towards its ring's edge; only seen when the eye is near.
  float near = 1.0 - smoothstep(0.02, 0.1, dt / uPixel);
  float late = isEnd * near * smoothstep(0.35, 1.0, fract(t));
  tone = mix(tone, uRing, 0.06 * isEnd + 0.16 * late);
  tone = mix(tone, uRing, ringLines(t, dt) * mix(0.13, 0.72, isEnd));
  tone = mix(tone, uRing, glue * 0.8);
  gl_FragColor = vec4(tone, 1.0);
  #include <colorspace_fragment>
}
`;
