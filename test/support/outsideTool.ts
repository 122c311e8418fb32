import { spawnSync } from "node:child_process";
import type { TestContext } from "vitest";

/**
 * Runs a program that is not ours, to look at what we made. Where it is not installed the test is skipped aloud; with
 * `HOLDFAST_REQUIRE_PDFTOOLS=1` (as in CI) that is a failure.
 */
export function outsideTool(
  { skip }: Pick<TestContext, "skip">,
  name: string,
  args: readonly string[],
  input?: string,
): { readonly status: number | null; readonly stdout: string; readonly stderr: string } {
  const ran = spawnSync(name, [...args], { encoding: "utf8", input, maxBuffer: 1 << 28 });
  if ((ran.error as NodeJS.ErrnoException | undefined)?.code !== "ENOENT") return ran;
  if (process.env.HOLDFAST_REQUIRE_PDFTOOLS === "1") throw new Error(`${name} is not installed, and is asked for here`);
  process.stderr.write(`SKIPPED: ${name} is not installed; what it would check was not checked\n`);
  return skip(`${name} is not installed`);
}
