import { readdirSync } from "node:fs";

/** What takes longer than a test may: `npm run soak`, or `npm run soak -- NAME`. Each file exports `soak(): Promise<string[]>`, its faults. */
const wanted = process.argv.slice(2);
const files = readdirSync(import.meta.dirname).filter((file) => file.endsWith(".soak.ts"));
let failed = 0;
for (const file of files) {
  const name = file.replace(".soak.ts", "");
  if (wanted.length > 0 && !wanted.includes(name)) continue;
  const startedAt = performance.now();
  const { soak } = (await import(`./${file}`)) as { soak: () => Promise<readonly string[]> }; // what every soak file exports
  const faults = await soak();
  failed += faults.length;
  process.stdout.write(
    `${faults.length === 0 ? "ok  " : "FAIL"} ${name}, ${Math.round((performance.now() - startedAt) / 1000)} s\n`,
  );
  for (const fault of faults) process.stdout.write(`     ${fault}\n`);
}
process.exitCode = failed === 0 ? 0 : 1;
