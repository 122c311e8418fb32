import { spawn } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { buildPage } from "./buildPage.ts";
import { buildWindow } from "./buildWindow.ts";
import { root } from "./run.ts";

/**
 * `npm start` and `npm run demo`: Electron's window when its binary is there, else the loopback host and the user's own
 * browser. Which one, and why, is said in one line.
 */
const demo = process.argv.includes("--demo");
const electron = await electronBinary();

if (typeof electron === "string") {
  process.stdout.write("Holdfast opens in a window of its own.\n");
  await buildWindow();
  const child = spawn(electron, [root, ...(demo ? ["--demo"] : [])], { stdio: "inherit" });
  child.on("exit", (code) => process.exit(code ?? 1));
} else {
  process.stdout.write(`Holdfast opens in your browser: ${electron.why}.\n`);
  if (await buildPage()) process.stdout.write("The page was built anew.\n");
  const { runCli } = await import("../main/cli/main.ts");
  const { processIo } = await import("../main/cli/processIo.ts");
  process.exitCode = await runCli(
    ["serve", "--open", ...(demo ? ["--demo"] : []), ...process.argv.slice(2).filter((a) => a !== "--demo")],
    processIo(),
  );
}

/** The path of Electron's program, fetched once at the first start; or why it is not there. */
async function electronBinary(): Promise<string | { readonly why: string }> {
  if (process.env.HOLDFAST_HOST === "loopback") return { why: "HOLDFAST_HOST asks for it" };
  const folder = join(root, "node_modules/electron");
  if (!existsSync(join(folder, "package.json"))) return { why: "the electron package is not installed" };
  const { version } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8")) as { version: string };
  const pathFile = join(folder, "path.txt");
  if (!existsSync(pathFile)) await fetchOnce(folder, version);
  if (!existsSync(pathFile)) return { why: `Electron ${version}'s program could not be fetched on this machine` };
  return createRequire(import.meta.url)("electron") as string; // the package's export outside Electron is the path
}

/** Tries to fetch the binary, once for each version: a machine without network starts at full speed the next time. */
async function fetchOnce(folder: string, version: string): Promise<void> {
  const marker = join(root, "node_modules/.cache/holdfast", `electron-${version}`);
  if (existsSync(marker) && !process.argv.includes("--fetch-window")) return;
  process.stdout.write("Fetching Electron's program, once; without a network this is given up within 60 s …\n");
  await new Promise<void>((done) => {
    const child = spawn(process.execPath, [join(folder, "install.js")], { stdio: "ignore", timeout: 60_000 });
    child.on("error", () => done());
    child.on("exit", () => done());
  });
  mkdirSync(join(root, "node_modules/.cache/holdfast"), { recursive: true });
  writeFileSync(marker, "");
}
