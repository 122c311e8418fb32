import { join } from "node:path";
import { startLoopback } from "../host/loopback/server.ts";
import { openBrowser } from "../host/openBrowser.ts";
import { openProgram } from "../program.ts";
import { programRoot } from "../programRoot.ts";
import { StoreError } from "../store/StoreError.ts";
import { type Command, type CommandIo, UsageError } from "./Command.ts";
import { parseOptions } from "./parseOptions.ts";

const options = {
  demo: { type: "boolean" },
  data: { type: "string" },
  port: { type: "string" },
  open: { type: "boolean" },
} as const;

/** Serves the program to browsers of this machine until it is told to end. */
export const command: Command = {
  usage: "[--demo] [--data FILE] [--port N] [--open]   the program for a browser on this machine",
  async run(args, io) {
    const { values } = parseOptions(args, options);
    const port = values.port === undefined ? undefined : portNumber(values.port);
    const program = await open(values.demo === true, values.data);
    const host = await startLoopback({
      core: program.core,
      pageFolder: join(programRoot, "out", "renderer"),
      rememberIn: join(program.folder, values.demo === true ? "loopback-demo.json" : "loopback.json"),
      port,
      now: Date.now,
      log: program.log,
    }).catch(async (cause: NodeJS.ErrnoException) => {
      await program.close();
      if (cause.code === "EADDRINUSE")
        throw new UsageError(`port ${port} is taken by another program; leave --port out, or name another`);
      throw cause;
    });
    await sayWhere(host.address(), values.open === true, io);
    const anew = () => io.out(`${host.address()}\n`);
    io.stdin.on("data", anew);
    await untilAborted(io.signal);
    io.stdin.off("data", anew);
    io.stdin.pause();
    await host.close();
    await program.close();
    return 0;
  },
};

function portNumber(text: string): number {
  const port = Number(text);
  if (!/^\d+$/.test(text) || port > 65_535)
    throw new UsageError(`--port ${text}: a port is a whole number up to 65535`);
  return port;
}

async function open(demo: boolean, data: string | undefined) {
  try {
    return await openProgram({ demo, host: "loopback", dataFile: data });
  } catch (cause) {
    if (cause instanceof StoreError) throw new UsageError(cause.message);
    throw cause;
  }
}

async function sayWhere(address: string, wanted: boolean, io: CommandIo): Promise<void> {
  const opened = wanted && (await openBrowser(address, process.platform, io.env));
  io.out(
    opened
      ? `Open in your browser. If no page came up, use this address within a minute:\n${address}\n`
      : `Open this address within a minute (it works once):\n${address}\n`,
  );
  io.out("Press Enter for a fresh address, Ctrl-C to end.\n");
}

const untilAborted = (signal: AbortSignal) =>
  new Promise<void>((done) => {
    if (signal.aborted) done();
    signal.addEventListener("abort", () => done(), { once: true });
  });
