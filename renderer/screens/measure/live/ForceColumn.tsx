import { useEffect, useRef } from "react";
import { type ForceUnit, newtonsPerUnit } from "../../../../app/quantity/forceUnits.ts";
import type { GuardZone } from "../../../../app/verdict/guardZones.ts";
import type { Limits } from "../../../../app/verdict/Judgement.ts";
import { niceTicks } from "../../../chart/niceTicks.ts";
import { useCore } from "../../../state/CoreContext.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { measureTexts } from "../texts.ts";
import "./column.css";

const HEIGHT = 236;
const BAR_X = 46;

/** The force as a column against the limits. The column moves by the store, outside React's render. */
export function ForceColumn({
  limits,
  unit,
  topN,
  zones,
}: {
  readonly limits: Limits;
  /** Guard bands of the rule, as wide as the uncertainty now. */
  readonly zones: readonly GuardZone[];
  readonly unit: ForceUnit;
  readonly topN: number;
}) {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(measureTexts);
  const fill = useRef<SVGRectElement>(null);
  const pointer = useRef<SVGGElement>(null);
  const y = (forceN: number) => 6 + (HEIGHT - 16) * (1 - Math.min(1.02, Math.max(0, forceN / topN)));

  useEffect(() => {
    const move = () => {
      const forceN = core.live.getState().live.forceN ?? 0;
      const at = 6 + (HEIGHT - 16) * (1 - Math.min(1.02, Math.max(0, forceN / topN)));
      fill.current?.setAttribute("y", String(at));
      fill.current?.setAttribute("height", String(Math.max(0, HEIGHT - 10 - at)));
      pointer.current?.setAttribute("transform", `translate(0 ${at})`);
    };
    move();
    return core.live.subscribe(move);
  }, [core, topN]);

  const band = (fromN: number, upToN: number, className: string) => (
    <rect className={className} x={BAR_X} width={26} y={y(upToN)} height={Math.max(0, y(fromN) - y(upToN))} />
  );
  const { minimumN, warningN, maximumN } = limits;
  const marks = niceTicks(0, topN / newtonsPerUnit[unit], 5);
  return (
    <svg
      className="column"
      width={96}
      height={HEIGHT}
      viewBox={`0 0 96 ${HEIGHT}`}
      role="img"
      aria-label={words.column}
    >
      {minimumN !== undefined && band(0, minimumN, "band-stop")}
      {minimumN !== undefined && warningN !== undefined && band(minimumN, warningN, "band-watch")}
      {(warningN ?? minimumN) !== undefined && band(warningN ?? minimumN ?? 0, maximumN ?? topN, "band-good")}
      {maximumN !== undefined && band(maximumN, topN, "band-stop")}
      <pattern id="column-guard" width={5} height={5} patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <line className="hatch" x1={0} x2={0} y1={0} y2={5} />
      </pattern>
      {zones.map(({ side, fromN, upToN }) => (
        <rect
          key={side}
          fill="url(#column-guard)"
          x={BAR_X}
          width={26}
          y={y(upToN)}
          height={Math.max(0, y(fromN) - y(upToN))}
        />
      ))}
      <rect className="frame" x={BAR_X} width={26} y={6} height={HEIGHT - 16} />
      {marks.values.map((value) => (
        <text key={value} x={BAR_X - 8} y={y(value * newtonsPerUnit[unit]) + 5} textAnchor="end">
          {speech.number(value, marks.decimals)}
        </text>
      ))}
      {[minimumN, warningN, maximumN].map(
        (limitN) =>
          limitN !== undefined && <line key={limitN} x1={BAR_X} x2={BAR_X + 26} y1={y(limitN)} y2={y(limitN)} />,
      )}
      <rect ref={fill} className="fill" x={BAR_X + 9} width={8} />
      <g ref={pointer}>
        <path className="pointer" d={`M${BAR_X + 30} 0l11 -6v12z`} />
      </g>
    </svg>
  );
}
