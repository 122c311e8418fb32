import { type LearnResult, learnPattern } from "../../app/gauge/learnPattern.ts";
import { type Command, UsageError } from "./Command.ts";
import { parseForceName } from "./parseForceName.ts";
import { parseOptions } from "./parseOptions.ts";
import { readInput } from "./readInput.ts";

type Learned = Extract<LearnResult, { kind: "learned" }>;

export const command: Command = {
  usage: "[FILE] [--unit U] [--rate HZ] [--json]   proposes a line pattern for a sample of a gauge's stream",
  async run(args, io) {
    const { values, files } = parseOptions(args, {
      unit: { type: "string" },
      rate: { type: "string" },
      json: { type: "boolean" },
    });
    if (files.length > 1) throw new UsageError("one FILE at a time");
    const unit = values.unit === undefined ? undefined : parseForceName(values.unit);
    const rateHz = values.rate === undefined ? undefined : Number(values.rate);
    if (rateHz !== undefined && !(rateHz > 0 && rateHz <= 100_000))
      throw new UsageError("--rate wants readings a second, above 0");
    const result = learnPattern(await readInput(files[0], io), { unit, rateHz });
    const where = files[0] === undefined || files[0] === "-" ? "standard input" : files[0];
    if (result.kind === "torque")
      throw new UsageError(`${where}: the lines carry a torque, not a force; ${result.reason}`);
    if (result.kind === "nothing") throw new UsageError(`${where}: no pattern found: ${result.reason}`);
    io.out(values.json === true ? `${json(result)}\n` : report(result));
    return 0;
  },
};

function json(result: Learned): string {
  const decoded = result.decoded.map((line) => ({
    raw: line.raw,
    value: line.value ?? null,
    unit: line.unit ?? null,
    forceN: line.forceN ?? null,
    state: line.state ?? null,
    timeS: line.stampS ?? null,
    aside: line.aside ?? null,
    rejected: line.rejected ?? null,
  }));
  const { pattern, confidence, undecided, readings, rejected } = result;
  return JSON.stringify({ pattern, confidence, samples: readings, linesRejected: rejected, decoded, undecided });
}

/** Lines shown to people; the JSON holds them all. */
const shownLines = 12;

function report(result: Learned): string {
  const lines = [
    `Pattern (confidence ${(100 * result.confidence).toFixed(0)} %)`,
    JSON.stringify(result.pattern, null, 2),
    "",
  ];
  for (const line of result.decoded.slice(0, shownLines)) {
    const figure =
      line.rejected === undefined
        ? (line.aside ?? `${line.value ?? ""} ${line.unit ?? ""} ${line.state ?? ""}`)
        : `rejected: ${line.rejected}`;
    lines.push(`  ${line.raw.padEnd(32)} ${figure}`);
  }
  lines.push("", `${result.readings} readings, ${result.rejected} lines rejected`);
  for (const open of result.undecided) lines.push(`Open (${open.field}): ${open.question}`);
  return `${lines.join("\n")}\n`;
}
