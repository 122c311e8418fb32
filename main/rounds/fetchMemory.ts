import type { Source } from "../../app/contract/linkViews.ts";
import { AppError } from "../../app/contract/result.ts";
import type { ByteSource } from "../link/ByteSource.ts";
import type { Clock } from "../link/Clock.ts";
import { MemoryWatch } from "./MemoryWatch.ts";

export type FetchDeps = { readonly clock: Clock; readonly makeSource: (source: Source) => ByteSource };

/** The gauge has sent all when it has been silent for so long; and so long it may take at most. */
const SILENCE_MS = 1_500;
const WAIT_MS = 20_000;
const LONGEST_MS = 120_000;
const MOST_BYTES = 2_000_000;
/** A gauge that goes on with live readings is never silent: it is looked at so often whether all that it announced has come. */
const LOOK_MS = 1_000;
/** So many looks without a further record, though bytes come: what comes is no memory any more. */
const STILL_LOOKS = 3;
/** Asked again so often when lines were lost on the way. */
const TRIES = 3;

/**
 * A gauge's memory over its port: asked for, or waited for when the gauge sends it by a key. When lines were lost, it is
 * asked for again, and the fullest answer counts.
 * @returns  what came, a character a byte
 * @throws LinkError  the port; AppError  the gauge sent nothing
 */
export async function fetchMemory(source: Source, request: string | undefined, deps: FetchDeps): Promise<string> {
  let best = "";
  let most = -1;
  for (let attempt = 0; attempt < (request === undefined ? 1 : TRIES); attempt += 1) {
    const watch = await listen(source, request, deps);
    const { records, incomplete } = watch.look(true);
    if (records > most) [best, most] = [watch.text, records];
    if (records > 0 && !incomplete) return watch.text;
  }
  if (best.trim() === "")
    throw new AppError(
      "link",
      "The gauge has sent nothing. Put it in the mode in which it sends its memory, or press its send key while this waits.",
      { key: "memorySilent" },
    );
  return best;
}

async function listen(
  source: Source,
  request: string | undefined,
  { clock, makeSource }: FetchDeps,
): Promise<MemoryWatch> {
  const port = makeSource(source);
  const watch = new MemoryWatch();
  let length = 0;
  let stop: () => void = () => undefined;
  const ended = new Promise<void>((done) => {
    stop = done;
  });
  let timer = clock.after(WAIT_MS, stop);
  const longest = clock.after(LONGEST_MS, stop);
  let seen = 0;
  let records = 0;
  let still = 0;
  const look = () => {
    if (length > seen) {
      seen = length;
      const soFar = watch.look();
      if (soFar.whole) stop();
      still = soFar.records > 0 && soFar.records === records ? still + 1 : 0;
      records = soFar.records;
      if (still >= STILL_LOOKS) stop();
    }
    looking = clock.after(LOOK_MS, look);
  };
  let looking = clock.after(LOOK_MS, look);
  try {
    await port.open({
      onBytes(chunk) {
        length += chunk.length;
        if (length <= MOST_BYTES) watch.push(Buffer.from(chunk).toString("latin1"));
        else stop();
        timer();
        timer = clock.after(SILENCE_MS, stop);
      },
      onClosed: () => stop(),
    });
    if (request !== undefined) await port.write(Buffer.from(request, "latin1"));
    await ended;
  } finally {
    timer();
    longest();
    looking();
    await port.close();
  }
  return watch;
}
