import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { describe } from "vitest";

/** Two pseudo-terminals joined back to back: what goes into one comes out of the other. */
export type PtyPair = {
  readonly a: string;
  readonly b: string;
  /** Takes both away, as a pulled plug does. */
  close(): Promise<void>;
};

/** Whether `socat`, which makes the pseudo-terminals, is on this machine. */
export const hasSocat = spawnSync("socat", ["-V"]).status === 0;

/** Tests on a real pseudo-terminal. Without socat they are skipped loudly, or fail with HOLDFAST_REQUIRE_SOCAT=1. */
export function describeWithPty(name: string, body: () => void): void {
  if (hasSocat || process.env.HOLDFAST_REQUIRE_SOCAT === "1") {
    describe(name, body);
    return;
  }
  console.warn(`SKIPPED: "${name}", because socat is not installed (Debian: apt-get install socat)`);
  describe.skip(name, body);
}

/** @throws Error  socat is missing or made no pseudo-terminals within 5 s */
export async function ptyPair(): Promise<PtyPair> {
  const child = spawn("socat", ["-d", "-d", "pty,raw,echo=0", "pty,raw,echo=0"], {
    stdio: ["ignore", "ignore", "pipe"],
  });
  const [a, b] = await twoNames(child);
  return { a, b, close: () => ended(child) };
}

function twoNames(child: ChildProcess): Promise<[string, string]> {
  return new Promise((resolve, reject) => {
    let said = "";
    const timer = setTimeout(() => reject(new Error(`socat made no pseudo-terminals: ${said}`)), 5_000);
    child.once("error", (cause) => reject(new Error(`socat cannot be started: ${cause.message}`)));
    child.stderr!.on("data", (text) => {
      said += text;
      const names = [...said.matchAll(/PTY is (\S+)/g)].map((m) => m[1]!);
      // It says so before it serves them.
      if (names.length < 2 || !said.includes("starting data transfer loop")) return;
      clearTimeout(timer);
      resolve([names[0]!, names[1]!]);
    });
  });
}

function ended(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return Promise.resolve();
  return new Promise((resolve) => {
    child.once("exit", () => resolve());
    child.kill("SIGKILL");
  });
}
