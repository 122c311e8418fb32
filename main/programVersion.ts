import { readFileSync } from "node:fs";
import { join } from "node:path";
import { programRoot } from "./programRoot.ts";

const manifest = JSON.parse(readFileSync(join(programRoot, "package.json"), "utf8")) as { version: string }; // our own file

/** The version of this program, as its manifest has it. */
export const programVersion = manifest.version;
