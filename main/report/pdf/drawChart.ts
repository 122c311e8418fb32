import { drawInterval, drawMark, type MarkShape, markShapes } from "./drawMark.ts";
import { type Box, HAIRLINE, INK, type PdfSheet, QUIET } from "./PdfSheet.ts";

export type ChartLine = {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly look?: "line" | "thin" | MarkShape;
  /** Half the height of an interval about each place. */
  readonly within?: readonly number[];
  /** Written beside its mark over the chart; absent: it needs no name. */
  readonly name?: string;
};
export type ChartLevel = { readonly y: number; readonly name: string };
export type ChartMark = { readonly x: number; readonly name: string };

export type Chart = {
  readonly lines: readonly ChartLine[];
  /** Limits, drawn across. */
  readonly levels?: readonly ChartLevel[];
  /** Events, drawn upright. */
  readonly marks?: readonly ChartMark[];
  readonly xTitle: string;
  readonly yTitle: string;
  /** How a place on x is written under it; absent: as a number. */
  readonly xWords?: (x: number) => string;
  /** Places on x to be written; absent: round numbers. */
  readonly xTicks?: readonly number[];
  readonly fromZero?: boolean;
  /** What the picture shows, for who cannot see it. */
  readonly alt: string;
};

const SMALL = 8;
type Scale = (value: number) => number;

/** A chart for print: one colour, told apart by line and mark; the words for who cannot see it stand with its tag. */
export function drawChart(sheet: PdfSheet, chart: Chart, height = 190): void {
  sheet.need(height + 8);
  const outer: Box = { x: sheet.left, y: sheet.y, width: sheet.width, height };
  const plot: Box = { x: outer.x + 44, y: outer.y + 14, width: outer.width - 44 - 62, height: height - 44 };
  const figure = sheet.tag("Figure", { alt: chart.alt });
  figure.add(() => draw(sheet, chart, plot));
  figure.end();
  sheet.y += height + 8;
}

function draw(sheet: PdfSheet, chart: Chart, plot: Box): void {
  const levels = chart.levels ?? [];
  const [xMin, xMax] = rangeOf(
    chart.lines.flatMap((line) => line.x as number[]).concat((chart.marks ?? []).map((m) => m.x)),
  );
  // A mark on the frame itself is hard to see.
  const aside = chart.lines.some((line) => isMark(line.look)) ? 0.015 * (xMax - xMin) : 0;
  const [xLow, xHigh] = [xMin - aside, xMax + aside];
  const ys = chart.lines.flatMap(reached).concat(levels.map((level) => level.y));
  const [yMin, yMax] = rangeOf(chart.fromZero === true ? ys.concat(0) : ys);
  const pad = (yMax - yMin || Math.abs(yMax) || 1) * 0.06;
  const [yLow, yHigh] = [yMin - pad, yMax + pad];
  const atX: Scale = (x) => plot.x + (xHigh === xLow ? 0.5 : (x - xLow) / (xHigh - xLow)) * plot.width;
  const atY: Scale = (y) => plot.y + plot.height - ((y - yLow) / (yHigh - yLow)) * plot.height;
  grid(sheet, chart, plot, { atX, atY, x: [xLow, xHigh], y: [yLow, yHigh] });
  drawLevels(sheet, levels, plot, atY);
  for (const { x, name } of chart.marks ?? []) upright(sheet, plot, atX(x), name);
  sheet.doc
    .save()
    .rect(plot.x - 3, plot.y, plot.width + 6, plot.height)
    .clip();
  for (const line of chart.lines) drawOne(sheet, line, atX, atY);
  sheet.doc.restore();
  legend(sheet, chart, plot);
}

/** Places on y that a line needs, its intervals included. */
const reached = ({ y, within }: ChartLine): number[] =>
  within === undefined ? [...y] : y.flatMap((at, i) => [at - within[i]!, at + within[i]!]);

/** Names of the lines beside their marks, over the right end of the chart. */
function legend(sheet: PdfSheet, { lines }: Chart, plot: Box): void {
  let x = plot.x + plot.width;
  for (const { name, look } of lines.toReversed()) {
    if (name === undefined) continue;
    const [line] = sheet.lines(name, { size: SMALL, weight: "regular" }, 200);
    x -= line!.width; // a name has a first line
    sheet.drawLine(line!, { x, y: plot.y - 13, size: SMALL, color: QUIET });
    x -= 8;
    if (isMark(look)) drawMark(sheet, look, x, plot.y - 8);
    else
      sheet.doc
        .moveTo(x - 5, plot.y - 8)
        .lineTo(x + 4, plot.y - 8)
        .lineWidth(0.6)
        .stroke(QUIET);
    x -= 10;
  }
}

const isMark = (look: ChartLine["look"]): look is MarkShape => markShapes.includes(look as MarkShape); // asked for just here

type Scales = { atX: Scale; atY: Scale; x: readonly [number, number]; y: readonly [number, number] };

