import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { root } from "./run.ts";

/** Format and lint, then the types of every folder. All are run, so that one look shows all that is wrong. */
const bin = (name: string) => join(root, "node_modules", ".bin", process.platform === "win32" ? `${name}.cmd` : name);
const steps: readonly (readonly [string, readonly string[]])[] = [
  ["biome", ["check", "--error-on-warnings", "."]],
  ...["app", "main", "renderer", "simulator", "test", "scripts", "."].map((folder) => ["tsc", ["-p", folder]] as const),
];

let failed = 0;
for (const [tool, args] of steps) {
  const done = spawnSync(bin(tool), args, { cwd: root, stdio: "inherit", shell: process.platform === "win32" });
  process.stdout.write(`${done.status === 0 ? "ok  " : "FAIL"} ${tool} ${args.join(" ")}\n`);
  if (done.status !== 0) failed += 1;
}
process.exitCode = failed === 0 ? 0 : 1;
