import { access, constants, readFile } from "node:fs/promises";
import { basename } from "node:path";
import type { PortView } from "../../app/contract/linkViews.ts";
import { groupHint } from "./groupHint.ts";
import { LinkError, type LinkProblem } from "./LinkProblem.ts";
import { lockHolder } from "./lockHolder.ts";
import { type DriverPort, driverPorts } from "./serialPort.ts";

export type PortListing = {
  readonly ports: readonly PortView[];
  /** Why the list may be short and what to do; undefined when it is whole. */
  readonly hint: string | undefined;
};

export type PortSystem = {
  readonly list: () => Promise<readonly DriverPort[]>;
  readonly platform: NodeJS.Platform;
  /** Where the Linux kernel tells of its serial lines; a test hands in a folder of its own. */
  readonly sysTty?: string | undefined;
  readonly lockFolder?: string | undefined;
};

const thisMachine: PortSystem = { list: driverPorts, platform: process.platform };

/** Serial ports with the names a user knows them by, and what stands in the way of opening each. Never throws. */
export async function listPorts(system: PortSystem = thisMachine): Promise<PortListing> {
  let found: readonly DriverPort[];
  try {
    found = await system.list();
  } catch (cause) {
    return { ports: [], hint: whyNoList(cause) };
  }
  const views = await Promise.all(found.map((port) => viewOf(port, system)));
  const ports = views.filter((view) => view !== undefined).sort((a, b) => byName.compare(a.path, b.path));
  return { ports, hint: ports.length === 0 ? "no serial port found; plug the gauge in and list again" : undefined };
}

const byName = new Intl.Collator("en", { numeric: true });

function whyNoList(cause: unknown): string {
  if (cause instanceof LinkError) return cause.message;
  const error = cause as NodeJS.ErrnoException & { readonly path?: string };
  if (error.code === "ENOENT") {
    return 'the list of ports needs "udevadm" (Debian: package udev), which is not installed; a port can be typed in by name, such as /dev/ttyUSB0';
  }
  return `the ports cannot be listed (${error.message}); a port can be typed in by name`;
}

async function viewOf(port: DriverPort, system: PortSystem): Promise<PortView | undefined> {
  if (system.platform === "linux" && (await isEmptySlot(port.path, system.sysTty ?? "/sys/class/tty")))
    return undefined;
  const usb = {
    ...(port.serialNumber === undefined ? {} : { serialNumber: port.serialNumber }),
    ...(port.vendorId === undefined ? {} : { vendorId: port.vendorId.toLowerCase() }),
    ...(port.productId === undefined ? {} : { productId: port.productId.toLowerCase() }),
  };
  return {
    path: port.path,
    label: labelOf(port),
    usb: Object.keys(usb).length === 0 ? undefined : usb,
    obstacle: await obstacleTo(port.path, system),
  };
}

/** Linux names 8250 lines whether or not there is a chip behind them; type 0 means there is none. */
async function isEmptySlot(path: string, sysTty: string): Promise<boolean> {
  if (!/ttyS\d+$/.test(path)) return false;
  return (await readFile(`${sysTty}/${basename(path)}/type`, "utf8").catch(() => "")).trim() === "0";
}

function labelOf(port: DriverPort): string {
  const short = port.path.replace(/^\/dev\//, "");
  const what = port.friendlyName?.replace(` (${short})`, "") ?? nameInId(port.pnpId) ?? port.manufacturer;
  return what === undefined || what === "" ? short : `${short} (${what.replaceAll("_", " ").trim()})`;
}

/** Linux: `usb-Maker_Thing_SERIAL-if00-port0` holds the product's name as the device tells it. */
function nameInId(id: string | undefined): string | undefined {
  return /^usb-(.+?)-if\d\d/.exec(id ?? "")?.[1];
}

async function obstacleTo(path: string, system: PortSystem): Promise<LinkProblem | undefined> {
  if (system.platform === "win32") return undefined; // told on opening
  try {
    await access(path, constants.R_OK | constants.W_OK);
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code === "ENOENT") return { code: "portUnknown", message: `${path} is gone` };
    return { code: "portForbidden", message: `${path} may not be opened: ${await groupHint(path)}` };
  }
  const holder = await lockHolder(path, system.lockFolder ?? "/var/lock");
  if (holder === undefined) return undefined;
  return {
    code: "portBusy",
    message: `${path} is held by another program (process ${holder}); close it and try again`,
  };
}
