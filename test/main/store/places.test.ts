import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { dataFile, dataFolder } from "../../../main/store/dataFile.ts";
import { networkShareOf } from "../../../main/store/networkShare.ts";
import { PcSettingsFile } from "../../../main/store/pcSettings.ts";
import { tempFolder } from "../../support/storeInTemp.ts";

describe("where the data file is", () => {
  const home = "/home/mira";

  // XDG Base Directory Specification: XDG_DATA_HOME, else ~/.local/share; a relative path is ignored.
  it.each([
    ["linux", {}, "/home/mira/.local/share/holdfast"],
    ["linux", { XDG_DATA_HOME: "/data" }, "/data/holdfast"],
    ["linux", { XDG_DATA_HOME: "data" }, "/home/mira/.local/share/holdfast"],
    ["darwin", {}, "/home/mira/Library/Application Support/Holdfast"],
    ["linux", { HOLDFAST_HOME: "/srv/bench", XDG_DATA_HOME: "/data" }, "/srv/bench"],
  ] as const)("on %s with %j is %s", (platform, env, folder) => {
    expect(dataFolder({ platform, env, home })).toBe(folder);
  });

  it("on Windows is the user's local program data", () => {
    const folder = dataFolder({
      platform: "win32",
      env: { LOCALAPPDATA: "C:/Users/mira/AppData/Local" },
      home: "C:/Users/mira",
    });
    expect(folder.replaceAll("\\", "/")).toBe("C:/Users/mira/AppData/Local/Holdfast");
  });

  it("is another one for the demo", () => {
    const place = { platform: "linux", env: { HOLDFAST_HOME: "/srv/bench" }, home } as const;
    expect(dataFile(false, place)).toBe("/srv/bench/holdfast.sqlite");
    expect(dataFile(true, place)).toBe("/srv/bench/demo.sqlite");
  });
});

describe("a network share", () => {
  const linux = (kind: string, at = "/mnt/hall") => ({
    platform: "linux" as const,
    realpath: (path: string) => path,
    mounts: () => `/dev/sda1 / ext4 rw 0 0\nserver:/x ${at} ${kind} rw 0 0\ntmpfs /tmp tmpfs rw 0 0\n`,
  });

  it.each(["nfs", "nfs4", "cifs", "smb3", "fuse.sshfs", "9p", "ceph", "davfs"])("is %s", (kind) => {
    expect(networkShareOf("/mnt/hall/holdfast", linux(kind))).toBe(kind);
  });

  it.each(["ext4", "btrfs", "xfs", "fuseblk", "vfat", "tmpfs", "overlay"])("is not %s", (kind) => {
    expect(networkShareOf("/mnt/hall/holdfast", linux(kind))).toBeUndefined();
  });

  it("is told by the innermost mount, blanks in its name and all", () => {
    expect(networkShareOf("/mnt/hall B/holdfast", linux("nfs", "/mnt/hall\\040B"))).toBe("nfs");
    expect(networkShareOf("/mnt/hallway/holdfast", linux("nfs"))).toBeUndefined();
    expect(networkShareOf("/home/mira", linux("nfs"))).toBeUndefined();
  });

  it("is followed through links", () => {
    expect(networkShareOf("/home/mira/records", { ...linux("nfs"), realpath: () => "/mnt/hall/records" })).toBe("nfs");
  });

  it("is seen in what macOS lists", () => {
    const mounts = () =>
      "/dev/disk3s1s1 on / (apfs, sealed, local, read-only)\n//mira@server/hall on /Volumes/hall (smbfs, nodev, nosuid, mounted by mira)\n";
    const mac = { platform: "darwin" as const, realpath: (path: string) => path, mounts };
    expect(networkShareOf("/Volumes/hall/holdfast", mac)).toBe("smbfs");
    expect(networkShareOf("/Users/mira/Library", mac)).toBeUndefined();
  });

  it("is a path on a server, or a drive letter that leads to one, under Windows", () => {
    const windows = (real: string) => ({ platform: "win32" as const, realpath: () => real, mounts: () => "" });
    expect(networkShareOf("Z:\\records", windows("\\\\server\\hall\\records"))).toBe("Windows share");
    expect(networkShareOf("Z:\\records", windows("\\\\?\\UNC\\server\\hall\\records"))).toBe("Windows share");
    expect(networkShareOf("C:\\records", windows("C:\\records"))).toBeUndefined();
    expect(networkShareOf("C:\\records", windows("\\\\?\\C:\\records"))).toBeUndefined();
  });

  it("is not this folder", () => {
    expect(networkShareOf(tempFolder())).toBeUndefined();
  });
});

describe("settings of this PC", () => {
  it("lie beside the data file, for this user alone, and change one by one", () => {
    const folder = tempFolder();
    const file = PcSettingsFile.beside(join(folder, "new", "holdfast.sqlite"));
    expect(file.read()).toEqual({});
    file.change({ theme: "dark", port: "/dev/ttyUSB0" });
    file.change({ theme: "light" });
    expect(file.read()).toEqual({ theme: "light", port: "/dev/ttyUSB0" });
    expect(statSync(file.path).mode & 0o777).toBe(0o600);
    expect(readdirSync(join(folder, "new"))).toEqual(["settings.json"]);
    expect(JSON.parse(readFileSync(file.path, "utf8"))).toEqual(file.read());
  });

  it.each(["", "{", "[1]", "null", '"dark"'])("that cannot be read (%j) are none, and are replaced", (text) => {
    const file = new PcSettingsFile(join(tempFolder(), "settings.json"));
    writeFileSync(file.path, text);
    expect(file.read()).toEqual({});
    file.change({ theme: "dark" });
    expect(file.read()).toEqual({ theme: "dark" });
  });

  it("keep the old file when the new one cannot be written", () => {
    const file = new PcSettingsFile(join(tempFolder(), "settings.json"));
    file.change({ theme: "dark" });
    mkdirSync(`${file.path}.${process.pid}.part`);
    expect(() => file.change({ theme: "light" })).toThrow();
    expect(file.read()).toEqual({ theme: "dark" });
  });
});
