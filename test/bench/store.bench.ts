import type { BenchRow } from "./BenchRow.ts";
import { acceptRatio } from "./store/acceptRatio.ts";
import { bigFile } from "./store/bigFile.ts";

/** The numbers the records are held to. `HOLDFAST_BENCH_MILLION=1` adds the file of a million checks. */
export async function storeBench(): Promise<BenchRow[]> {
  return [...acceptRatio(), ...(await bigFile(process.env.HOLDFAST_BENCH_MILLION === "1"))];
}

if (import.meta.main) {
  for (const { name, measured, limit, unit, met, note } of await storeBench()) {
    const figures = `${measured.toPrecision(3)} ${unit} (limit ${limit} ${unit})`;
    process.stdout.write(
      `${met ? "met    " : "NOT MET"}  ${name}: ${figures}${note === undefined ? "" : `; ${note}`}\n`,
    );
  }
}
