import { once } from "node:events";
import { parseArgs } from "node:util";
import { generateWorks } from "./generateWorks.ts";

/** Prints the demo works, one record a line of JSON: `works/main.ts --end 2026-01-31 --seed 1`. */
async function main(): Promise<void> {
  const { values } = parseArgs({ options: { end: { type: "string" }, seed: { type: "string" } }, strict: true });
  const endMs = values.end === undefined ? Date.now() : Date.parse(values.end);
  const seed = Number(values.seed ?? 1);
  if (Number.isNaN(endMs)) throw new RangeError(`--end must be a date such as 2026-01-31, got ${values.end}`);
  if (!Number.isSafeInteger(seed)) throw new RangeError(`--seed must be a whole number, got ${values.seed}`);
  for (const record of generateWorks(seed, endMs)) {
    if (!process.stdout.write(`${JSON.stringify(record)}\n`)) await once(process.stdout, "drain");
  }
}

main().catch((cause: Error) => {
  process.stderr.write(`demo works: ${cause.message}\n`);
  process.exitCode = 2;
});
