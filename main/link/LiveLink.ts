import type { PortView, Source } from "../../app/contract/linkViews.ts";
import type { LinePattern } from "../../app/gauge/linePattern.ts";
import type { ByteSink, ByteSource } from "./ByteSource.ts";
import type { Clock } from "./Clock.ts";
import { findAgain } from "./findAgain.ts";
import { LinkError, type LinkProblem } from "./LinkProblem.ts";
import { Requester } from "./Requester.ts";
import type { UsbIdentity } from "./SessionTypes.ts";
import { SilenceWatch } from "./SilenceWatch.ts";

/** What a link needs of the machine; a test hands in its own. */
export type LinkDeps = {
  readonly clock: Clock;
  readonly makeSource: (source: Source) => ByteSource;
  readonly listPorts: () => Promise<{ readonly ports: readonly PortView[] }>;
  /** Between two tries to take a lost link up again; default 1 s. */
  readonly retryMs?: number | undefined;
};

export type LinkState = "closed" | "opening" | "open" | "silent" | "waiting" | "failed";

export type LinkSink = {
  bytes(chunk: Uint8Array): void;
  /** Bytes were lost here. `lastedMs` is known once the link is back. */
  gap(why: string, lastedMs: number | undefined): void;
  state(state: LinkState, problem: LinkProblem | undefined): void;
  /** The source came to its own end, as a file does. */
  ended(): void;
};

/** Keeps one link to one gauge alive: watches for silence, asks a gauge that wants to be asked, waits for a device that went away. */
export class LiveLink {
  /** The name the user knows it by. */
  label = "";
  source: Source;
  state: LinkState = "closed";
  readonly #deps: LinkDeps;
  readonly #sink: LinkSink;
  readonly #silenceMs: number;
  #usb: UsbIdentity | undefined;
  #pattern: LinePattern | undefined;
  #link: ByteSource | undefined;
  #watch: SilenceWatch | undefined;
  #requester: Requester | undefined;
  #cancelRetry: (() => void) | undefined;
  #unread = 0; // bytes that came before there was a pattern
  #lostMs = 0;
  #over = false;

  constructor(
    source: Source,
    deps: LinkDeps,
    sink: LinkSink,
    more: { usb?: UsbIdentity | undefined; silenceMs?: number | undefined; pattern?: LinePattern | undefined },
  ) {
    this.source = source;
    this.#deps = deps;
    this.#sink = sink;
    this.#usb = more.usb;
    this.#silenceMs = more.silenceMs ?? 3_000;
    this.#pattern = more.pattern;
  }

  /** How the device is known again; found out when it was opened. */
  get usb(): UsbIdentity | undefined {
    return this.#usb;
  }

  /** @throws LinkError  it cannot be opened; the link is over then */
  async open(): Promise<void> {
    this.#set("opening", undefined);
    this.#usb ??= await this.#identity();
    try {
      await this.#connect(this.source);
    } catch (cause) {
      this.#over = true;
      const error = asLinkError(cause);
      this.#set(error.code === "aborted" ? "closed" : "failed", error.code === "aborted" ? undefined : error.problem);
      throw error;
    }
  }

  /** From here on lines are read: whether silence matters, and whether the gauge wants to be asked. */
  setPattern(pattern: LinePattern): void {
    this.#pattern = pattern;
    this.#link?.hold?.(false);
    if (this.state === "open" || this.state === "silent") this.#attend();
  }

  async close(): Promise<void> {
    this.#over = true;
    this.#cancelRetry?.();
    this.#stopWatching();
    await this.#link?.close();
    if (this.state !== "closed") this.#set("closed", undefined);
  }

