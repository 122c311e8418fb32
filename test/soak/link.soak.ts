import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { judgeTrial } from "../support/trial/judgeTrial.ts";
import { runTrial } from "../support/trial/runTrial.ts";
import { trialStream } from "../support/trial/trialStream.ts";

/**
 * One hour of clampings at 1 kHz, sent at full speed, one byte in a hundred altered, lost or doubled, twenty disconnects
 * and a SIGKILL at a random byte; ten times with ten seeds.
 */
export async function soak(): Promise<string[]> {
  const faults: string[] = [];
  for (let seed = 1; seed <= 10; seed += 1) {
    const spoolFolder = mkdtempSync(join(tmpdir(), "holdfast-soak-"));
    try {
      const stream = trialStream({ seed, seconds: 3_600, rateHz: 1_000, corruptPerByte: 0.01 });
      const sent = await runTrial(stream, spoolFolder, seed, 20);
      const { clampings, whole, found, cut, bytes, lost, invented, wrong } = await judgeTrial(
        stream,
        sent,
        spoolFolder,
      );
      process.stdout.write(
        `     seed ${seed}: ${clampings} clampings, ${whole} arrived whole, ${found} cycles found, ${cut} of them cut, ` +
          `${(bytes / 1e6).toFixed(1)} MB; lost ${lost.length}, invented ${invented.length}, wrong ${wrong.length}\n`,
      );
      faults.push(...[...lost, ...invented, ...wrong].map((fault) => `seed ${seed}: ${fault}`));
    } finally {
      rmSync(spoolFolder, { recursive: true, force: true });
    }
  }
  return faults;
}
