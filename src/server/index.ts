export { NoFreePort } from "./listen.ts";
export { openCommand, openInBrowser } from "./open-in-browser.ts";
export {
  defaultPort,
  type RunningServer,
  type ServerOptions,
  startServer,
} from "./start.ts";
