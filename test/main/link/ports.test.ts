import { chmodSync, mkdirSync, mkdtempSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { groupHint } from "../../../main/link/groupHint.ts";
import { LinkError } from "../../../main/link/LinkProblem.ts";
import { lockHolder } from "../../../main/link/lockHolder.ts";
import { listPorts, type PortSystem } from "../../../main/link/ports.ts";
import { driverPorts } from "../../../main/link/serialPort.ts";
import { serialProblem } from "../../../main/link/serialProblem.ts";

const folder = mkdtempSync(join(tmpdir(), "holdfast-ports-"));
afterAll(() => rmSync(folder, { recursive: true }));

const device = (name: string) => {
  const path = join(folder, name);
  writeFileSync(path, "");
  return path;
};
const systemWith = (ports: Awaited<ReturnType<PortSystem["list"]>>, more: Partial<PortSystem> = {}): PortSystem => ({
  list: async () => ports,
  platform: "linux",
  sysTty: join(folder, "sys"),
  lockFolder: join(folder, "lock"),
  ...more,
});

describe("listPorts", () => {
  it("names a port as its device tells it, in natural order", async () => {
    const ports = ["ttyUSB10", "ttyUSB2"].map((name) => ({
      path: device(name),
      pnpId: "usb-Some_Maker_Force_Bridge_A10-if00-port0",
      serialNumber: "A10",
      vendorId: "0ABC",
      productId: "00D1",
    }));
    const listing = await listPorts(systemWith(ports));
    expect(listing.ports.map((p) => p.path)).toEqual([ports[1]!.path, ports[0]!.path]);
    expect(listing.ports[0]!.label).toMatch(/ttyUSB2 \(Some Maker Force Bridge A10\)$/);
    expect(listing.ports[0]!.usb).toEqual({ serialNumber: "A10", vendorId: "0abc", productId: "00d1" });
    expect(listing.ports[0]!.obstacle).toBeUndefined();
    expect(listing.hint).toBeUndefined();
  });

  it("leaves out serial lines that have no chip behind them", async () => {
    for (const [name, type] of [
      ["ttyS0", "4"],
      ["ttyS1", "0"],
    ] as const) {
      mkdirSync(join(folder, "sys", name), { recursive: true });
      writeFileSync(join(folder, "sys", name, "type"), `${type}\n`);
    }
    const listing = await listPorts(systemWith([{ path: device("ttyS0") }, { path: device("ttyS1") }]));
    expect(listing.ports.map((p) => p.label)).toEqual([join(folder, "ttyS0")]);
  });

  it("says which program holds a port by its lock file, and takes a dead one's for nothing", async () => {
    mkdirSync(join(folder, "lock"), { recursive: true });
    const path = device("ttyUSB5");
    writeFileSync(join(folder, "lock", "LCK..ttyUSB5"), `${String(process.ppid).padStart(10)}\n`);
    const [held] = (await listPorts(systemWith([{ path }]))).ports;
    expect(held!.obstacle).toMatchObject({ code: "portBusy", message: expect.stringContaining(String(process.ppid)) });
    writeFileSync(join(folder, "lock", "LCK..ttyUSB5"), `${"4194304".padStart(10)}\n`); // above the greatest process number
    expect(await lockHolder(path, join(folder, "lock"))).toBeUndefined();
  });

  it("gives an empty list and a hint where udevadm is missing", async () => {
    const { PATH } = process.env;
    process.env.PATH = "/nowhere";
    try {
      const listing = await listPorts({ list: driverPorts, platform: "linux" });
      expect(listing.ports).toEqual([]);
      expect(listing.hint).toContain("udevadm");
    } finally {
      process.env.PATH = PATH;
    }
  });

  it("gives an empty list and the reason where the driver is missing or fails", async () => {
    const missing = await listPorts(
      systemWith([], { list: () => Promise.reject(new LinkError("driverMissing", "no driver here")) }),
    );
    expect(missing).toEqual({ ports: [], hint: "no driver here" });
    const failing = await listPorts(systemWith([], { list: () => Promise.reject(new Error("code 3")) }));
    expect(failing.ports).toEqual([]);
    expect(failing.hint).toContain("code 3");
  });

  it("says so when there is no port", async () => {
    expect((await listPorts(systemWith([]))).hint).toContain("plug the gauge in");
  });

  it("tells of a port that went away between listing and looking", async () => {
    const [port] = (await listPorts(systemWith([{ path: join(folder, "ttyUSB9") }]))).ports;
    expect(port!.obstacle?.code).toBe("portUnknown");
  });
});

describe("what stands in the way of a port", () => {
  it("names the group of the device from the system's own list", async () => {
    const path = device("ttyUSB7");
    chmodSync(path, 0o660);
    const groups = join(folder, "group");
    writeFileSync(groups, `uucp:x:${statSync(path).gid}:\n`);
    expect(await groupHint(path, groups)).toContain('"sudo usermod -a -G uucp $USER"');
  });

  it("does not send a user to a group that has no right either", async () => {
    const path = device("ttyUSB8");
    chmodSync(path, 0o600);
    expect(await groupHint(path)).not.toContain("usermod");
  });

  // The words of the drivers, as they come from Linux, macOS and Windows.
  it.each([
    ["Error: No such file or directory, cannot open /dev/ttyUSB0", "portUnknown"],
    ["Opening COM9: File not found", "portUnknown"],
    ["Error: Permission denied, cannot open /dev/ttyUSB0", "portForbidden"],
    ["Error: Device or resource busy, cannot open /dev/ttyUSB0", "portBusy"],
    ["Error Resource temporarily unavailable Cannot lock port", "portBusy"],
    ["Opening COM3: Access denied", "portBusy"],
    ["Error: Inappropriate ioctl for device", "settingRefused"],
    ["Error: Input/output error, cannot open /dev/ttyUSB0", "portGone"],
    ["Opening COM3: Unknown error code 31", "linkFault"],
  ])("takes %j for %s", async (words, code) => {
    const problem = await serialProblem(new Error(words), "/dev/ttyUSB0");
    expect(problem.code).toBe(code);
    expect(problem.message).toContain("/dev/ttyUSB0");
  });
});
