import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { open } from "node:fs/promises";
import { createServer, type Socket } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PassThrough } from "node:stream";
import { SerialPortMock } from "serialport";
import { afterEach, describe, expect, it } from "vitest";
import type { SerialSetting } from "../../../app/contract/linkViews.ts";
import type { ByteSource } from "../../../main/link/ByteSource.ts";
import { fileSource } from "../../../main/link/file.ts";
import { LinkError } from "../../../main/link/LinkProblem.ts";
import { type SerialBinding, serialSource } from "../../../main/link/serialPort.ts";
import { stdinSource } from "../../../main/link/stdin.ts";
import { tcpSource } from "../../../main/link/tcp.ts";
import { collect, openInto } from "../../support/bytesOf.ts";
import { describeWithPty, ptyPair } from "../../support/ptyPair.ts";

const setting: SerialSetting = { baud: 9600, dataBits: 8, parity: "none", stopBits: 1 };

/** A far end that a source is connected to: what a gauge would do. */
type FarEnd = {
  readonly source: ByteSource;
  send(text: string): Promise<void>;
  /** The far end goes away, in the way this kind of link does. */
  vanish(): Promise<void>;
  /** What reached the far end, for links that can be written to. */
  received?(): string;
  tidy(): Promise<void>;
};

type Kind = { readonly name: string; readonly endsItself: boolean; readonly make: (text: string) => Promise<FarEnd> };

