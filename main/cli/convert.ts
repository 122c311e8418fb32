import { fromNewtons, toNewtons } from "../../app/quantity/forceUnits.ts";
import { parseDecimal } from "../../app/quantity/parseForce.ts";
import { type Command, UsageError } from "./Command.ts";
import { parseForceName } from "./parseForceName.ts";
import { parseOptions } from "./parseOptions.ts";

export const command: Command = {
  usage: "VALUE UNIT --to UNIT [--json]   exact conversion between force units",
  async run(args, io) {
    // A negative value looks like an option to the parser; it is taken out first.
    const place = args.findIndex((arg) => /^[+-]?[\d.,]/.test(arg));
    const rest = args.filter((_, i) => i !== place);
    const { values, files } = parseOptions(rest, { to: { type: "string" }, json: { type: "boolean" } });
    const text = args[place];
    const value = text === undefined ? undefined : parseDecimal(text);
    if (value === undefined)
      throw new UsageError("VALUE must be a plain decimal number, as in: convert 18 kN --to lbf");
    if (files.length !== 1) throw new UsageError("one UNIT stands behind VALUE, as in: convert 18 kN --to lbf");
    if (values.to === undefined) throw new UsageError("--to names the unit wanted, as in: convert 18 kN --to lbf");
    const from = parseForceName(files[0]!);
    const to = parseForceName(values.to);
    const result = from === to ? value : fromNewtons(toNewtons(value, from), to);
    if (!Number.isFinite(result)) throw new UsageError(`${text} ${from} is beyond what can be computed in ${to}`);
    io.out(
      values.json === true ? `${JSON.stringify({ value: result, unit: to })}\n` : `${text} ${from} = ${result} ${to}\n`,
    );
    return 0;
  },
};
