import { once } from "node:events";
import { createWriteStream } from "node:fs";
import type { Output } from "./Output.ts";

/** The gauge's bytes in a file, for whoever replays them later; `-` is standard output. */
export async function fileOutput(path: string): Promise<Output> {
  const file = path === "-" ? process.stdout : createWriteStream(path);
  if (path !== "-") await once(file, "open");
  let plugged = true;
  return {
    address: { kind: "file", path },
    get taken() {
      return plugged;
    },
    send: (bytes) => !plugged || file.write(bytes),
    async drained() {
      if (file.writableNeedDrain) await once(file, "drain");
    },
    async unplug() {
      plugged = false;
    },
    async plug() {
      plugged = true;
    },
    async close() {
      if (path === "-") return;
      file.end();
      await once(file, "close");
    },
  };
}
