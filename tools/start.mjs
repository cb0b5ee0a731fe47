// `npm start`: install what is missing, build what is stale, serve, open the browser.
import { spawn } from "node:child_process";
import { join } from "node:path";
import { build } from "./build.mjs";
import { ensure, root, runMain } from "./ensure.mjs";

function serve(args) {
  return new Promise((settle, fail) => {
    const program = join(root, "dist", "latewood.mjs");
    const child = spawn(process.execPath, [program, "serve", "--open", ...args], {
      stdio: "inherit",
    });
    let asked = false;
    // A terminal sends Ctrl+C to both of us; this side must outlive the server to pass on its end.
    for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"]) {
      process.on(signal, () => {
        asked = true;
        child.kill(signal);
      });
    }
    child.on("error", fail);
    child.on("exit", (code) => settle(code === null ? (asked ? 0 : 1) : code));
  });
}

await runMain(async () => {
  await ensure();
  await build();
  return serve(process.argv.slice(2));
});
