import { deserialize, serialize } from "node:v8";
import type { DockingView } from "../../app/contract/roundViews.ts";
import type { DumpFormat } from "../../app/round/dump/DumpFormat.ts";
import { type DockingRequest, type DockingWork, toDockingView } from "./DockingWork.ts";

/**
 * A docking as it comes from the thread that read it: what pages see, and the rest as bytes. A full memory taken apart and put
 * together again between threads would hold the core up for a quarter of a second; bytes are only copied.
 */
export type PackedWork = {
  readonly view: DockingView;
  readonly format: DumpFormat | undefined;
  readonly bytes: Uint8Array<ArrayBuffer>;
};

export function packWork(work: DockingWork): PackedWork {
  const { request, ...rest } = work;
  return { view: toDockingView(work), format: work.format, bytes: serialize(rest) };
}

/** @param request  what was asked; it never left the core */
export function unpackWork({ bytes }: Pick<PackedWork, "bytes">, request: DockingRequest): DockingWork {
  return { ...(deserialize(bytes) as Omit<DockingWork, "request">), request }; // `packWork` wrote it
}
