import { parseForce } from "../../app/quantity/parseForce.ts";
import { type Command, UsageError } from "./Command.ts";
import { readPatternFile } from "./choosePattern.ts";
import { cyclesJson, cyclesText } from "./cyclesReport.ts";
import { detectCycles } from "./detectCycles.ts";
import { parseForceName } from "./parseForceName.ts";
import { parseOptions } from "./parseOptions.ts";

export const command: Command = {
  usage:
    '[FILE] [--unit U] [--pattern FILE] [--capacity "30 kN"] [--rate HZ] [--json]   a gauge\'s stream to clamping cycles',
  async run(args, io) {
    const { values, files } = parseOptions(args, {
      unit: { type: "string" },
      pattern: { type: "string" },
      capacity: { type: "string" },
      rate: { type: "string" },
      json: { type: "boolean" },
    });
    if (files.length > 1) throw new UsageError("one FILE at a time");
    const unit = values.unit === undefined ? undefined : parseForceName(values.unit);
    const capacityN = values.capacity === undefined ? undefined : capacityOf(values.capacity);
    const rateHz = values.rate === undefined ? undefined : rateOf(values.rate);
    const pattern = values.pattern === undefined ? undefined : await readPatternFile(values.pattern);
    const found = await detectCycles(files[0], { unit, pattern, capacityN, rateHz }, io);
    io.out(values.json === true ? `${JSON.stringify(cyclesJson(found))}\n` : cyclesText(found));
    return 0;
  },
};

function capacityOf(text: string): number {
  const force = parseForce(text);
  if (force.kind === "force" && force.forceN > 0) return force.forceN;
  const why = "reason" in force ? force.reason : "it wants a force above 0 with its unit";
  throw new UsageError(`--capacity ${text}: ${why}, as in --capacity "30 kN"`);
}

function rateOf(text: string): number {
  const rateHz = Number(text);
  if (text.trim() !== "" && rateHz > 0 && rateHz <= 1_000_000) return rateHz;
  throw new UsageError("--rate wants readings a second, above 0, as in --rate 50");
}
