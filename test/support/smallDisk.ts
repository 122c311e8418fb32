import { spawnSync } from "node:child_process";
import { mkdtempSync, rmdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { onTestFinished } from "vitest";

/** A disk of a few megabytes in memory, gone when the test is over; undefined where mounting is refused. */
export function smallDisk(megabytes: number): string | undefined {
  const folder = mkdtempSync(join(tmpdir(), "holdfast-disk-"));
  const mounted = run("mount", "-t", "tmpfs", "-o", `size=${megabytes}m`, "tmpfs", folder);
  onTestFinished(() => {
    if (mounted) run("umount", "-l", folder);
    rmdirSync(folder);
  });
  return mounted ? folder : undefined;
}

/** Makes the disk one that cannot be written. */
export function writeProtect(folder: string): boolean {
  return run("mount", "-o", "remount,ro", folder);
}

function run(command: string, ...args: string[]): boolean {
  const { error, status } = spawnSync(command, args);
  return error === undefined && status === 0;
}
