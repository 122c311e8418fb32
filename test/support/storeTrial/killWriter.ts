import { spawn } from "node:child_process";
import { once } from "node:events";
import { join } from "node:path";

const program = join(import.meta.dirname, "acceptForever.ts");

/**
 * Starts the program that files checks, kills it some time after it has opened the file, and answers the greatest
 * number it had acknowledged; 0 when it came to none.
 */
export async function killWriter(path: string, afterMs: number): Promise<number> {
  const child = spawn(process.execPath, [program, path], { stdio: ["ignore", "pipe", "inherit"] });
  let said = "";
  child.stdout.setEncoding("utf8");
  const opened = new Promise<void>((resolve) => {
    child.stdout.on("data", (text: string) => {
      said += text;
      if (said.startsWith("open\n")) resolve();
    });
  });
  const closed = once(child, "close");
  await Promise.race([opened, closed]);
  await new Promise((resolve) => setTimeout(resolve, afterMs));
  child.kill("SIGKILL");
  await closed;
  if (!said.startsWith("open\n")) throw new Error("the writer did not open the file");
  // A line cut off by the kill was not said.
  return Number(said.slice(0, said.lastIndexOf("\n")).split("\n").slice(1).at(-1) ?? 0);
}
