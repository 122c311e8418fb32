import { type ParseArgsConfig, parseArgs } from "node:util";
import { UsageError } from "./Command.ts";

type Options = NonNullable<ParseArgsConfig["options"]>;

/**
 * Splits a subcommand's arguments into options and file names; `-` counts as a file name.
 * @throws UsageError  an unknown option, or one without its value
 */
export function parseOptions<const O extends Options>(args: readonly string[], options: O) {
  try {
    const { values, positionals } = parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
    return { values, files: positionals };
  } catch (cause) {
    throw new UsageError(`${(cause as Error).message.split(". ")[0]}; see holdfast help`);
  }
}
