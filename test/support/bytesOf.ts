import type { ByteSink, ByteSource } from "../../main/link/ByteSource.ts";
import type { LinkProblem } from "../../main/link/LinkProblem.ts";

/** Opens a source and keeps what it brings. */
export type Collected = {
  readonly sink: ByteSink;
  text(): string;
  readonly gaps: string[];
  /** Resolves once the text has come to hold `part`. */
  has(part: string): Promise<void>;
  /** Resolves with the reason when the source ends. */
  readonly end: Promise<LinkProblem | undefined>;
  /** Calls that came after the end: must stay 0. */
  late(): number;
};

/** A sink that keeps copies of what comes. */
export function collect(): Collected {
  let text = "";
  let late = 0;
  let over = false;
  const gaps: string[] = [];
  const waiting: { part: string; go: () => void }[] = [];
  let end: (why: LinkProblem | undefined) => void;
  const ended = new Promise<LinkProblem | undefined>((resolve) => {
    end = resolve;
  });
  const sink: ByteSink = {
    onBytes(chunk) {
      if (over) late += 1;
      text += Buffer.from(chunk).toString("latin1");
      for (const w of waiting.filter(({ part }) => text.includes(part))) w.go();
    },
    onGap: (why) => gaps.push(why),
    onClosed(why) {
      if (over) late += 1;
      over = true;
      end(why);
    },
  };
  const has = (part: string) =>
    new Promise<void>((go) => {
      if (text.includes(part)) go();
      else waiting.push({ part, go });
    });
  return { sink, text: () => text, gaps, has, end: ended, late: () => late };
}

/** Opens, collects, and answers both. */
export async function openInto(source: ByteSource): Promise<Collected> {
  const kept = collect();
  await source.open(kept.sink);
  return kept;
}
