import { z } from "zod";
import { GaugeStream } from "../../app/cycle/GaugeStream.ts";
import { type LinePattern, linePatternSchema } from "../../app/gauge/linePattern.ts";
import { checkReason } from "../../app/ledger/check.ts";
import { id, instant } from "../../app/ledger/fields.ts";
import { reference } from "../../app/ledger/proof.ts";
import { adapter, gauge, serviceEvent, spindle, storedPattern, works } from "../../app/ledger/register.ts";
import { demoProof, fileDemoProof } from "../proofs/fileDemoProof.ts";
import { readGauge } from "../store/records/gauges.ts";
import { putPerson } from "../store/records/operators.ts";
import { readPattern } from "../store/records/patterns.ts";
import { readWorks } from "../store/records/works.ts";
import type { EntryDraft, Store, WaveformRow } from "../store/Store.ts";
import { encodeWaveformNow } from "../store/waveform.ts";
import { checkOf } from "./checkOf.ts";
import { type DraftCycle, type DraftState, freshDraft } from "./DraftState.ts";
import { demoRecords } from "./demoRecords.ts";
import { factsOf } from "./factsOf.ts";
import { form } from "./form.ts";
import { packable } from "./packable.ts";

const visit = z.strictObject({
  spindleId: id,
  adapterId: id,
  gaugeId: id,
  operatorId: id,
  measuredAt: instant,
  offsetMinutes: z.number(),
  reason: checkReason,
  spindleWarm: z.boolean(),
  temperatureC: z.number(),
  counter: z.number(),
  note: z.string().nullable(),
  unit: z.string(),
  rateHz: z.number(),
  lines: z.string(),
});

const person = z.strictObject({ operatorId: id, name: z.string(), role: z.enum(["technician", "planner"]) });

const record = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("works"), body: works }),
  z.strictObject({ kind: z.literal("operator"), body: person }),
  z.strictObject({ kind: z.literal("linePattern"), body: storedPattern }),
  z.strictObject({ kind: z.literal("gauge"), body: gauge }),
  z.strictObject({ kind: z.literal("adapter"), body: adapter }),
  z.strictObject({ kind: z.literal("spindle"), body: spindle }),
  z.strictObject({ kind: z.literal("serviceEvent"), body: serviceEvent }),
  z.strictObject({ kind: z.literal("check"), body: visit }),
  z.strictObject({ kind: z.literal("reference"), body: reference }),
  z.strictObject({ kind: z.literal("proof"), body: demoProof }),
]);

type Visit = z.infer<typeof visit>;

const SEED = 1;

/**
 * Builds the demo works in an empty demo file: every check goes from the gauge's lines through detection, correction
 * and judgement as a real one does. Answers how many checks it filed; a file with works in it is left alone.
 */
export async function fillIfEmpty(store: Store, now: () => number, version: string): Promise<number> {
  if (!store.demo) throw new RangeError("demo data goes into a demo file only");
  if (store.refusal !== undefined || readWorks(store.db) !== undefined) return 0;
  let checks = 0;
  for await (const raw of demoRecords(now(), SEED)) {
    const { kind, body } = record.parse(raw);
    if (kind === "check") {
      fileVisit(store, body, version);
      checks += 1;
    } else if (kind === "proof") {
      fileDemoProof(store, body, version);
    } else if (kind === "operator") {
      const { name, ...operator } = body;
      const initials = name.replace(/[^A-Z0-9]/g, "");
      store.append([{ kind, body: { ...operator, state: "inUse" } }], {
        alsoInTransaction: (db) => putPerson(db, { operatorId: body.operatorId, name, initials, pin: undefined }),
      });
    } else {
      store.append([{ kind, body } as EntryDraft]); // the union pairs kind and body; the compiler loses it in the rest
    }
  }
  return checks;
}

function fileVisit(store: Store, visited: Visit, version: string): void {
  const { db } = store;
  const instrument = readGauge(db, visited.gaugeId);
  const stored = instrument?.patternId === undefined ? undefined : readPattern(db, instrument.patternId);
  if (instrument === undefined || stored === undefined)
    throw new RangeError("a demo check names a gauge without a pattern");
  const pattern = linePatternSchema.parse(stored.pattern);
  const { state, waveforms, resolutionN } = seriesFrom(visited, pattern, instrument.capacityN, () => store.newId());
  const today = visited.measuredAt.slice(0, 10);
  const facts = factsOf(db, state, { works: readWorks(db)!, resolutionN, today }); // the works come first
  const check = checkOf(state, form(state, facts), facts, {
    measuredAtMs: Date.parse(visited.measuredAt),
    offsetMinutes: visited.offsetMinutes,
    source: "measured",
    unit: visited.unit,
    rateHz: visited.rateHz,
    patternId: stored.patternId,
    pattern,
    waveformHashes: new Map(waveforms.map((w) => [w.cycleId, w.hash])),
    programVersion: version,
    clockDoubtful: false,
  });
  store.append([{ kind: "check", body: check }], { waveforms });
}

function seriesFrom(visited: Visit, pattern: LinePattern, capacityN: number, newId: () => string) {
  const cycles: DraftCycle[] = [];
  const waveforms: WaveformRow[] = [];
  const stream = new GaugeStream(
    { pattern, rateHz: visited.rateHz, capacityN },
    {
      cycle: (cycle, waveform) => {
        const cycleId = newId();
        cycles.push({ cycleId, sessionId: "demo", cycle, dropped: undefined });
        waveforms.push(encodeWaveformNow(cycleId, packable(waveform)));
      },
    },
  );
  stream.push(Buffer.from(visited.lines, "latin1"));
  stream.end();
  const state: DraftState = {
    ...freshDraft(newId(), { gaugeId: visited.gaugeId, operatorId: visited.operatorId }),
    tag: {
      spindleId: visited.spindleId,
      adapterId: visited.adapterId,
      gaugeId: visited.gaugeId,
      operatorId: visited.operatorId,
    },
    reason: visited.reason,
    spindleWarm: visited.spindleWarm,
    temperatureC: visited.temperatureC,
    counter: visited.counter,
    note: visited.note ?? "",
    cycles,
  };
  return { state, waveforms, resolutionN: stream.resolutionN };
}
