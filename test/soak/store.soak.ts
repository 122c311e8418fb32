import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openStore } from "../../main/store/open.ts";
import { invented } from "../support/aCheck.ts";
import { flipBits } from "../support/flipBits.ts";
import { fillStore } from "../support/fullStore.ts";
import { acts } from "../support/storeTrial/acts.ts";
import { checkAfterKill } from "../support/storeTrial/checkAfterKill.ts";
import { cannotInject, faultsOf, injectFaults } from "../support/storeTrial/injectFaults.ts";
import { killWriter } from "../support/storeTrial/killWriter.ts";

const FLIPS = 10_000;
const KILLS = 10_000;
/** After so many kills a fresh file, so that walking it does not come to take all the time. */
const KILLS_A_FILE = 25;
const SEED = 8_785;

const say = (text: string) => process.stdout.write(`     ${text}\n`);

/** The records under everything that can happen to them: bits flipped, every single sync and write failing, 10,000 kills. */
export async function soak(): Promise<string[]> {
  return [...(await flips()), ...(await failing()), ...(await kills())];
}

async function flips(): Promise<string[]> {
  return inFolder(async (folder) => {
    const path = join(folder, "whole.sqlite");
    const store = openStore({ path, now: () => 1_709_542_800_000, machine: "bench" });
    fillStore(store, 30);
    store.close();
    const { changed, found, refused, missed } = await flipBits(
      readFileSync(path),
      join(folder, "f.sqlite"),
      FLIPS,
      SEED,
    );
    say(
      `${FLIPS} bit flips: ${changed} change an answer, ${found} found by verify, ${refused} refused, ${missed.length} missed`,
    );
    return missed.map((where) => `a flip was not found: ${where}`);
  });
}

async function failing(): Promise<string[]> {
  const why = cannotInject();
  if (why !== undefined) {
    say(`SKIPPED: faults below the program, ${why}`);
    return [];
  }
  const wrong: string[] = [];
  for (const act of Object.keys(acts)) {
    for (const fault of faultsOf(act)) {
      const trial = await injectFaults(act, fault);
      const how = `${fault.call} ${fault.error}${fault.lasting ? " from then on" : " once"}`;
      say(`${act}, ${how}: ${trial.runs} runs, ${trial.refused} refused, ${trial.wrong.length} wrong`);
      wrong.push(...trial.wrong);
    }
  }
  return wrong;
}

async function kills(): Promise<string[]> {
  const next = invented(SEED);
  const wrong: string[] = [];
  let acknowledged = 0;
  for (let from = 0; from < KILLS; from += KILLS_A_FILE) {
    acknowledged += await inFolder(async (folder) => {
      const path = join(folder, "holdfast.sqlite");
      let known = 0;
      for (let kill = from; kill < Math.min(from + KILLS_A_FILE, KILLS); kill += 1) {
        known = Math.max(known, await killWriter(path, next() * 80));
        wrong.push(...(await checkAfterKill(path, known)).map((fault) => `kill ${kill + 1} (seed ${SEED}): ${fault}`));
      }
      return known;
    });
    if ((from / KILLS_A_FILE) % 20 === 19)
      say(`${from + KILLS_A_FILE} kills, ${acknowledged} acknowledged, ${wrong.length} wrong`);
  }
  return wrong;
}

async function inFolder<T>(work: (folder: string) => Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), "holdfast-soak-"));
  try {
    return await work(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
