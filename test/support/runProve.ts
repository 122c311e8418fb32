import { Readable } from "node:stream";
import type { ProofReading } from "../../app/proof/data/ProofReading.ts";
import { runCli } from "../../main/cli/main.ts";

/** Runs `holdfast prove - …` on a text and answers what a shell would see. */
export async function runProve(csv: string | Uint8Array, ...args: readonly string[]) {
  let [out, err] = ["", ""];
  const code = await runCli(["prove", ...args], {
    stdin: Readable.from([typeof csv === "string" ? new TextEncoder().encode(csv) : csv]),
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    env: {},
    signal: new AbortController().signal,
  });
  return { code, out, err, json: () => JSON.parse(out) };
}

/** Readings as the columns of the command line, all of them. */
export function csvOf(readings: readonly ProofReading[]): string {
  const rows = readings.map((r) =>
    [r.reference, r.indication, r.run ?? "", r.step ?? "", r.positionDeg ?? "", r.direction].join(","),
  );
  return ["reference_kN,indication,run,step,position,direction", ...rows, ""].join("\n");
}

/** Two columns of plain figures. */
export function csvOfPairs(x: readonly number[], y: readonly number[]): string {
  return ["reference,indication", ...x.map((v, i) => `${v},${y[i]}`), ""].join("\n");
}
