import { seriesTrend } from "../../app/trend/seriesTrend.ts";
import { TEN_YEARS_DAYS } from "../../app/trend/trendAxis.ts";
import { type Command, UsageError } from "./Command.ts";
import { parseOptions } from "./parseOptions.ts";
import { readInput } from "./readInput.ts";
import { readTrendCsv, type TrendFile } from "./readTrendCsv.ts";
import { trendChoices } from "./trendOptions.ts";
import { trendReport } from "./trendReport.ts";
import { trendText } from "./trendText.ts";

const text = { type: "string" } as const;

export const command: Command = {
  usage: `FILE.csv [--x COLUMN] [--value COLUMN] [--events COLUMN] [--limit "N unit"]… [--lambda L] [--k K] [--h H] [--target T] [--sigma S] [--chart-limits steady|startup] [--rules default|zone|all] [--json]   trend of a history
    x: ISO 8601 dates (then days since the first row) or numbers; default the first column of dates, else one named x, else the first of two columns of numbers
    values, slopes and limits are in the unit that stands after _ in the value column's name (force_kN; none: N)`,
  async run(args, io) {
    const { values, files } = parseOptions(args, {
      x: text,
      value: text,
      events: text,
      limit: { type: "string", multiple: true },
      lambda: text,
      k: text,
      h: text,
      target: text,
      sigma: text,
      "chart-limits": text,
      rules: text,
      json: { type: "boolean" },
    });
    if (files.length !== 1) throw new UsageError("one FILE.csv holds the history; - stands for standard input");
    const file = files[0]!;
    const table = readTrendCsv(await readInput(file, io), file, values);
    const choices = trendChoices(values, table.unit);
    const limits = choices.limits.map((limit) => limit.value);
    const found = seriesTrend(table.x, table.y, {
      ...choices,
      limits,
      starts: table.starts,
      horizon: horizonOf(table),
    });
    const report = trendReport(table, found, choices);
    io.out(values.json === true ? `${JSON.stringify(report)}\n` : trendText(report));
    return 0;
  },
};

/**
 * How far ahead a forecast looks: ten years where x is days. Numbers of another meaning have no years; ten times the
 * span is as far as anyone would draw a line, and never less than they would reach if they were days.
 */
function horizonOf({ x, xKind }: TrendFile): number {
  const last = x.at(-1)!; // at least one row
  const span = last - x[0]!;
  return last + (xKind === "date" || xKind === "days" ? TEN_YEARS_DAYS : Math.max(TEN_YEARS_DAYS, 10 * span));
}
