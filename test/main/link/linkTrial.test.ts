import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { judgeTrial } from "../../support/trial/judgeTrial.ts";
import { runTrial } from "../../support/trial/runTrial.ts";
import { trialStream } from "../../support/trial/trialStream.ts";

const root = mkdtempSync(join(tmpdir(), "holdfast-trial-"));
afterAll(() => rmSync(root, { recursive: true, force: true }));

async function trial(seed: number) {
  const folder = mkdtempSync(join(root, "t-"));
  const stream = trialStream({ seed, seconds: 90, rateHz: 1_000, corruptPerByte: 0.01 });
  const sent = await runTrial(stream, folder, seed, 3);
  return { stream, sent, folder };
}

/** The short form of `npm run soak -- link`. */
describe("a damaged stream with disconnects and a SIGKILL", () => {
  it.each([1, 2, 3])("loses no clamping that arrived and invents none (seed %i)", async (seed) => {
    const { stream, sent, folder } = await trial(seed);
    const verdict = await judgeTrial(stream, sent, folder);
    expect(verdict).toMatchObject({ lost: [], invented: [], wrong: [] });
    expect(verdict.whole).toBeGreaterThanOrEqual(3);
    expect(new Set(sent.map((s) => s.sessionId)).size).toBe(2);
  });

  it("is judged by a judge that sees a missing, an extra and a wrong cycle", async () => {
    const { stream, sent, folder } = await trial(4);
    const { whole, found, cut } = await judgeTrial(stream, sent, folder);
    const none = await judgeTrial({ ...stream, clampings: [] }, sent, folder);
    expect(none.invented).toHaveLength(found);
    const heavier = stream.clampings.map((c) => ({ ...c, settledN: c.settledN * 1.01 }));
    expect((await judgeTrial({ ...stream, clampings: heavier }, sent, folder)).wrong).toHaveLength(whole);
    // Truth moved into the rest before it: nothing is found there, and what is found stands nowhere.
    const second = Math.round(stream.byteAt(4) / 4);
    const moved = stream.clampings.map((c) => ({
      ...c,
      fromByte: c.fromByte - second,
      toByte: c.fromByte - second / 2,
    }));
    const misplaced = await judgeTrial({ ...stream, clampings: moved }, sent, folder);
    expect(misplaced.lost.length).toBeGreaterThanOrEqual(whole - cut - 1);
    expect(misplaced.invented).toHaveLength(found);
  });
});
