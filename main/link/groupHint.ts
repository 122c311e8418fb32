import { readFile, stat } from "node:fs/promises";

/**
 * Which group the user lacks for a device, in words. The number comes from the device itself, its name from the
 * system's list, so it is right on systems that say `uucp` where others say `dialout`.
 */
export async function groupHint(path: string, groupFile = "/etc/group"): Promise<string> {
  try {
    const { gid, mode } = await stat(path);
    if ((mode & 0o060) !== 0o060) return "only its owner may use it; ask whoever looks after this PC";
    const name = (await groupName(gid, groupFile)) ?? String(gid);
    return `it belongs to the group ${name}; join it with "sudo usermod -a -G ${name} $USER", then log out and in again`;
  } catch {
    return "ask whoever looks after this PC for the right to use it";
  }
}

async function groupName(gid: number, groupFile: string): Promise<string | undefined> {
  const lines = (await readFile(groupFile, "utf8")).split("\n");
  return lines.map((line) => line.split(":")).find((fields) => fields[2] === String(gid))?.[0];
}
