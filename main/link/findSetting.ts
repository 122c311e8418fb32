import type { SerialSetting } from "../../app/contract/linkViews.ts";
import type { ByteSource } from "./ByteSource.ts";
import type { Clock } from "./Clock.ts";
import { judgeSample, type SampleJudgement } from "./judgeSample.ts";
import { LinkError, type LinkProblem } from "./LinkProblem.ts";

export type FindSettingOptions = {
  /** A source for the port under a setting; it must be free. */
  readonly makeSource: (setting: SerialSetting) => ByteSource;
  readonly clock: Clock;
  readonly signal: AbortSignal;
  readonly onProgress?: (progress: FindProgress) => void;
  /** How well bytes received at `8N1` or another setting read as lines; default by learning a pattern from them. */
  readonly judge?: (bytes: Uint8Array, durationS: number) => SampleJudgement;
};

export type FindProgress = { readonly done: number; readonly total: number; readonly setting: SerialSetting };

export type FoundSetting =
  | { readonly kind: "found"; readonly setting: SerialSetting; readonly confidence: number }
  /** Bytes came, and under no setting did they read as lines. */
  | { readonly kind: "unclear"; readonly best: SerialSetting | undefined }
  /** Nothing came: switched off, sends on a key or on request, or the wrong port. */
  | { readonly kind: "silent" };

/** Commonest first (common practice, no source). */
const bauds = [9_600, 115_200, 19_200, 38_400, 57_600, 4_800, 2_400, 1_200] as const;

/**
 * Every setting listened under, in order. Eight bits without parity come first at each rate: what sends seven bits and
 * a parity bit is received whole by it, and the parity shows in the bytes. The rest is for what sends nine bits a character.
 */
export const settingsTried: readonly SerialSetting[] = [
  ...bauds.map((baud) => ({ baud, dataBits: 8, parity: "none", stopBits: 1 }) as const),
  ...bauds.flatMap((baud) => [
    { baud, dataBits: 8, parity: "even", stopBits: 1 } as const,
    { baud, dataBits: 8, parity: "odd", stopBits: 1 } as const,
    { baud, dataBits: 7, parity: "even", stopBits: 1 } as const,
    { baud, dataBits: 7, parity: "odd", stopBits: 1 } as const,
    { baud, dataBits: 7, parity: "none", stopBits: 1 } as const,
  ]),
];

/**
 * Finds baud rate, data bits and parity by listening: the first setting under which what comes reads as lines.
 * @throws LinkError  the port cannot be opened, or `aborted`
 */
export async function findSetting(options: FindSettingOptions): Promise<FoundSetting> {
  const { signal, onProgress, judge = judgeSample } = options;
  let best: { setting: SerialSetting; confidence: number } | undefined;
  let heard = false;
  for (const [done, setting] of settingsTried.entries()) {
    // A line that is silent at eight rates will not speak at another parity.
    if (done === bauds.length && !heard) return { kind: "silent" };
    onProgress?.({ done, total: settingsTried.length, setting });
    const { bytes, confidence, sends } = await listen(setting, options, judge);
    if (signal.aborted) throw new LinkError("aborted", "the search for the setting was stopped");
    heard ||= bytes > 0;
    if (confidence > (best?.confidence ?? 0)) best = { setting: { ...setting, ...sends }, confidence };
    if (confidence >= SURE) break;
  }
  if (best === undefined || best.confidence < LEAST) return { kind: "unclear", best: best?.setting };
  return { kind: "found", ...best };
}

const SURE = 0.9;
const LEAST = 0.6;
const LISTEN_MS = 2_000;
const LOOK_MS = 400;
/** At the wrong rate there is no sense in waiting for more. */
const ENOUGH_BYTES = 1_500;

type Listened = { readonly bytes: number } & SampleJudgement;

async function listen(
  setting: SerialSetting,
  { makeSource, clock, signal }: FindSettingOptions,
  judge: (bytes: Uint8Array, durationS: number) => SampleJudgement,
): Promise<Listened> {
  const chunks: Uint8Array[] = [];
  let lost: LinkProblem | undefined;
  const source = makeSource(setting);
  await source.open({
    onBytes: (chunk) => chunks.push(chunk.slice()),
    onClosed: (why) => {
      lost = why;
    },
  });
  try {
    let heard: Listened = { bytes: 0, confidence: 0, sends: undefined };
    for (let ms = LOOK_MS; ms <= LISTEN_MS && !signal.aborted; ms += LOOK_MS) {
      await pause(LOOK_MS, clock, signal);
      if (lost !== undefined) throw new LinkError(lost.code, lost.message);
      const bytes = Buffer.concat(chunks);
      if (bytes.length > 0) heard = { bytes: bytes.length, ...judge(bytes, ms / 1_000) };
      if (heard.confidence >= SURE || bytes.length > ENOUGH_BYTES) break;
    }
    return heard;
  } finally {
    await source.close();
  }
}

function pause(ms: number, clock: Clock, signal: AbortSignal): Promise<void> {
  return new Promise((resolve) => {
    const cancel = clock.after(ms, resolve);
    signal.addEventListener(
      "abort",
      () => {
        cancel();
        resolve();
      },
      { once: true },
    );
  });
}
