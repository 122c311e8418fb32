import { spawnSync } from "node:child_process";
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { exportArchive } from "../../../main/archive/exportArchive.ts";
import { backup } from "../../../main/store/copies/backup.ts";
import { verifyFile } from "../../../main/store/ledger/verifyFile.ts";
import { openReader, openStore } from "../../../main/store/open.ts";
import { fillStore } from "../fullStore.ts";
import { ARCHIVE, acts, openHere, type Scene } from "./acts.ts";

/** Which call fails how: `when=3` the third, `when=3+` from the third on. */
export type Fault = {
  readonly call: "fsync" | "pwrite64" | "write";
  readonly error: "EIO" | "ENOSPC";
  readonly lasting: boolean;
};

const faults: readonly Fault[] = [
  { call: "fsync", error: "EIO", lasting: false },
  { call: "fsync", error: "EIO", lasting: true },
  { call: "pwrite64", error: "ENOSPC", lasting: false },
  { call: "pwrite64", error: "ENOSPC", lasting: true },
];

/** An archive is written from its beginning to its end, not in places as a data file is. */
const faultsOfExport: readonly Fault[] = [
  ...faults.filter(({ call }) => call === "fsync"),
  { call: "write", error: "ENOSPC", lasting: false },
  { call: "write", error: "ENOSPC", lasting: true },
];

export const faultsOf = (act: string): readonly Fault[] => (act === "export" ? faultsOfExport : faults);

/** Why faults cannot be injected here, or undefined. */
export function cannotInject(): string | undefined {
  const tried = spawnSync("strace", ["-f", "-qq", "-e", "trace=fsync", "-e", "inject=fsync:error=EIO:when=1", "true"], {
    encoding: "utf8",
  });
  if (tried.error !== undefined) return "strace is not installed";
  return tried.status === 0 ? undefined : `strace is refused: ${tried.stderr.trim().split("\n")[0]}`;
}

export type Trial = {
  readonly act: string;
  readonly fault: Fault;
  readonly runs: number;
  readonly refused: number;
  readonly wrong: string[];
};

/**
 * Lets the n-th call fail, for n from 1 (in steps) until the act comes through without meeting the fault. After each
 * run: the act came about whole or not at all, whole when it said so, and a walk over every file finds nothing.
 */
export async function injectFaults(act: string, fault: Fault, step = 1): Promise<Trial> {
  const home = mkdtempSync(join(tmpdir(), "holdfast-faults-"));
  const wrong: string[] = [];
  let runs = 0;
  let refused = 0;
  try {
    await setScene(join(home, "scene"));
    for (let n = 1; n < 400; n += step) {
      const place = join(home, "run");
      rmSync(place, { recursive: true, force: true });
      cpSync(join(home, "scene"), place, { recursive: true });
      const { said, injected, exit } = runWith(act, sceneIn(place), fault, n);
      runs += 1;
      if (said.startsWith("refused")) refused += 1;
      const found = await judge(act, sceneIn(place), said, exit);
      wrong.push(...found.map((line) => `${act}, ${fault.call} ${n}${fault.lasting ? "+" : ""}: ${line}`));
      if (!injected) return { act, fault, runs, refused, wrong };
    }
    return { act, fault, runs, refused, wrong: [...wrong, `${act}: did not come through after 400 calls`] };
  } finally {
    rmSync(home, { recursive: true, force: true });
  }
}

const sceneIn = (home: string): Scene => ({
  file: join(home, "file", "holdfast.sqlite"),
  other: join(home, "other", "holdfast.sqlite"),
  backup: join(home, "backup.sqlite"),
  archive: join(home, "other.zip"),
  folder: join(home, "new"),
});

const watch = { progress: () => {}, goOn: () => {} };

async function setScene(home: string): Promise<void> {
  const scene = sceneIn(home);
  mkdirSync(scene.folder, { recursive: true });
  const other = openStore({ path: scene.other, now: () => 1_709_500_000_000, machine: "other hall" });
  other.append([
    { kind: "attachment", body: { name: "one" } },
    { kind: "attachment", body: { name: "two" } },
  ]);
  const options = { waveforms: true, program: "0.1.0", demo: false, nowMs: 1_709_500_000_000 };
  await exportArchive(other.db, { file: scene.archive, ...options, watch });
  other.close();
  const store = openHere(scene.file);
  fillStore(store, 4);
  store.close();
  const db = openReader(scene.file);
  const made = await backup(db, {
    folder: home,
    nowMs: 1_709_550_000_000,
    watch,
  });
  db.close();
  cpSync(made.file, scene.backup);
}

function runWith(act: string, scene: Scene, { call, error, lasting }: Fault, n: number) {
  const inject = `inject=${call}:error=${error}:when=${n}${lasting ? "+" : ""}`;
  const program = join(import.meta.dirname, "actOnce.ts");
  const args = [
    "-f",
    "-qq",
    "--seccomp-bpf",
    "-e",
    `trace=${call}`,
    "-e",
    inject,
    ...(call === "write" ? partsOfArchive(scene).flatMap((path) => ["-P", path]) : []),
    process.execPath,
    program,
    act,
    JSON.stringify(scene),
  ];
  const { stdout, stderr, status, signal } = spawnSync("strace", args, { encoding: "utf8", timeout: 300_000 });
  const strange =
    stdout === ""
      ? ` ${stderr
          .split("\n")
          .filter((line) => !line.includes("(INJECTED)"))
          .slice(0, 6)
          .join(" | ")}`
      : "";
  return { said: stdout.trim(), injected: stderr.includes("(INJECTED)"), exit: signal ?? `${status}${strange}` };
}

/** Other things are written too, the answer among them: only these are to fail. */
function partsOfArchive({ folder }: Scene): string[] {
  const part = join(folder, `${ARCHIVE}.part`);
  return [part, ...Array.from({ length: 60 }, (_, i) => `${part}.${i}`)];
}

async function judge(act: string, scene: Scene, said: string, exit: string): Promise<string[]> {
  const wrong = said === "done" || said.startsWith("refused ") ? [] : [`said "${said}" and ended with ${exit}`];
  const came = acts[act]!.came(scene);
  if (came !== "whole" && came !== "notAtAll") wrong.push(came);
  if (said === "done" && came !== "whole") wrong.push("said done, and is not");
  const files = [scene.file, scene.other, ...readdirSync(scene.folder).map((name) => join(scene.folder, name))];
  for (const file of files.filter((name) => /\.sqlite$/.test(name) && existsSync(name))) {
    if (act === "migrate") wrong.push(...shellCheck(file));
    else wrong.push(...(await walk(file)), ...shellCheck(file));
  }
  return wrong;
}

async function walk(file: string): Promise<string[]> {
  const db = openReader(file);
  try {
    const { damaged } = await verifyFile(db, { rebuild: true });
    return damaged.map(({ what, detail }) => `${file}: ${what}: ${detail}`);
  } finally {
    db.close();
  }
}

/** SQLite's own shell judges from outside, where it is installed. */
function shellCheck(file: string): string[] {
  const { error, stdout } = spawnSync("sqlite3", [file, "PRAGMA integrity_check"], { encoding: "utf8" });
  return error !== undefined || stdout.trim() === "ok" ? [] : [`${file}: the sqlite3 shell says ${stdout.trim()}`];
}
