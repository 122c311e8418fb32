import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PassThrough } from "node:stream";
import { afterAll, describe, expect, it } from "vitest";
import { runCli } from "../../../main/cli/main.ts";
import { serialSource } from "../../../main/link/serialPort.ts";
import { tcpSource } from "../../../main/link/tcp.ts";
import { openInto } from "../../support/bytesOf.ts";
import { describeWithPty } from "../../support/ptyPair.ts";

const root = mkdtempSync(join(tmpdir(), "holdfast-simulate-"));
afterAll(() => rmSync(root, { recursive: true }));

/** Runs the command; `said` fills while it runs. */
function start(...args: string[]) {
  const stdin = new PassThrough();
  const stop = new AbortController();
  const said = { out: "", err: "" };
  const code = runCli(["simulate", ...args], {
    stdin,
    out: (text) => {
      said.out += text;
    },
    err: (text) => {
      said.err += text;
    },
    env: process.env,
    signal: stop.signal,
  });
  return { stdin, stop, said, code };
}

describe("holdfast simulate", () => {
  it("says where it listens, sends lines there and takes commands", async () => {
    const run = start("--json");
    await expect.poll(() => run.said.out, { timeout: 10_000 }).toContain("\n");
    const { kind, host, port } = JSON.parse(run.said.out.split("\n")[0]!);
    expect(kind).toBe("tcp");
    const source = tcpSource({ host, port });
    const kept = await openInto(source);
    await kept.has(" kN\r\n");
    run.stdin.write("clamp 17000\ndance\n");
    await expect.poll(() => run.said.out).toContain('"ok":false');
    expect(run.said.out).toContain('{"ok":true,"did":"clamped"}');
    await source.close();
    run.stdin.write("quit\n");
    expect(await run.code).toBe(0);
    expect(run.said.err).toBe("");
  });

  it("speaks plainly without --json and ends on Ctrl-C", async () => {
    const run = start("--tcp", "0", "--control", "0");
    await expect
      .poll(() => run.said.out, { timeout: 10_000 })
      .toMatch(/Simulated gauge on TCP port 127\.0\.0\.1:\d+; commands also on/);
    run.stdin.write("help\n");
    await expect.poll(() => run.said.out).toContain("breakSpring");
    run.stop.abort();
    expect(await run.code).toBe(0);
  });

  it("writes a file at full speed, the same for the same seed", async () => {
    const files = ["a.txt", "b.txt"].map((name) => join(root, name));
    for (const file of files) {
      const run = start("--file", file, "--speed", "full", "--seconds", "60", "--auto", "--seed", "7", "--rate", "50");
      run.stdin.end();
      expect(await run.code).toBe(0);
    }
    const [a, b] = files.map((file) => readFileSync(file, "latin1"));
    expect(a).toBe(b);
    expect(a!.split("\r\n").length - 1).toBe(3_000);
  });

  it("writes nothing but the gauge's lines on standard output with --file -", async () => {
    const run = start("--file", "-", "--speed", "full", "--seconds", "2", "--rate", "100");
    run.stdin.end();
    expect(await run.code).toBe(0);
    expect(run.said.out).toMatch(/^( *-?\d+\.\d\d kN\r\n){200}$/);
  });

  it.each([
    [["--format", "nope"], "format must be one of"],
    [["--rate", "fast"], "--rate must be a number"],
    [["--force", "12 Nm"], "--force must be a force"],
    [["--speed", "warp"], "--speed must be one of real, full"],
    [["--bogus"], "bogus"],
  ])("refuses %j with exit 2 and one line", async (args, words) => {
    const run = start(...args);
    expect(await run.code).toBe(2);
    expect(run.said.err).toContain(words);
    expect(run.said.err.trim().split("\n")).toHaveLength(1);
  });
});

describeWithPty("holdfast simulate on a pseudo-terminal", () => {
  const setting = { baud: 9_600, dataBits: 8, parity: "none", stopBits: 1 } as const;

  it("shows a port that opens like a serial one, and again after it was closed", async () => {
    const path = join(root, "gauge");
    const run = start("--pty", "--path", path, "--json");
    await expect.poll(() => run.said.out, { timeout: 10_000 }).toContain(path);
    for (let i = 0; i < 2; i += 1) {
      const source = serialSource({ path, setting });
      await expect.poll(() => openOnce(source), { timeout: 5_000 }).toBe(true);
      await source.close();
    }
    run.stdin.write("quit\n");
    expect(await run.code).toBe(0);
  });

  it("answers a request", async () => {
    const path = join(root, "asked");
    const run = start("--pty", "--path", path, "--json", "--sends", "onRequest", "--request", "\\x02R\\r");
    await expect.poll(() => run.said.out, { timeout: 10_000 }).toContain(path);
    const source = serialSource({ path, setting });
    const kept = await openInto(source);
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect(kept.text()).toBe("");
    await source.write(Buffer.from("\x02R\r"));
    await kept.has(" kN\r\n");
    expect(kept.text().split("\r\n").length - 1).toBe(1);
    await source.close();
    run.stdin.write("quit\n");
    expect(await run.code).toBe(0);
  });

  /** True once lines come through. A port that is just being made anew is tried again. */
  async function openOnce(source: ReturnType<typeof serialSource>): Promise<boolean> {
    try {
      const kept = await openInto(source);
      await kept.has(" kN\r\n");
      return true;
    } catch {
      return false;
    }
  }
});
