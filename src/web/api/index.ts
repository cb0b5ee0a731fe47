export { api, type Kept, type Listed, Refused, type Said } from "./client.ts";
