import { OrthographicCamera, WebGLRenderer } from "three";
import { aim } from "./camera.ts";
import { listenTo } from "./gestures.ts";
import { pressed, stepped } from "./keys.ts";
import { partAt } from "./picking.ts";
import { createPieceScene, type Shown } from "./scene.ts";
import { createTags } from "./tags.ts";
import { tonesAt } from "./tones.ts";
import { nearer, type Size, type Spot, slid, turned, type Way, ways } from "./view.ts";
import { createWatch } from "./watch.ts";

/** A picture of a piece, drawn anew only when something about it has changed. */
export type Picture = {
  readonly canvas: HTMLCanvasElement;
  readonly show: (shown: Shown) => void;
  readonly lift: (lifted: ReadonlySet<string>, chosen: string | undefined) => void;
  /** Colours are read anew from the page's tokens. */
  readonly repaint: () => void;
  readonly lookFrom: (way: Way) => void;
  readonly fit: () => void;
  readonly dispose: () => void;
};

type Told = {
  readonly choose: (key: string | undefined) => void;
  readonly hover: (key: string | undefined) => void;
  /** on to the next state, or back */
  readonly step: (by: 1 | -1) => void;
};

/** Turn of the piece under a hand that moves by a pixel [°]. */
const DEG_PER_PX = 0.4;
/** Finer screens are drawn at this many pixels to the page's one, and no more. */
const FINEST = 2;

/** A picture within the host element; undefined when the browser cannot draw one. */
export function createPicture(host: HTMLElement, told: Told): Picture | undefined {
  const canvas = document.createElement("canvas");
  const context = canvas.getContext("webgl2", { antialias: true, alpha: true });
  if (!context) return undefined;
  host.append(canvas);
  const renderer = new WebGLRenderer({ canvas, context, antialias: true, alpha: true });
  const camera = new OrthographicCamera();
  const piece = createPieceScene();
  const tags = createTags(host);
  const watch = createWatch(() => ask());
  let size: Size = { width: 0, height: 0 };
  let lifted: ReadonlySet<string> = new Set();
  let chosen: string | undefined;
  let isStale = true;
  let hovered: string | undefined;
  let asked = 0;
  let frames = 0;
  canvas.dataset.frames = "0";

  const ask = () => {
    if (asked === 0) asked = requestAnimationFrame(draw);
  };
  const draw = () => {
    asked = 0;
    if (!(size.width > 0 && size.height > 0) || context.isContextLost()) return;
    // Read in the frame, not when told: by then the page has put its theme on.
    if (isStale) piece.paint(tonesAt(host), size, renderer.getPixelRatio());
    isStale = false;
    const view = watch.view();
    aim(camera, view, size, watch.points());
    piece.sink(view.mmPerPx, renderer.getPixelRatio());
    renderer.render(piece.scene, camera);
    tags.place(view, size, partUnder);
    frames += 1;
    canvas.dataset.frames = String(frames);
    canvas.dataset.parts = String(piece.standing().length);
  };
  const rewrite = () => {
    const all = chosen === undefined ? lifted : new Set([...lifted, chosen]);
    piece.lift(all);
    tags.write(piece.standing(), all, chosen);
    ask();
  };
  const partUnder = (at: Spot) => partAt(at, size, camera, piece.standing());
  const point = (at: Spot | undefined) => {
    const key = at && partUnder(at);
    if (key === hovered) return;
    hovered = key;
    told.hover(key);
  };

  const fromMiddle = (at: Spot): Spot => ({ x: at.x - size.width / 2, y: size.height / 2 - at.y });
  const deafen = listenTo(canvas, {
    turn: (by) => watch.move((v) => turned(v, -by.x * DEG_PER_PX, by.y * DEG_PER_PX)),
    slide: (by) => watch.move((v) => slid(v, { x: by.x, y: -by.y })),
    zoom: (factor, at) => watch.move((v) => nearer(v, factor, fromMiddle(at))),
    tap: (at) => told.choose(partUnder(at)),
    point,
  });
  const onKey = (event: KeyboardEvent) => {
    const next = pressed(watch.view(), event);
    if (event.key === "Escape") told.choose(undefined);
    const by = stepped(event);
    if (by !== undefined) told.step(by);
    if (next === undefined) return;
    event.preventDefault();
    if (next === "fit") watch.fitAll();
    else watch.move(() => next);
  };
  canvas.addEventListener("keydown", onKey);
  canvas.addEventListener("webglcontextrestored", ask);

  const resizes = new ResizeObserver(() => {
    const next = { width: host.clientWidth, height: host.clientHeight };
    renderer.setPixelRatio(Math.min(FINEST, window.devicePixelRatio));
    renderer.setSize(next.width, next.height, false);
    isStale = true;
    size = next;
    watch.resize(next);
    // Now, or the picture would stand empty until the next frame.
    cancelAnimationFrame(asked);
    draw();
  });
  resizes.observe(host);

  return {
    canvas,
    show: (shown) => {
      piece.show(shown);
      watch.look(piece.corners());
      rewrite();
    },
    lift: (keys, key) => {
      lifted = keys;
      chosen = key;
      rewrite();
    },
    repaint: () => {
      isStale = true;
      ask();
    },
    lookFrom: (way) => {
      watch.move((v) => ({ ...v, ...ways[way] }));
      watch.fitAll();
    },
    fit: watch.fitAll,
    dispose: () => {
      cancelAnimationFrame(asked);
      resizes.disconnect();
      deafen();
      canvas.removeEventListener("keydown", onKey);
      canvas.removeEventListener("webglcontextrestored", ask);
      tags.dispose();
      piece.dispose();
      renderer.dispose();
      // Browsers grant a page few contexts, and take back slowly what is only dropped.
      renderer.forceContextLoss();
      canvas.remove();
    },
  };
}
