import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { join, resolve } from "node:path";
import type { Input, MethodName, Output } from "../../app/contract/methods.ts";
import type { Result } from "../../app/contract/result.ts";

const root = resolve(import.meta.dirname, "..", "..");

/** The program as a user runs it: a process of its own with a home of its own, on a free port. */
export class HoldfastProcess {
  readonly home: string;
  readonly #child: ChildProcess;
  #said = "";

  constructor(home: string, args: readonly string[] = [], env: Record<string, string> = {}) {
    this.home = home;
    this.#child = spawn(process.execPath, [join(root, "main/cli/main.ts"), "serve", ...args], {
      cwd: root,
      env: { ...process.env, HOLDFAST_HOME: home, NODE_NO_WARNINGS: "1", ...env },
      stdio: ["pipe", "pipe", "pipe"],
    });
    this.#child.stdout!.on("data", (text) => {
      this.#said += text;
    });
    this.#child.stderr!.on("data", (text) => {
      this.#said += text;
    });
  }

  get dataFile(): string {
    return join(this.home, "holdfast.sqlite");
  }

  /** A fresh address with a one-time code. */
  async address(): Promise<string> {
    const before = this.#addresses().length;
    if (before > 0) this.#child.stdin!.write("\n");
    for (let waited = 0; waited < 15_000; waited += 20) {
      const all = this.#addresses();
      if (all.length > before || (before === 0 && all.length > 0)) return all.at(-1)!;
      if (this.#child.exitCode !== null) break;
      await new Promise((done) => setTimeout(done, 20));
    }
    throw new Error(`the program gave no address: ${this.#said}`);
  }

  #addresses(): string[] {
    return this.#said.match(/http:\/\/127\.0\.0\.1:\d+\/#code=\S+/g) ?? [];
  }

  async end(signal: "SIGTERM" | "SIGKILL" = "SIGTERM"): Promise<void> {
    if (this.#child.exitCode !== null || this.#child.signalCode !== null) return;
    const ended = once(this.#child, "exit");
    this.#child.kill(signal);
    await ended;
  }
}

/** A call's value; a failure is thrown. */
export type Call = <M extends MethodName>(name: M, input?: Input<M>) => Promise<Output<M>>;

/** Calls the program as a page does: exchanges the code, then posts. */
export async function pageCalls(address: string): Promise<Call> {
  const url = new URL(address);
  const post = (path: string, body: unknown, token?: string) =>
    fetch(`${url.origin}${path}`, {
      method: "POST",
      headers: {
        "content-type": "application/json",
        origin: url.origin,
        ...(token === undefined ? {} : { authorization: `Bearer ${token}` }),
      },
      body: JSON.stringify(body),
    });
  const response = await post("/session", { code: url.hash.slice("#code=".length) });
  const { token } = (await response.json()) as { token: string };
  return async <M extends MethodName>(name: M, input?: Input<M>) => {
    const result = (await (await post("/call", { name, input: input ?? {} }, token)).json()) as Result<Output<M>>;
    if (!result.ok) throw Object.assign(new Error(`${name}: ${result.error.message}`), { failure: result.error });
    return result.value;
  };
}
