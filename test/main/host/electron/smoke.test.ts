import { spawn } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";

const root = resolve(import.meta.dirname, "..", "..", "..", "..");
const folder = join(root, "node_modules/electron");
const pathFile = join(folder, "path.txt");
const binary = existsSync(pathFile) ? join(folder, "dist", readFileSync(pathFile, "utf8")) : undefined;
const built = existsSync(join(root, "out/main/main.js"));
const why =
  binary === undefined || !existsSync(binary)
    ? "its binary is not on this machine"
    : built
      ? undefined
      : "npm run build has not been run";
if (why !== undefined) console.warn(`SKIPPED: Electron's real window, because ${why}`);

describe("Electron itself", () => {
  it.skipIf(why !== undefined)("opens the window on a data file of its own and ends when told to", async () => {
    const home = mkdtempSync(join(tmpdir(), "holdfast-electron-"));
    const child = spawn(binary!, [root, "--no-sandbox"], {
      env: { ...process.env, HOLDFAST_HOME: home },
      stdio: "pipe",
    });
    const file = join(home, "holdfast.sqlite");
    for (let i = 0; i < 100 && !existsSync(file); i += 1) await new Promise((done) => setTimeout(done, 100));
    expect(existsSync(file)).toBe(true);
    child.kill();
    rmSync(home, { recursive: true, force: true });
  });
});
