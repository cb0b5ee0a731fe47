export { api, type Kept, type Listed } from "./client.ts";
export { isPassing, patiently, RETRY_MS, Refused, type Said, saidBy } from "./refused.ts";