async function overTcp(): Promise<FarEnd> {
  let peer: Socket | undefined;
  let got = "";
  const server = createServer((socket) => {
    peer = socket.on("data", (bytes) => (got += bytes)).on("error", () => {});
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as { port: number };
  return {
    source: tcpSource({ host: "127.0.0.1", port }),
    send: async (text) => void peer!.write(text, "latin1"),
    vanish: async () => void peer!.destroy(),
    received: () => got,
    tidy: () =>
      new Promise((resolve) => {
        peer?.destroy();
        server.close(() => resolve());
      }),
  };
}

async function overPty(): Promise<FarEnd> {
  const pair = await ptyPair();
  const end = await open(pair.b, "r+");
  let got = "";
  const read = async () => {
    const buffer = Buffer.alloc(256);
    for (;;) {
      const { bytesRead } = await end.read(buffer, 0, 256, null);
      got += buffer.toString("latin1", 0, bytesRead);
    }
  };
  return {
    source: serialSource({ path: pair.a, setting }),
    send: async (text) => void (await end.write(Buffer.from(text, "latin1"))),
    vanish: pair.close,
    received() {
      read().catch(() => {});
      return got;
    },
    async tidy() {
      await pair.close();
      await end.close();
    },
  };
}

async function overMock(): Promise<FarEnd> {
  const driver = SerialPortMock.binding;
  driver.reset();
  driver.createPort("/dev/ttyGAUGE", { record: true });
  let opened: Awaited<ReturnType<typeof driver.open>> | undefined;
  const binding: SerialBinding = {
    list: () => driver.list(),
    async open(options) {
      opened = await driver.open(options);
      return opened;
    },
  };
  return {
    source: serialSource({ path: "/dev/ttyGAUGE", setting, binding }),
    send: async (text) => opened!.emitData(Buffer.from(text, "latin1")),
    async vanish() {
      // The mock has no plug to pull: its next read fails as a real driver's does.
      opened!.read = () => Promise.reject(new Error("Input/output error"));
      opened!.emitData(Buffer.from("!"));
    },
    received: () => String(opened!.recording),
    tidy: async () => {},
  };
}

async function overFile(text: string): Promise<FarEnd> {
  const folder = mkdtempSync(join(tmpdir(), "holdfast-source-"));
  const path = join(folder, "stream.txt");
  writeFileSync(path, text, "latin1");
  return {
    source: fileSource({ path }),
    send: async () => {},
    vanish: async () => {},
    tidy: async () => rmSync(folder, { recursive: true }),
  };
}

async function overStdin(text: string): Promise<FarEnd> {
  const input = new PassThrough();
  input.end(Buffer.from(text, "latin1"));
  return {
    source: stdinSource(input),
    send: async () => {},
    vanish: async () => {},
    tidy: async () => void input.destroy(),
  };
}

const kinds: readonly Kind[] = [
  { name: "TCP", endsItself: false, make: overTcp },
  { name: "a serial port on a driver handed in", endsItself: false, make: overMock },
  { name: "a file", endsItself: true, make: overFile },
  { name: "standard input", endsItself: true, make: overStdin },
];

function suite({ endsItself, make }: Kind): void {
  const made: FarEnd[] = [];
  const start = async (text = "") => {
    const far = await make(text);
    made.push(far);
    return far;
  };
  afterEach(async () => {
    for (const far of made.splice(0)) {
      await far.source.close();
      await far.tidy();
    }
  });

  it("brings every byte, all 256 values, in order", async () => {
    const text = Array.from({ length: 256 }, (_, i) => String.fromCharCode(i)).join("");
    const far = await start(text);
    const kept = await openInto(far.source);
    await far.send(text);
    await kept.has(text);
    expect(kept.text()).toBe(text);
  });

  it("brings a long stream whole", async () => {
    const text = Array.from({ length: 5_000 }, (_, i) => `+${String(i).padStart(6, "0")} N\r\n`).join("");
    const far = await start(text);
    const kept = await openInto(far.source);
    for (let from = 0; from < text.length; from += 1_000) {
      await far.send(text.slice(from, from + 1_000));
      if (!endsItself) await kept.has(text.slice(0, Math.min(from + 1_000, text.length)));
    }
    await kept.has(text);
    expect(kept.text()).toBe(text);
  });

  it("says once why it ended and sends nothing after", async () => {
    const far = await start("12.3 kN\r\n");
    const kept = await openInto(far.source);
    await far.send("12.3 kN\r\n");
    await kept.has("12.3 kN\r\n");
    await far.vanish();
    const why = await kept.end;
    expect(why?.code).toBe(endsItself ? undefined : "portGone");
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(kept.late()).toBe(0);
  });

  it("reaches the sink no more once closed", async () => {
    const far = await start("1 N\r\n");
    const kept = collect();
    const calls: string[] = [];
    await far.source.open({ onBytes: (b) => calls.push(`${b.length}`), onClosed: () => calls.push("closed") });
    await far.source.close();
    const before = calls.length;
    await far.send("2 N\r\n").catch(() => {}); // the far end may already know
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(calls.length).toBe(before);
    expect(calls).not.toContain("closed");
    expect(kept.late()).toBe(0);
  });

  it("closes twice without complaint, and before it was opened", async () => {
    const far = await start("1 N\r\n");
    await far.source.close();
    await far.source.close();
    const second = await start("1 N\r\n");
    await openInto(second.source);
    await second.source.close();
    await second.source.close();
  });

  it(endsItself ? "refuses to be written to, with the reason" : "carries a request to the gauge", async () => {
    const far = await start("1 N\r\n");
    await openInto(far.source);
    if (endsItself) {
      await expect(far.source.write(Buffer.from("?"))).rejects.toBeInstanceOf(LinkError);
      return;
    }
    await far.source.write(Buffer.from("\x02READ\r"));
    await expect.poll(() => far.received!()).toContain("\x02READ\r");
  });
}

for (const kind of kinds) describe(`bytes from ${kind.name}`, () => suite(kind));
describeWithPty("bytes from a serial port on a real pseudo-terminal", () =>
  suite({ name: "pty", endsItself: false, make: overPty }),
);

describe("a source that cannot be opened", () => {
  const code = async (source: ByteSource) => {
    const cause = await source.open(collect().sink).then(
      () => undefined,
      (thrown: unknown) => thrown,
    );
    expect(cause).toBeInstanceOf(LinkError);
    return (cause as LinkError).code;
  };

  it("says that nothing listens on a TCP port", async () => {
    const server = createServer();
    await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
    const { port } = server.address() as { port: number };
    await new Promise((resolve) => server.close(resolve));
    expect(await code(tcpSource({ host: "127.0.0.1", port }))).toBe("refused");
  });

  it("says that a host name leads nowhere", async () => {
    expect(await code(tcpSource({ host: "no-such-host.invalid", port: 4001 }))).toBe("hostUnknown");
  });

  it("says that a serial port does not exist", async () => {
    expect(await code(serialSource({ path: "/dev/ttyNOTHERE", setting }))).toBe("portUnknown");
  });

  it("says that a file does not exist", async () => {
    expect(await code(fileSource({ path: "/nowhere/stream.txt" }))).toBe("fileUnreadable");
  });

  it("says that something is no serial port", async () => {
    expect(await code(serialSource({ path: "/dev/null", setting }))).toBe("settingRefused");
  });
});

describeWithPty("a serial port that another program holds", () => {
  it("is told of as busy", async () => {
    const pair = await ptyPair();
    const first = serialSource({ path: pair.a, setting });
    await openInto(first);
    await expect(openInto(serialSource({ path: pair.a, setting }))).rejects.toMatchObject({ code: "portBusy" });
    await first.close();
    await pair.close();
  });
});
