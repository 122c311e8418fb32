import { buildWindow } from "./buildWindow.ts";
import { run } from "./run.ts";

/** Every test. The program is built first: tests drive the page and run the bundle. Arguments go to vitest, so one file can be named. */
const extra = process.argv.slice(2);
if (await buildWindow()) process.stderr.write("Holdfast: built\n");
process.exitCode = await run("node_modules/vitest/vitest.mjs", [
  "run",
  "--reporter=default",
  "--reporter=./scripts/countsReporter.ts",
  ...extra,
]);
