import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { existsSync } from "node:fs";
import { setTimeout as pause } from "node:timers/promises";
import { drainedOrClosed } from "./drainedOrClosed.ts";
import type { Output, Received } from "./Output.ts";

/**
 * The gauge on a pseudo-terminal, which a program opens like a serial port. `socat` makes it: it shows `path` and
 * waits until somebody opens it, so that nobody is met by old readings; when they close it, it is made anew.
 * @throws Error  socat is not installed, or the path cannot be made
 */
export async function ptyOutput(path: string, received: Received): Promise<Output> {
  let child: ChildProcess | undefined;
  let taken = false;
  let plugged = false;

  const start = async () => {
    taken = false;
    const made = spawn("socat", ["-d", "-d", `pty,raw,echo=0,link=${path},wait-slave,pty-interval=0.02`, "-"], {
      stdio: "pipe",
    });
    child = made;
    made.stdin.on("error", () => {}); // its end is told by 'exit'
    made.stdout.on("data", received);
    const shown = new Promise<void>((resolve, reject) => {
      made.once("error", (cause) => reject(new Error(`a pseudo-terminal needs socat: ${cause.message}`)));
      made.stderr.on("data", (text: Buffer) => {
        if (text.includes("PTY is")) whenThere(path).then(resolve); // it names the terminal before it makes the link
        if (text.includes("starting data transfer loop") && child === made) taken = true;
      });
      made.once("exit", () => {
        reject(new Error(`socat made no pseudo-terminal at ${path}`));
        if (child !== made) return;
        taken = false;
        if (plugged) start().catch(() => {}); // the first start has worked: only an end of the machine's own stops it
      });
    });
    await shown;
  };
  const stop = async () => {
    plugged = false;
    const made = child;
    child = undefined;
    taken = false;
    if (made === undefined || made.exitCode !== null || made.signalCode !== null) return;
    made.kill("SIGTERM");
    await once(made, "exit");
  };

  await start();
  plugged = true;
  return {
    address: { kind: "pty", path },
    get taken() {
      return taken;
    },
    send: (bytes) => !taken || child === undefined || child.stdin!.write(bytes),
    async drained() {
      const pipe = child?.stdin;
      if (pipe?.writableNeedDrain) await drainedOrClosed(pipe);
    },
    unplug: stop,
    async plug() {
      if (plugged) return;
      await start();
      plugged = true;
    },
    close: stop,
  };
}

/** Waits for a path that another program is about to make; not for ever: an open that fails then says why. */
async function whenThere(path: string): Promise<void> {
  for (let tries = 0; tries < 200 && !existsSync(path); tries += 1) await pause(5);
}
