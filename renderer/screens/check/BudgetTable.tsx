import type { Budget, Contribution } from "../../../app/correction/Budget.ts";
import { type ForceUnit, fromNewtons } from "../../../app/quantity/forceUnits.ts";
import { sourceTexts } from "../../../app/words/recordTexts.ts";
import { uncertaintyDecimals } from "../../../app/words/uncertaintyDecimals.ts";
import { unitText } from "../../words/Speech.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { checkTexts } from "./texts.ts";
import "./check.css";

type Shown = {
  readonly budget: Omit<Budget, "contributions" | "degreesOfFreedom"> & {
    readonly contributions: readonly Pick<Contribution, "source" | "type" | "standardN" | "assumed">[];
  };
  readonly unit: ForceUnit;
};

/** The uncertainty budget as a part of a page. */
export function BudgetTable(shown: Shown) {
  const words = useWords(checkTexts);
  return (
    <section className="sheet tall">
      <h2>{words.budget}</h2>
      <BudgetFigures {...shown} />
    </section>
  );
}

/** Each contribution with its share as a figure and a bar, the greatest first and named. */
export function BudgetFigures({ budget, unit }: Shown) {
  const speech = useSpeech();
  const words = useWords(checkTexts);
  const sources = useWords(sourceTexts);
  const { contributions, standardN, expandedN, coverageFactor, coverage, dominant } = budget;
  const sorted = contributions.toSorted((a, b) => b.standardN - a.standardN);
  const share = (u: number) => (standardN > 0 ? (u / standardN) ** 2 : 0);
  const decimals = Math.min(5, uncertaintyDecimals(Math.max(1e-9, fromNewtons(standardN, unit))) + 1);
  const within = fromNewtons(expandedN, unit);
  const expanded = `${speech.number(within, uncertaintyDecimals(Math.max(1e-9, within)))} ${unitText(unit)}`;
  return (
    <>
      <p className="why">
        {words.budgetWhy(expanded, speech.number(coverageFactor, 2), speech.percent(coverage), sources[dominant])}
      </p>
      <div className="sideways">
        <table>
          <thead>
            <tr>
              <th scope="col">{words.colSource}</th>
              <th scope="col" className="num">
                {words.colStandard(unitText(unit))}
              </th>
              <th scope="col">{words.colShare}</th>
            </tr>
          </thead>
          <tbody>
            {sorted.map(({ source, standardN: u, type, assumed }) => (
              <tr key={`${source}${type}${u}`}>
                <th scope="row">
                  {sources[source]}{" "}
                  <small>
                    {type}
                    {assumed && ` · ${words.assumed}`}
                  </small>
                </th>
                <td className="num">{speech.number(fromNewtons(u, unit), decimals)}</td>
                <td className="share">
                  <i className="bar" style={{ width: `${Math.max(1, share(u) * 100)}%` }} />
                  <span>{speech.percent(share(u))}</span>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}
