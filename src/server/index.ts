export { NoFreePort } from "./listen.ts";
export { openCommand, openInBrowser } from "./open-in-browser.ts";
export {
  defaultPort,
  type RunningServer,
  startServer,
} from "./start.ts";
