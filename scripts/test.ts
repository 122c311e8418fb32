import { buildPage } from "./buildPage.ts";
import { run } from "./run.ts";

/** Every test. The page is built first: the browser tests drive it. Arguments go to vitest, so one file can be named. */
const extra = process.argv.slice(2);
if (await buildPage()) process.stderr.write("Holdfast: page built\n");
process.exitCode = await run("node_modules/vitest/vitest.mjs", [
  "run",
  "--reporter=default",
  "--reporter=./scripts/countsReporter.ts",
  ...extra,
]);
