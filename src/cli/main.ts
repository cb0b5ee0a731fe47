import { run } from "./run.ts";

const io = {
  out: (text: string) => void process.stdout.write(text),
  err: (text: string) => void process.stderr.write(text),
};

// A reader that stops early (head, a pager) closes the pipe; that is its right, not a fault.
process.stdout.on("error", (fault: NodeJS.ErrnoException) => {
  process.exit(fault.code === "EPIPE" ? 0 : 3);
});

try {
  process.exitCode = await run(process.argv.slice(2), io, process.stdin);
} catch (fault) {
  io.err(
    `This is a fault in Latewood, not in what you wrote.\n${fault instanceof Error ? fault.stack : fault}\n`,
  );
  process.exitCode = 3;
}
