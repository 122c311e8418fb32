import type { Verdict } from "../../../app/verdict/Judgement.ts";
import "./verdict.css";
import { barPath, dotAt, MARK_HEIGHT, MARK_WIDTH, socketPath, taperPath } from "./seatMark.ts";

/** The mark alone; its word always stands beside it, so it is hidden from screen readers. */
export function VerdictMark({ verdict, size = 26 }: { readonly verdict: Verdict; readonly size?: number }) {
  const taper = taperPath(verdict);
  const hollow = verdict === "stop";
  return (
    <svg
      className={`mark ${verdict}`}
      width={(size * MARK_WIDTH) / MARK_HEIGHT}
      height={size}
      viewBox={`0 0 ${MARK_WIDTH} ${MARK_HEIGHT}`}
      aria-hidden="true"
    >
      <path className={verdict === "cannotTell" ? "socket dotted" : "socket"} d={socketPath} />
      {taper && <path className={hollow ? "taper hollow" : "taper"} d={taper} />}
      {verdict === "stop" && <path className="bar" d={barPath} />}
      {verdict === "cannotTell" && <circle cx={dotAt.x} cy={dotAt.y} r={dotAt.radius} />}
    </svg>
  );
}
