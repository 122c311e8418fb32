import { execFileSync } from "node:child_process";
import { readFileSync, realpathSync } from "node:fs";

/** File systems that other machines serve. Write-ahead logging needs shared memory, which they do not give. */
const networkKinds =
  /^(nfs\d?|cifs|smb\w*|afpfs|afs|webdav|davfs2?|ceph|glusterfs|lustre|gpfs|beegfs|ncpfs|coda|9p|fuse\.(sshfs|rclone|davfs2?|glusterfs|cephfs\S*|curlftpfs|smbnetfs))$/i;

/** What tells where a folder lies; tests hand in their own. */
export type MountProbe = {
  readonly platform: NodeJS.Platform;
  /** The folder with links and mapped drives followed. */
  readonly realpath: (path: string) => string;
  /** The mount table: lines of `/proc/self/mounts`, or of `mount` on macOS. */
  readonly mounts: () => string;
};

/**
 * The kind of network share a folder lies on, or undefined for a disk of this machine. Where the question cannot be
 * answered it is undefined: refusing to start on a doubt would be worse.
 */
export function networkShareOf(folder: string, probe: MountProbe = thisMachine): string | undefined {
  const real = probe.realpath(folder);
  if (probe.platform === "win32") return /^\\\\(?![.?]\\(?!UNC\\))/.test(real) ? "Windows share" : undefined;
  const mounts = probe.platform === "darwin" ? macMounts(probe.mounts()) : linuxMounts(probe.mounts());
  let kind: string | undefined;
  let longest = -1;
  for (const mount of mounts) {
    // Later mounts lie over earlier ones at the same place, so an equal length wins too.
    if (mount.at.length >= longest && isInside(real, mount.at)) {
      kind = mount.kind;
      longest = mount.at.length;
    }
  }
  return kind !== undefined && networkKinds.test(kind) ? kind : undefined;
}

type Mount = { readonly at: string; readonly kind: string };

const isInside = (path: string, at: string) => at === "/" || path === at || path.startsWith(`${at}/`);

function linuxMounts(table: string): Mount[] {
  return table.split("\n").flatMap((line) => {
    const [, at, kind] = line.split(" ");
    // Blanks in a mount point are written as octal escapes.
    const plain = at?.replace(/\\([0-7]{3})/g, (_, octal: string) => String.fromCharCode(Number.parseInt(octal, 8)));
    return plain === undefined || kind === undefined ? [] : [{ at: plain, kind }];
  });
}

function macMounts(table: string): Mount[] {
  return [...table.matchAll(/^.* on (.+) \(([^,)]+)[,)]/gm)].map((m) => ({ at: m[1]!, kind: m[2]! }));
}

const thisMachine: MountProbe = {
  platform: process.platform,
  realpath: (path) => quietly(() => realpathSync.native(path), path),
  mounts: () =>
    quietly(
      () =>
        process.platform === "darwin"
          ? execFileSync("/sbin/mount", { encoding: "utf8", timeout: 2_000 })
          : readFileSync("/proc/self/mounts", "utf8"),
      "",
    ),
};

function quietly<T>(ask: () => T, otherwise: T): T {
  try {
    return ask();
  } catch {
    return otherwise;
  }
}
