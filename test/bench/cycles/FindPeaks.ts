import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createInterface, type Interface } from "node:readline";

/** SciPy's peak finder in a process of its own, asked again and again so that its runs lie between ours. */
export class FindPeaks {
  readonly #child: ChildProcess;
  readonly #lines: AsyncIterator<string>;
  readonly #reader: Interface;
  readonly #folder = mkdtempSync(join(tmpdir(), "holdfast-bench-"));
  #files = 0;

  private constructor(python: string) {
    this.#child = spawn(python, [join(import.meta.dirname, "findPeaks.py")], { stdio: ["pipe", "pipe", "inherit"] });
    this.#reader = createInterface({ input: this.#child.stdout! });
    this.#lines = this.#reader[Symbol.asyncIterator]();
  }

  /** Undefined where no Python has SciPy. */
  static async start(): Promise<FindPeaks | undefined> {
    const python = ["python3", "/usr/bin/python3", "python"].find(
      (name) => spawnSync(name, ["-c", "import scipy.signal"], { stdio: "ignore" }).status === 0,
    );
    if (python === undefined) return undefined;
    const peaks = new FindPeaks(python);
    await peaks.#lines.next();
    return peaks;
  }

  /** Hands over an array; answers its name for `time`. */
  load(values: Float64Array): string {
    this.#files += 1;
    const path = join(this.#folder, `${this.#files}.f64`);
    writeFileSync(path, values);
    return path;
  }

  /** Seconds of its processor one run takes. */
  async time(path: string, prominence: number, width: number): Promise<number> {
    this.#child.stdin!.write(`${path} ${prominence} ${width}\n`);
    return Number((await this.#lines.next()).value);
  }

  stop(): void {
    this.#reader.close();
    this.#child.kill();
    rmSync(this.#folder, { recursive: true, force: true });
  }
}
