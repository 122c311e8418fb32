import type { SpindlePage } from "../../../app/contract/recordViews.ts";
import type { ScatterTrend } from "../../../app/trend/scatterTrend.ts";
import { go } from "../../state/routeStore.ts";
import type { Speech } from "../../words/Speech.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { controlTexts } from "./control/controlTexts.ts";
import { LinePlot } from "./control/LinePlot.tsx";
import { usePicked } from "./control/usePicked.ts";
import { effectTexts } from "./effectTexts.ts";

/** The scatter from clamping to clamping has a course of its own, which the force does not show. */
export function ScatterSection({ page }: { readonly page: SpindlePage }) {
  const speech = useSpeech();
  const words = useWords(effectTexts);
  const points = new Map(page.trend.points.map((point) => [point.checkId, point]));
  const known = page.details.flatMap(({ checkId, scatterN }) => {
    const point = points.get(checkId);
    if (typeof scatterN !== "number" || point === undefined || !(point.valueN > 0)) return [];
    return [{ checkId, atMs: point.atMs, share: scatterN / point.valueN }];
  });
  const picked = usePicked(known.length, (at) => {
    const checkId = known[at]?.checkId;
    if (checkId !== undefined) go({ place: "spindle", spindleId: page.row.spindle.spindleId, checkId });
  });
  const how = useWords(controlTexts).how;
  const shares = known.map(({ share }) => share);
  const [first, last] = [known[0], known.at(-1)];
  const { scatter } = page.trend;
  if (known.length < 2 || first === undefined || last === undefined) return null;
  const under = picked.at === undefined ? undefined : known[picked.at];
  const percent = (share: number) => speech.percent(share, 2);
  return (
    <section className="sheet">
      <h2>{words.scatterTitle}</h2>
      {scatter !== undefined && <p className="small">{scatterWords(scatter, speech)}</p>}
      <LinePlot
        about={words.scatterPlot(shares.length, percent(first.share), percent(last.share))}
        values={shares}
        lines={[]}
        signals={[]}
        name={(value, decimals) => speech.percent(value, Math.max(0, decimals - 2))}
        ends={[speech.date(first.atMs), speech.date(last.atMs)]}
        width={300}
        height={130}
        fromZero
        picked={picked}
      />
      <p className="small picked-line" aria-live="polite">
        {under === undefined ? how : `${speech.date(under.atMs)} · ${percent(under.share)}`}
      </p>
    </section>
  );
}

function scatterWords({ direction, n, p, ratio, lastAboveLimit }: ScatterTrend, speech: Speech): string {
  const words = effectTexts[speech.language];
  const odds = p < 0.001 ? `< ${speech.number(0.001, 3)}` : speech.number(p, 3);
  const times = typeof ratio === "number" ? words.scatterRatio(speech.number(ratio, 1)) : "";
  const said = {
    rises: words.scatterRises(n, odds, times),
    falls: words.scatterFalls(n, odds, times),
    none: words.scatterNone(n, odds),
    cannotTell: words.scatterCannotTell(n),
  }[direction];
  return lastAboveLimit ? `${said} ${words.scatterAbove}` : said;
}
