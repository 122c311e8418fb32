import { systemClock } from "../../main/link/Clock.ts";
import { SpoolWriter } from "../../main/link/SpoolWriter.ts";

/** A program of its own: fills a spool until the system refuses, goes on writing, and prints what it was told. */
const failures: string[] = [];
const spool = new SpoolWriter({
  folder: process.argv[2]!,
  settings: { sessionId: "full", source: { kind: "simulated" } },
  clock: systemClock,
  onFailed: (cause) => failures.push((cause as NodeJS.ErrnoException).code ?? cause.message),
});
for (let i = 0; i < 2_000; i += 1) spool.bytes(Buffer.from(`+${String(i).padStart(6, "0")} N\r\n`));
await spool.close();
process.stdout.write(JSON.stringify(failures));