function grid(sheet: PdfSheet, chart: Chart, plot: Box, { atX, atY, x, y }: Scales): void {
  const { doc } = sheet;
  for (const tick of ticks(y[0], y[1], 6)) {
    doc
      .moveTo(plot.x, atY(tick))
      .lineTo(plot.x + plot.width, atY(tick))
      .lineWidth(0.3)
      .stroke("#cfcfcf");
    word(sheet, plain(tick, sheet), { x: plot.x - 48, y: atY(tick) - SMALL * 0.65, align: "right", within: 43 });
  }
  for (const tick of chart.xTicks ?? ticks(x[0], x[1], 8)) {
    doc
      .moveTo(atX(tick), plot.y + plot.height)
      .lineTo(atX(tick), plot.y + plot.height + 3)
      .lineWidth(0.5)
      .stroke(HAIRLINE);
    const text = chart.xWords?.(tick) ?? plain(tick, sheet);
    word(sheet, text, { x: atX(tick) - 40, y: plot.y + plot.height + 5, align: "middle", within: 80 });
  }
  doc.rect(plot.x, plot.y, plot.width, plot.height).lineWidth(0.6).stroke(HAIRLINE);
  word(sheet, chart.yTitle, { x: plot.x - 44, y: plot.y - 13 });
  word(sheet, chart.xTitle, { x: plot.x, y: plot.y + plot.height + 17, align: "right", within: plot.width });
}

/** Names stand at the right edge, moved apart where levels lie close. */
function drawLevels(sheet: PdfSheet, levels: readonly ChartLevel[], plot: Box, atY: Scale): void {
  let above = Number.NEGATIVE_INFINITY;
  for (const { y, name } of levels.toSorted((a, b) => b.y - a.y)) {
    sheet.doc
      .moveTo(plot.x, atY(y))
      .lineTo(plot.x + plot.width, atY(y))
      .lineWidth(0.9)
      .dash(5, { space: 3 })
      .stroke(INK)
      .undash();
    above = Math.max(atY(y) - SMALL * 0.65, above + SMALL * 1.2);
    word(sheet, name, { x: plot.x + plot.width + 5, y: above });
  }
}

function upright(sheet: PdfSheet, plot: Box, x: number, name: string): void {
  sheet.doc
    .moveTo(x, plot.y)
    .lineTo(x, plot.y + plot.height)
    .lineWidth(0.7)
    .dash(1.5, { space: 2 })
    .stroke(QUIET)
    .undash();
  const isFarRight = x > plot.x + plot.width - 60;
  const place = { y: plot.y + plot.height - SMALL * 1.4, within: 80 };
  word(sheet, name, isFarRight ? { ...place, x: x - 83, align: "right" } : { ...place, x: x + 3 });
}

function drawOne(sheet: PdfSheet, { x, y, look = "line", within }: ChartLine, atX: Scale, atY: Scale): void {
  const { doc } = sheet;
  if (isMark(look)) {
    for (const [i, at] of x.entries()) {
      if (within !== undefined) drawInterval(sheet, atX(at), atY(y[i]! - within[i]!), atY(y[i]! + within[i]!));
      drawMark(sheet, look, atX(at), atY(y[i]!));
    }
    return;
  }
  const points = thinned(x.map((at, i) => [atX(at), atY(y[i]!)] as const));
  for (const [i, [px, py]] of points.entries()) i === 0 ? doc.moveTo(px, py) : doc.lineTo(px, py);
  if (points.length > 0) doc.lineWidth(look === "thin" ? 0.4 : 0.9).stroke(look === "thin" ? QUIET : INK);
}

/** First, last, lowest and highest of each half point of width: nothing that could be seen is lost. */
function thinned(points: readonly (readonly [number, number])[]): (readonly [number, number])[] {
  if (points.length < 2_000) return [...points];
  const columns = new Map<number, (readonly [number, number])[]>();
  for (const point of points) {
    const column = Math.floor(point[0] * 2);
    const kept = columns.get(column);
    if (kept === undefined) columns.set(column, [point, point, point, point]);
    else {
      if (point[1] < kept[1]![1]) kept[1] = point;
      if (point[1] > kept[2]![1]) kept[2] = point;
      kept[3] = point;
    }
  }
  return [...columns.values()].flat();
}

function word(
  sheet: PdfSheet,
  text: string,
  { x, y, align, within = 0 }: { x: number; y: number; align?: "right" | "middle"; within?: number },
): void {
  const [line] = sheet.lines(text, { size: SMALL, weight: "regular" }, 400);
  const from = align === "middle" ? x + (within - line!.width) / 2 : x;
  sheet.drawLine(line!, {
    x: from,
    y,
    size: SMALL,
    color: QUIET,
    align: align === "right" ? "right" : undefined,
    within,
  });
}

function rangeOf(values: readonly number[]): [number, number] {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const value of values) {
    if (value < low) low = value;
    if (value > high) high = value;
  }
  return low <= high ? [low, high] : [0, 1];
}

/** Round numbers from `low` to `high`, about `count` of them: steps of 1, 2 or 5 times a power of ten. */
function ticks(low: number, high: number, count: number): number[] {
  const raw = (high - low) / count;
  if (!(raw > 0)) return [low];
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = ([1, 2, 5, 10].find((s) => s * power >= raw) ?? 10) * power;
  const found: number[] = [];
  for (let i = Math.ceil(low / step); i * step <= high; i += 1) found.push(i * step);
  return found;
}

/** With the decimal mark and the minus of the sheet's language. */
function plain(value: number, { language }: PdfSheet): string {
  const text = String(Number(value.toPrecision(6))).replace("-", "\u2212");
  return language === "de" ? text.replace(".", ",") : text;
}
