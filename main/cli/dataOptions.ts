import { existsSync } from "node:fs";
import { dataFile } from "../store/dataFile.ts";
import { UsageError } from "./Command.ts";

/** Options every command on records takes. */
export const dataOptions = { data: { type: "string" }, demo: { type: "boolean" }, json: { type: "boolean" } } as const;

/**
 * The data file a command is about: `--data FILE`, else the demo's, else the user's.
 * @throws UsageError  it is not there
 */
export function dataFileOf(values: { data?: string | undefined; demo?: boolean | undefined }): string {
  const path = values.data ?? dataFile(values.demo === true);
  if (!existsSync(path))
    throw new UsageError(`there is no data file at ${path}; name one with --data, or start the program once`);
  return path;
}
