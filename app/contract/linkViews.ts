import { z } from "zod";
import type { RejectReason } from "../gauge/ReadingSink.ts";

/** What a page sees of port and gauge, and what it may send to open one. */

export const serialSetting = z.strictObject({
  baud: z.number().int().min(300).max(4_000_000),
  dataBits: z.union([z.literal(7), z.literal(8)]),
  parity: z.enum(["none", "even", "odd"]),
  stopBits: z.union([z.literal(1), z.literal(2)]),
});

export const source = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("serial"), path: z.string().min(1).max(260), setting: serialSetting }),
  z.strictObject({
    kind: z.literal("tcp"),
    host: z.string().min(1).max(253),
    port: z.number().int().min(1).max(65_535),
  }),
  z.strictObject({
    kind: z.literal("file"),
    path: z.string().min(1).max(1_000),
    rateHz: z.number().positive().max(100_000).optional(),
  }),
  z.strictObject({ kind: z.literal("simulated") }),
]);

export type SerialSetting = z.infer<typeof serialSetting>;
export type Source = z.infer<typeof source>;

export type LinkState = "closed" | "opening" | "listening" | "open" | "silent" | "waiting" | "failed";

export type LinkView = {
  readonly state: LinkState;
  readonly source: Source | undefined;
  /** The port's name as the user knows it: "COM3", "ttyUSB0 (USB Serial)", "simulated gauge". */
  readonly label: string;
  readonly gaugeId: string | undefined;
  readonly patternName: string | undefined;
  readonly unit: string | undefined;
  readonly rateHz: number | undefined;
  /** The step of the last digit the gauge sends, newtons. */
  readonly resolutionN: number | undefined;
  readonly counters: {
    readonly bytes: number;
    readonly lines: number;
    readonly readings: number;
    readonly rejected: number;
    readonly byReason: Partial<Record<RejectReason, number>>;
  };
  /** What went wrong last, in words; gone when it works again. */
  readonly problem: { readonly code: string; readonly message: string } | undefined;
  /** Set while the spool had to let quiet stretches go. */
  readonly spoolTrimmed: boolean;
};

export type PortView = {
  readonly path: string;
  readonly label: string;
  readonly usb: { readonly serialNumber?: string; readonly vendorId?: string; readonly productId?: string } | undefined;
  /** Undefined when it may be opened; else what stands in the way and what to do. */
  readonly obstacle: { readonly code: string; readonly message: string } | undefined;
};

export type LineView = {
  readonly raw: string;
  readonly forceN: number | undefined;
  readonly state: "live" | "held" | "overload" | undefined;
  readonly rejected: RejectReason | undefined;
};

export type LearnView = {
  readonly pattern: Record<string, unknown> | undefined;
  /** 0 to 1. */
  readonly confidence: number;
  readonly lines: readonly LineView[];
  readonly undecided: readonly { readonly field: string; readonly question: string }[];
  readonly rateHz: number | undefined;
  /** Why no pattern came of it, in words. */
  readonly refused: string | undefined;
  readonly setting: SerialSetting | undefined;
};
