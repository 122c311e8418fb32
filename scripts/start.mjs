// The one way in: `node scripts/start.mjs TASK …`. Plain JavaScript, runs under Node 20 and newer.
import { spawn } from "node:child_process";
import { join } from "node:path";
import { install, isInstalled, modernNode, root } from "./install.mjs";

/** Task -> the program Node 24 runs for it, and its first arguments. */
const tasks = {
  start: ["scripts/launch.ts"],
  demo: ["scripts/launch.ts", "--demo"],
  cli: ["main/cli/main.ts"],
  test: ["scripts/test.ts"],
  check: ["scripts/check.ts"],
  bench: ["test/bench/main.ts"],
  soak: ["test/soak/main.ts"],
  pictures: ["scripts/pictures.ts"],
  build: ["scripts/build.ts"],
};

const [task, ...rest] = process.argv.slice(2);
const program = Object.hasOwn(tasks, task ?? "") ? tasks[task] : undefined;
if (program === undefined) {
  process.stderr.write(`Holdfast: there is no task ${task}; there are ${Object.keys(tasks).join(", ")}\n`);
  process.exit(2);
}

if (!isInstalled()) install();

const child = spawn(modernNode(), [join(root, program[0]), ...program.slice(1), ...rest], {
  stdio: "inherit",
  env: { ...process.env, NODE_NO_WARNINGS: "1" },
  shell: false,
});
for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"]) process.on(signal, () => child.kill(signal));
child.on("error", (cause) => {
  process.stderr.write(`Holdfast: ${cause.message}\n`);
  process.exit(1);
});
child.on("exit", (code, signal) => process.exit(code ?? (signal ? 128 : 1)));