  async #connect(source: Source): Promise<void> {
    if (this.#over) throw new LinkError("aborted", "it was closed while it was opened");
    const link = this.#deps.makeSource(source);
    this.#link = link;
    await link.open(this.#sinkOf(link));
    if (this.#over) {
      await link.close();
      throw new LinkError("aborted", "it was closed while it was opened");
    }
    this.source = source;
    this.label = link.label;
    this.#set("open", undefined);
    this.#attend();
  }

  #sinkOf(link: ByteSource): ByteSink {
    return {
      onBytes: (chunk) => {
        this.#heard();
        this.#sink.bytes(chunk);
        this.#unread += chunk.length;
        // A file can wait until it is known how to read it; enough to learn from has come.
        if (this.#pattern === undefined && this.#unread >= ENOUGH_TO_LEARN) link.hold?.(true);
      },
      onGap: (why) => this.#sink.gap(why, undefined),
      onClosed: (why) => {
        if (this.#over || link !== this.#link) return;
        this.#stopWatching();
        if (why === undefined) this.#end();
        else this.#lost(why);
      },
    };
  }

  #heard(): void {
    this.#requester?.heard();
    const quietMs = this.#watch?.heard();
    if (quietMs !== undefined && this.#pattern?.sends === "always") this.#sink.gap("silent", quietMs);
    if (this.state === "silent") this.#set("open", undefined);
  }

  #attend(): void {
    this.#stopWatching();
    const { clock } = this.#deps;
    const request = this.#pattern?.sends === "onRequest" ? this.#pattern.request : undefined;
    if (this.source.kind === "file" || this.#pattern?.sends === "onKey") return;
    if (request === undefined) {
      this.#watch = new SilenceWatch(clock, this.#silenceMs, () => this.#set("silent", undefined));
      return;
    }
    this.#requester = new Requester(clock, {
      request: Buffer.from(request.text, "latin1"),
      everyMs: request.everyMs,
      timeoutMs: request.timeoutMs,
      write: (bytes) => this.#link!.write(bytes),
      onUnanswered: (inARow) => inARow === UNANSWERED && this.#set("silent", noAnswer),
    });
  }

  #stopWatching(): void {
    this.#watch?.stop();
    this.#requester?.stop();
    this.#watch = undefined;
    this.#requester = undefined;
  }

  #end(): void {
    this.#over = true;
    this.#set("closed", undefined);
    this.#sink.ended();
  }

  #lost(why: LinkProblem): void {
    this.#lostMs = this.#deps.clock.monotonicMs();
    this.#sink.gap(why.code, undefined);
    this.#set("waiting", why);
    this.#planRetry();
  }

  #planRetry(): void {
    this.#cancelRetry = this.#deps.clock.after(this.#deps.retryMs ?? 1_000, () => void this.#retry());
  }

  async #retry(): Promise<void> {
    const source = await this.#sourceAgain().catch(() => undefined);
    if (this.#over) return;
    try {
      if (source !== undefined) await this.#connect(source);
    } catch (cause) {
      const { problem } = asLinkError(cause);
      // The device's own absence is what is waited for; anything else the user can do something about.
      if (!this.#over && problem.code !== "portUnknown" && problem.code !== "refused") this.#set("waiting", problem);
    }
    if (this.#over) return;
    if (this.state === "waiting") this.#planRetry();
    else this.#sink.gap("resumed", this.#deps.clock.monotonicMs() - this.#lostMs);
  }

  async #sourceAgain(): Promise<Source | undefined> {
    if (this.source.kind !== "serial") return this.source;
    const { ports } = await this.#deps.listPorts();
    const path = findAgain(ports, this.source.path, this.#usb);
    return path === undefined ? undefined : { ...this.source, path };
  }

  async #identity(): Promise<UsbIdentity | undefined> {
    if (this.source.kind !== "serial") return undefined;
    const { path } = this.source;
    const { ports } = await this.#deps.listPorts();
    return ports.find((port) => port.path === path)?.usb;
  }

  #set(state: LinkState, problem: LinkProblem | undefined): void {
    this.state = state;
    this.#sink.state(state, problem);
  }
}

const ENOUGH_TO_LEARN = 1 << 16;
const UNANSWERED = 3;
const noAnswer: LinkProblem = {
  code: "noAnswer",
  message: "the gauge does not answer; check that it is on, and the request its pattern sends",
};

function asLinkError(cause: unknown): LinkError {
  if (cause instanceof LinkError) return cause;
  return new LinkError("linkFault", cause instanceof Error ? cause.message : String(cause), cause);
}
