import type { PortView, Source } from "../../app/contract/linkViews.ts";
import type { ByteSink, ByteSource } from "../../main/link/ByteSource.ts";
import { LinkError, type LinkProblemCode } from "../../main/link/LinkProblem.ts";

/** Byte sources in a test's hand: it sends, pulls the plug, and says what cannot be opened. */
export class FakeLinks {
  /** Ports that are plugged in. */
  ports: PortView[] = [];
  /** Why the next openings fail; undefined: they work. */
  refusal: LinkProblemCode | undefined;
  /** Set to hold an opening back until it is called. */
  hold: Promise<void> | undefined;
  readonly opened: Source[] = [];
  readonly written: string[] = [];
  #sink: ByteSink | undefined;

  readonly makeSource = (source: Source): ByteSource => {
    let closed = false;
    let own: ByteSink | undefined;
    return {
      label: source.kind === "serial" ? source.path : source.kind,
      open: async (sink) => {
        await this.hold;
        if (closed) throw new LinkError("aborted", "closed while it was opened");
        if (this.refusal !== undefined) throw new LinkError(this.refusal, `refused: ${this.refusal}`);
        this.opened.push(source);
        own = this.#sink = sink;
      },
      write: async (bytes) => void this.written.push(Buffer.from(bytes).toString("latin1")),
      close: async () => {
        closed = true;
        if (this.#sink === own) this.#sink = undefined;
      },
    };
  };

  readonly listPorts = async () => ({ ports: this.ports });

  get connected(): boolean {
    return this.#sink !== undefined;
  }

  send(bytes: Uint8Array | string): void {
    if (this.#sink === undefined) throw new Error("nothing is connected");
    this.#sink.onBytes(typeof bytes === "string" ? Buffer.from(bytes, "latin1") : bytes);
  }

  vanish(): void {
    const sink = this.#sink;
    this.#sink = undefined;
    sink?.onClosed({ code: "portGone", message: "gone" });
  }

  end(): void {
    const sink = this.#sink;
    this.#sink = undefined;
    sink?.onClosed(undefined);
  }
}

/** A port as the list shows it. */
export function port(path: string, serialNumber?: string, vendorId = "0abc", productId = "00d1"): PortView {
  return {
    path,
    label: path,
    usb: { ...(serialNumber === undefined ? {} : { serialNumber }), vendorId, productId },
    obstacle: undefined,
  };
}
