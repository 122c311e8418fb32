import { spawnSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

const ROUNDS = 30;
const root = join(import.meta.dirname, "../..");

/** Every property with cases never drawn before. A seed that fails is printed: `HOLDFAST_PROPERTY_SEED` brings its cases back. */
export async function soak(): Promise<string[]> {
  const files = readdirSync(join(root, "test"), { recursive: true, encoding: "utf8" })
    .filter((file) => /\.test\.tsx?$/.test(file))
    .map((file) => join("test", file))
    .filter((file) => readFileSync(join(root, file), "utf8").includes('from "fast-check"'));
  const faults: string[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const seed = Math.floor(Math.random() * 2 ** 31);
    const { status, stdout } = spawnSync(process.execPath, ["node_modules/vitest/vitest.mjs", "run", ...files], {
      cwd: root,
      encoding: "utf8",
      env: { ...process.env, HOLDFAST_PROPERTY_SEED: String(seed) },
    });
    if (status === 0) continue;
    const named = stdout.split("\n").filter((line) => /FAIL|Error/.test(line));
    faults.push([`seed ${seed}`, ...named].join("\n     "));
  }
  process.stdout.write(`     ${files.length} files of properties, ${ROUNDS} seeds\n`);
  return faults;
}
