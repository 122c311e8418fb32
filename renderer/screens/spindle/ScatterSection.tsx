import type { SpindlePage } from "../../../app/contract/recordViews.ts";
import type { ScatterTrend } from "../../../app/trend/scatterTrend.ts";
import type { Speech } from "../../words/Speech.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { LinePlot } from "./control/LinePlot.tsx";
import { effectTexts } from "./effectTexts.ts";

/** The scatter from clamping to clamping has a course of its own, which the force does not show. */
export function ScatterSection({ page }: { readonly page: SpindlePage }) {
  const speech = useSpeech();
  const words = useWords(effectTexts);
  const values = new Map(page.trend.points.map((point) => [point.checkId, point.valueN]));
  const shares = page.details.flatMap(({ checkId, scatterN }) => {
    const valueN = values.get(checkId);
    return typeof scatterN === "number" && valueN !== undefined && valueN > 0 ? [scatterN / valueN] : [];
  });
  const [first, last] = [shares[0], shares.at(-1)];
  const { scatter } = page.trend;
  if (shares.length < 2 || first === undefined || last === undefined) return null;
  const percent = (share: number) => speech.percent(share, 2);
  return (
    <section>
      <h2>{words.scatterTitle}</h2>
      {scatter !== undefined && <p className="small">{scatterWords(scatter, speech)}</p>}
      <LinePlot
        about={words.scatterPlot(shares.length, percent(first), percent(last))}
        values={shares}
        lines={[]}
        signals={[]}
        name={(value) => speech.percent(value, 1)}
        height={110}
        fromZero
      />
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
