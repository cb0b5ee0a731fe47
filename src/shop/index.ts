export { readShop, shopAsks } from "./read-shop.ts";
export { demoShop, type Shop } from "./shop.ts";
