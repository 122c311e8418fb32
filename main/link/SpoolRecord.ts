import type { LinePattern } from "../../app/gauge/linePattern.ts";
import type { SessionSettings } from "./SessionTypes.ts";

/**
 * What stands in a spool. Times are milliseconds of a monotonic clock from the header on, so a wall clock
 * that is set does not disturb the order; the `wall` records tie them to the wall.
 */
export type SpoolRecord =
  | {
      readonly kind: "header";
      readonly settings: SessionSettings;
      readonly part: number;
      readonly atMs: number;
      readonly wallMs: number;
    }
  | { readonly kind: "bytes"; readonly atMs: number; readonly bytes: Uint8Array }
  /** The link was lost or fell silent here: bytes before and after do not belong together. */
  | { readonly kind: "gap"; readonly atMs: number; readonly why: string; readonly lastedMs: number | undefined }
  /** From here on lines are read like this; the first one also reads what came before it, from byte `fromByte`. */
  | {
      readonly kind: "pattern";
      readonly atMs: number;
      readonly pattern: LinePattern;
      readonly rateHz: number | undefined;
      readonly capacityN: number | undefined;
      readonly fromByte: number;
    }
  /** The user asked for a zero here; whether there was one, the readings tell again. */
  | { readonly kind: "zero"; readonly atMs: number }
  | { readonly kind: "wall"; readonly atMs: number; readonly wallMs: number }
  /** A series began, was filed or was cleared: what came before is no longer needed for a recovery. */
  | {
      readonly kind: "series";
      readonly atMs: number;
      readonly seriesId: string;
      readonly what: "began" | "filed" | "cleared";
    }
  /** A quiet stretch stood here and was let go to keep the spool in its bounds. */
  | {
      readonly kind: "skipped";
      readonly atMs: number;
      readonly bytes: number;
      readonly places: number;
      readonly lastedMs: number;
    };
