import { writeSync } from "node:fs";
import { StoreError } from "../../../main/store/StoreError.ts";
import { acts, type Scene } from "./acts.ts";

/** One act in a process of its own: says `done`, or `refused` and the code; anything else is a fault of the program. */
const [name, scene] = process.argv.slice(2) as [string, string];
try {
  await acts[name]!.run(JSON.parse(scene) as Scene);
  writeSync(1, "done\n");
} catch (cause) {
  const code = cause instanceof StoreError ? cause.code : (cause as { code?: unknown }).code;
  if (typeof code !== "string") throw cause;
  writeSync(1, `refused ${code}\n`);
}
