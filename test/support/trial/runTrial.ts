import { type ChildProcess, spawn } from "node:child_process";
import { randomUUID } from "node:crypto";
import { once } from "node:events";
import { join } from "node:path";
import type { SessionSettings } from "../../../main/link/SessionTypes.ts";
import { Random } from "../../../simulator/physics/Random.ts";
import { ByteServer } from "../ByteServer.ts";
import type { TrialStream } from "./trialStream.ts";

/** One connection: the bytes of the stream that were sent over it. How many arrived, the spool tells. */
export type SentOver = { readonly sessionId: string; readonly fromByte: number; toByte: number };

const program = join(import.meta.dirname, "..", "sessionChild.ts");

/**
 * Sends a stream to a session that runs as a program of its own, drops the line so many times (what comes meanwhile is
 * lost), kills the program with SIGKILL at a random byte and starts it again. Answers what was sent over which connection.
 */
export async function runTrial(
  stream: TrialStream,
  spoolFolder: string,
  seed: number,
  disconnects: number,
): Promise<readonly SentOver[]> {
  const random = new Random(seed + 7_919);
  const { bytes } = stream;
  const at = () => random.below(bytes.length);
  const drops = new Set(Array.from({ length: disconnects }, at));
  const kill = at();
  const events = [...drops, kill, bytes.length].sort((a, b) => a - b);
  const server = new ByteServer();
  await server.listen();
  const sent: SentOver[] = [];
  let child = start(stream, spoolFolder, server.port);
  let position = 0;
  for (const event of events) {
    if (event <= position) continue;
    await connected(server, child);
    const over: SentOver = { sessionId: child.sessionId, fromByte: position, toByte: event };
    sent.push(over);
    while (position < event) {
      const to = Math.min(event, position + 1 + random.below(8_000));
      await server.send(bytes.subarray(position, to));
      child.sent += to - position;
      position = to;
      await keptUp(child);
    }
    if (event === kill) {
      child.process.kill("SIGKILL");
      await child.ended;
      await server.drop();
      child = start(stream, spoolFolder, server.port);
    } else if (event < bytes.length) {
      await server.drop();
      position = Math.min(bytes.length, position + random.below(2 * 14 * stream.rateHz)); // up to some two seconds are lost
    }
  }
  await server.drop();
  child.process.stdin!.end();
  await child.ended;
  await server.close();
  return sent;
}

type Child = {
  readonly process: ChildProcess;
  readonly sessionId: string;
  said: string;
  /** Bytes sent to it, and bytes it says it has read, over all connections. */
  sent: number;
  read: number;
  wake: () => void;
  readonly ended: Promise<unknown>;
};

/** Bytes on their way when the program is killed are lost: not more of them than a real cable and driver hold. */
const ON_THE_WAY = 1 << 16;
const STUCK_MS = 20_000;

async function keptUp(child: Child): Promise<void> {
  while (child.sent - child.read > ON_THE_WAY && child.process.exitCode === null && child.process.signalCode === null) {
    let timer: NodeJS.Timeout | undefined;
    await new Promise<void>((resolve, reject) => {
      child.wake = resolve;
      timer = setTimeout(() => reject(new Error(`the measuring program reads no further: ${child.said}`)), STUCK_MS);
    }).finally(() => clearTimeout(timer));
  }
}

function start({ pattern, rateHz }: TrialStream, spoolFolder: string, port: number): Child {
  const sessionId = randomUUID();
  const settings: SessionSettings = {
    sessionId,
    source: { kind: "tcp", host: "127.0.0.1", port },
    pattern,
    rateHz,
    capacityN: 30_000,
  };
  const process_ = spawn(process.execPath, [program, spoolFolder, JSON.stringify(settings)], {
    stdio: ["pipe", "ignore", "pipe"],
  });
  const child: Child = {
    process: process_,
    sessionId,
    said: "",
    sent: 0,
    read: 0,
    wake: () => {},
    ended: once(process_, "exit"),
  };
  process_.once("exit", () => child.wake());
  process_.stderr!.on("data", (text) => {
    child.said = (child.said + text).slice(-2_000);
    const told = [...child.said.matchAll(/^read (\d+)$/gm)].at(-1)?.[1];
    child.read = Math.max(child.read, Number(told ?? 0));
    child.wake();
  });
  return child;
}

/** @throws Error  the program ended instead of connecting */
async function connected(server: ByteServer, child: Child): Promise<void> {
  await Promise.race([server.connected(), child.ended]);
  if (child.process.exitCode !== null) throw new Error(`the measuring program ended: ${child.said}`);
}
