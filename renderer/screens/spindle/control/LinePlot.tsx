import type { PointerEvent } from "react";
import { niceTicks } from "../../../chart/niceTicks.ts";
import type { PickedCheck } from "./usePicked.ts";
import "./control.css";

export type PlotLine = {
  /** A level all along, or one figure a check. */
  readonly at: number | ArrayLike<number>;
  readonly word: string;
  readonly kind: "center" | "limit";
};

const LEFT = 62;
/** Beside limits stands their word. */
const FOR_WORDS = 64;
const BELOW = 22;

/** A small plot check by check, in their order: values, limits with their words, signals ringed; keys and pointer pick a check. */
export function LinePlot({
  about,
  values,
  lines,
  signals,
  name,
  ends,
  width = 560,
  height,
  fromZero = false,
  baseline = 0,
  picked,
}: {
  readonly about: string;
  /** What is not finite has no mark. */
  readonly values: ArrayLike<number>;
  readonly lines: readonly PlotLine[];
  /** Positions from 0. */
  readonly signals: readonly number[];
  readonly name: (value: number, decimals: number) => string;
  /** Dates of the first and the last check. */
  readonly ends: readonly [string, string];
  readonly width?: number;
  readonly height: number;
  readonly fromZero?: boolean;
  /** So many of the first checks set the limits: a ground of their own. */
  readonly baseline?: number;
  readonly picked: PickedCheck;
}) {
  const all = [...Array.from(values), ...lines.flatMap(({ at }) => (typeof at === "number" ? [at] : Array.from(at)))];
  const finite = all.filter(Number.isFinite);
  const low = fromZero ? 0 : Math.min(...finite);
  const high = Math.max(...finite);
  const room = (high - low || Math.abs(high) || 1) * 0.08;
  const [bottom, top] = [fromZero ? 0 : low - room, high + room];
  const right = width - (lines.length > 0 ? FOR_WORDS : 6);
  const floor = height - BELOW;
  const x = (i: number) => LEFT + ((right - LEFT) * (i + 0.5)) / values.length;
  const y = (value: number) => 6 + (floor - 10) * (1 - (value - bottom) / (top - bottom));
  const path = (of: ArrayLike<number>) => {
    let pen = "M";
    return Array.from(of, (value, i) => {
      if (!Number.isFinite(value)) return "";
      const part = `${pen}${x(i).toFixed(1)} ${y(value).toFixed(1)}`;
      pen = "L";
      return part;
    }).join("");
  };
  const ticks = niceTicks(bottom, top, Math.max(2, floor / 45));
  const ringed = new Set(signals);
  const under = (event: PointerEvent<SVGSVGElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    const at = Math.floor(((((event.clientX - box.left) / box.width) * width - LEFT) / (right - LEFT)) * values.length);
    return at >= 0 && at < values.length ? at : undefined;
  };
  return (
    <svg
      className="line-plot"
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={about}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: arrow keys walk from check to check
      tabIndex={0}
      onKeyDown={picked.keys}
      onBlur={() => picked.pick(undefined)}
      onPointerMove={(event) => picked.pick(under(event))}
      onPointerLeave={() => picked.pick(undefined)}
      onDoubleClick={() => picked.at !== undefined && picked.open(picked.at)}
    >
      {baseline > 0 && <rect className="base" x={LEFT} y={4} width={x(baseline - 0.5) - LEFT} height={floor - 4} />}
      {ticks.values.map((value) => (
        <g key={value}>
          <line className="tick" x1={LEFT - 5} x2={LEFT} y1={y(value)} y2={y(value)} />
          <text className="soft" x={LEFT - 8} y={y(value) + 5} textAnchor="end">
            {name(value, ticks.decimals)}
          </text>
        </g>
      ))}
      <line className="tick" x1={LEFT} x2={LEFT} y1={4} y2={floor} />
      {lines.map(({ at, word, kind }) => {
        const end = typeof at === "number" ? at : Array.from(at).findLast(Number.isFinite);
        return (
          <g key={word} className={kind}>
            {typeof at === "number" ? <line x1={LEFT} x2={right} y1={y(at)} y2={y(at)} /> : <path d={path(at)} />}
            {end !== undefined && (
              <text x={right + 6} y={y(end) + 5}>
                {word}
              </text>
            )}
          </g>
        );
      })}
      <text x={LEFT} y={height - 4}>
        {ends[0]}
      </text>
      <text x={right} y={height - 4} textAnchor="end">
        {ends[1]}
      </text>
      {picked.at !== undefined && <line className="picked-at" x1={x(picked.at)} x2={x(picked.at)} y1={4} y2={floor} />}
      <path className="course" d={path(values)} />
      {Array.from(values, (value, i) =>
        Number.isFinite(value) ? (
          // biome-ignore lint/suspicious/noArrayIndexKey: a check is its place in the order here
          <g key={i}>
            <circle className="mark" cx={x(i)} cy={y(value)} r="3.4" />
            {ringed.has(i) && <circle className="signal" cx={x(i)} cy={y(value)} r="8" />}
          </g>
        ) : null,
      )}
    </svg>
  );
}
