import { basename } from "node:path";
import type { PortListing } from "./ports.ts";

/**
 * Adds the ports that `HOLDFAST_PORTS` names (separated by commas) to a listing: virtual ports, and links of a fixed
 * name, that the system's own list leaves out.
 */
export function withNamedPorts(listing: PortListing, named: string | undefined): PortListing {
  const paths = (named ?? "").split(",").map((path) => path.trim());
  const more = paths.filter((path) => path !== "" && !listing.ports.some((port) => port.path === path));
  if (more.length === 0) return listing;
  const ports = more.map((path) => ({ path, label: basename(path), usb: undefined, obstacle: undefined }));
  return { ports: [...ports, ...listing.ports], hint: undefined };
}
