import { spawn } from "node:child_process";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { programRoot } from "../programRoot.ts";

/** Where the generator lies in a checkout. */
const generator = join(programRoot, "simulator", "works", "main.ts");

/**
 * The records of the invented works, as the simulator's generator prints them: main and simulator meet as programs only.
 * @throws Error  the generator ended with a fault
 */
export async function* demoRecords(endMs: number, seed: number): AsyncGenerator<unknown> {
  const args = [generator, "--end", new Date(endMs).toISOString(), "--seed", String(seed)];
  const child = spawn(process.execPath, args, {
    stdio: ["ignore", "pipe", "inherit"],
    env: { ...process.env, ELECTRON_RUN_AS_NODE: "1", NODE_NO_WARNINGS: "1" },
  });
  const ended = new Promise<number>((done, fail) => {
    child.once("error", fail);
    child.once("exit", (code) => done(code ?? 1));
  });
  for await (const line of createInterface({ input: child.stdout })) yield JSON.parse(line) as unknown;
  const code = await ended;
  if (code !== 0) throw new Error(`the generator of the demo works ended with ${code}`);
}
