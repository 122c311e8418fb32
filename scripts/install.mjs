// Plain JavaScript: this runs under whatever Node the machine has, before anything is installed.
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

export const root = dirname(dirname(fileURLToPath(import.meta.url)));

/** True when every package of the lock file stands in node_modules in its locked version. */
export function isInstalled() {
  const placed = join(root, "node_modules", ".package-lock.json");
  if (!existsSync(placed)) return false;
  const wanted = JSON.parse(readFileSync(join(root, "package-lock.json"), "utf8")).packages;
  const found = JSON.parse(readFileSync(placed, "utf8")).packages;
  return Object.entries(wanted).every(([path, entry]) => {
    if (path === "" || entry.link) return true;
    // Packages for other platforms are optional and rightly absent.
    return found[path] ? found[path].version === entry.version : entry.optional === true || entry.devOptional === true;
  });
}

/** Installs what the lock file names, saying so on stderr: stdout belongs to the command that was asked for. */
export function install() {
  process.stderr.write("Holdfast: installing what is missing (npm ci), once …\n");
  const npm = process.env.npm_execpath;
  const inside = process.execPath.startsWith(join(root, "node_modules"));
  // Windows cannot replace a program that runs: the Node inside node_modules is then left in place.
  const args = [
    inside && process.platform === "win32" ? "install" : "ci",
    "--loglevel=error",
    "--no-fund",
    "--no-audit",
  ];
  const node = process.env.npm_node_execpath ?? process.execPath;
  const done = npm?.endsWith(".js")
    ? spawnSync(inside ? node : process.execPath, [npm, ...args], { cwd: root, stdio: ["ignore", 2, 2] })
    : spawnSync("npm", args, { cwd: root, stdio: ["ignore", 2, 2], shell: process.platform === "win32" });
  if (done.status !== 0) {
    process.stderr.write(
      "Holdfast: npm ci did not finish. Check the network and run the same command again; nothing else was changed.\n",
    );
    process.exit(1);
  }
}

/** A Node that runs TypeScript as it is and carries the database: 24 or newer. */
export function modernNode() {
  if (Number(process.versions.node.split(".")[0]) >= 24) return process.execPath;
  const brought = join(root, "node_modules", ".bin", process.platform === "win32" ? "node.cmd" : "node");
  if (existsSync(brought)) return brought;
  process.stderr.write(
    `Holdfast: no Node 24 came with the packages for ${process.platform}-${process.arch}. Install Node 24 or newer from nodejs.org and run the same command again.\n`,
  );
  process.exit(1);
}
