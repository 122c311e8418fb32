import { type ForceUnit, fromNewtons, newtonsPerUnit } from "../../../../app/quantity/forceUnits.ts";
import { unitText } from "../../../words/Speech.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { resultTexts } from "./resultTexts.ts";
import type { ShownResult } from "./ShownResult.ts";

/** The fitted curve in the unit shown, with what its statistics say of it. */
export function CurveSection({ shown, unit }: { readonly shown: ShownResult; readonly unit: ForceUnit }) {
  const speech = useSpeech();
  const words = useWords(resultTexts);
  const { fit, lackOfFit, lowerLimitFactorN, lowerLimitsN } = shown.result;
  if (fit === null) return null;
  const scientific = new Intl.NumberFormat(speech.locale, { maximumSignificantDigits: 8, useGrouping: false });
  const figure = (value: number) => scientific.format(value).replace("-", "\u2212");
  // Both axes change their unit: a term of power k by the unit to k - 1.
  const inUnit = (value: number, k: number) => value * newtonsPerUnit[unit] ** (k - 1);
  const force = (forceN: number) => `${figure(Number(fromNewtons(forceN, unit).toPrecision(4)))} ${unitText(unit)}`;
  const odds = (p: number) => (p < 0.001 ? `< ${speech.number(0.001, 3)}` : speech.number(p, 3));
  return (
    <section className="sheet tall" aria-labelledby="curve-title">
      <h2 id="curve-title">{words.curve}</h2>
      <p className="small">{words.curveIs(unitText(unit))}</p>
      <div className="sideways">
        <table>
          <thead>
            <tr>
              <th scope="col">{words.colTerm}</th>
              <th scope="col" className="num">
                {words.colCoefficient}
              </th>
              <th scope="col" className="num">
                {words.colSd}
              </th>
            </tr>
          </thead>
          <tbody>
            {fit.coefficients.map((c, k) =>
              k === 0 && !fit.constant ? null : (
                // biome-ignore lint/suspicious/noArrayIndexKey: a coefficient is its power
                <tr key={k}>
                  <th scope="row">{k === 0 ? words.constant : k === 1 ? "x" : <>x{powers[k] ?? `^${k}`}</>}</th>
                  <td className="num">{figure(inUnit(c, k))}</td>
                  <td className="num">{figure(Number(inUnit(fit.coefficientSd[k] ?? 0, k).toPrecision(3)))}</td>
                </tr>
              ),
            )}
          </tbody>
        </table>
      </div>
      <p className="small">
        {words.fitIs(force(fit.residualSdN), String(fit.residualDf), speech.number(fit.rSquared, 8))}{" "}
        {lackOfFit !== null &&
          words.lack(lackOfFit.f === null ? "∞" : speech.number(lackOfFit.f, 2), odds(lackOfFit.p))}{" "}
        {lowerLimitFactorN !== null &&
          lowerLimitsN !== null &&
          words.lowerLimit(force(lowerLimitFactorN), force(lowerLimitsN.AA), force(lowerLimitsN.A))}
      </p>
    </section>
  );
}

const powers = ["", "", "²", "³", "⁴", "⁵", "⁶"];
