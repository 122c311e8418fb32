import { existsSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { BenchRow } from "./BenchRow.ts";

/**
 * Every number the program is held to, measured here and now: `npm run bench`, or `npm run bench -- cycles` for one
 * room. Each is printed as met or not met; a number that is not met fails nothing, it is seen.
 */
const wanted = process.argv.slice(2);
const files = readdirSync(import.meta.dirname).filter((file) => file.endsWith(".bench.ts"));
const unknown = wanted.filter((name) => !existsSync(join(import.meta.dirname, `${name}.bench.ts`)));
if (unknown.length > 0) {
  process.stderr.write(
    `There is no bench named ${unknown.join(", ")}; there are ${files.map((f) => f.replace(".bench.ts", "")).join(", ")}\n`,
  );
  process.exit(2);
}

const results: Record<string, readonly BenchRow[]> = {};
for (const file of files) {
  const name = file.replace(".bench.ts", "");
  if (wanted.length > 0 && !wanted.includes(name)) continue;
  process.stdout.write(`\n${name}\n`);
  const exported = (await import(`./${file}`)) as Record<string, () => Promise<readonly BenchRow[]>>; // each exports `<name>Bench`
  const rows = await exported[`${name}Bench`]!();
  results[name] = rows;
  for (const row of rows) process.stdout.write(`${line(row)}\n`);
}

const all = Object.values(results).flat();
const met = all.filter((row) => row.met).length;
process.stdout.write(`\n${met} of ${all.length} numbers met\n`);
if (wanted.length === 0) {
  const report = {
    at: new Date().toISOString(),
    node: process.version,
    platform: `${process.platform}-${process.arch}`,
    results,
  };
  writeFileSync(join(import.meta.dirname, "latest.json"), `${JSON.stringify(report, null, 1)}\n`);
}

function line(row: BenchRow): string {
  const figure = (value: number) => (Number.isFinite(value) ? Number(value.toPrecision(4)).toString() : "none");
  return `  ${row.met ? "met    " : "NOT MET"} ${row.name}: ${figure(row.measured)} ${row.unit} (${figure(row.limit)})${row.note ? `; ${row.note}` : ""}`;
}
