import { spawn } from "node:child_process";
import { join } from "node:path";

export const root = join(import.meta.dirname, "..");

/** Runs a package's program under this Node and answers its exit code; its output goes to ours unless it is kept. */
export function run(script: string, args: readonly string[]): Promise<number> {
  return new Promise((done, fail) => {
    const child = spawn(process.execPath, [join(root, script), ...args], { cwd: root, stdio: "inherit" });
    child.on("error", fail);
    child.on("exit", (code) => done(code ?? 1));
  });
}
