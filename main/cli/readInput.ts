import { readFile } from "node:fs/promises";
import { type CommandIo, UsageError } from "./Command.ts";

/**
 * The whole of a file, or of standard input for `-` or no name.
 * @throws UsageError  the file cannot be read
 */
export async function readInput(file: string | undefined, io: CommandIo): Promise<Uint8Array> {
  if (file === undefined || file === "-") {
    const chunks: Uint8Array[] = [];
    for await (const chunk of io.stdin)
      chunks.push(typeof chunk === "string" ? Buffer.from(chunk) : (chunk as Uint8Array));
    return Buffer.concat(chunks);
  }
  try {
    return await readFile(file);
  } catch (cause) {
    throw new UsageError(
      `${file}: cannot be read (${(cause as NodeJS.ErrnoException).code ?? "unknown fault"}); check the name`,
    );
  }
}
