import type { Io } from "./io.ts";
import { run } from "./run.ts";

const { stdin, stdout, stderr } = process;

const io: Io = {
  out: (text) => void stdout.write(text),
  err: (text) => void stderr.write(text),
  drained: () =>
    stdout.writableNeedDrain
      ? new Promise((settle) => stdout.once("drain", settle))
      : Promise.resolve(),
};

stdout.on("error", (fault: NodeJS.ErrnoException) => {
  // A reader that stops early (head, a pager) closes the pipe; that is its right, not a fault.
  if (fault.code === "EPIPE") process.exit(0);
  io.err(
    `standard output: It could not be written (${fault.message}).\n  Send it where there is room.\n`,
  );
  process.exit(2);
});
// With nobody left to complain to, the exit code must do.
stderr.on("error", () => {});

try {
  process.exitCode = await run(process.argv.slice(2), io, stdin);
} catch (fault) {
  io.err(
    `This is a fault in Latewood, not in what you wrote.\n${fault instanceof Error ? fault.stack : fault}\n`,
  );
  process.exitCode = 3;
}
