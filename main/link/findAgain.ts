import type { PortView } from "../../app/contract/linkViews.ts";
import type { UsbIdentity } from "./SessionTypes.ts";

/**
 * Under which name a port that went away is there again; undefined while it is not. The serial number of the USB
 * device decides, else its vendor and product where only one such device is there; a device that never had either
 * (a pseudo-terminal, an on-board line) is looked for under its old name. Another device under the old name is not it.
 */
export function findAgain(
  ports: readonly PortView[],
  oldPath: string,
  usb: UsbIdentity | undefined,
): string | undefined {
  if (usb?.serialNumber === undefined && usb?.vendorId === undefined) return oldPath;
  const same = ports.filter((port) => isSame(port.usb, usb));
  if (same.some((port) => port.path === oldPath)) return oldPath;
  return same.length === 1 ? same[0]!.path : undefined;
}

function isSame(found: UsbIdentity | undefined, wanted: UsbIdentity): boolean {
  if (found === undefined) return false;
  if (wanted.serialNumber !== undefined && found.serialNumber !== wanted.serialNumber) return false;
  return equal(found.vendorId, wanted.vendorId) && equal(found.productId, wanted.productId);
}

/** Drivers differ in the case of hexadecimal numbers. */
const equal = (a: string | undefined, b: string | undefined) => a?.toLowerCase() === b?.toLowerCase();
