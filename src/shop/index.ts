export { demoShop } from "./demo-shop.ts";
export type { JointCutters, LeafHinge } from "./leaf-hardware.ts";
export { readShop, shopAsks } from "./read-shop.ts";
export type { Shop } from "./shop.ts";
