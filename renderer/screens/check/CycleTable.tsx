import type { FiledCycle } from "../../../app/ledger/check.ts";
import { type ForceUnit, fromNewtons } from "../../../app/quantity/forceUnits.ts";
import { flagTexts } from "../../../app/words/recordTexts.ts";
import { SaveTable } from "../../ui/SaveTable.tsx";
import { unitText } from "../../words/Speech.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { cycleRows } from "./cycleRows.ts";
import { checkTexts } from "./texts.ts";

/** The clampings as they were filed. */
export function CycleTable({ cycles, unit }: { readonly cycles: readonly FiledCycle[]; readonly unit: ForceUnit }) {
  const speech = useSpeech();
  const words = useWords(checkTexts);
  const flags = useWords(flagTexts);
  if (cycles.length === 0) return null;
  const name = unitText(unit);
  const force = (forceN: number | null, decimals = 2) =>
    forceN === null ? "–" : speech.number(fromNewtons(forceN, unit), decimals);
  const share = (fraction: number | null) => (fraction === null ? "–" : speech.percent(fraction, 1));
  return (
    <section className="sheet tall">
      <div className="row head">
        <h2>{words.cycles}</h2>
        <SaveTable name="clampings" of={words.cycles} table={() => cycleRows(cycles, unit, speech)} />
      </div>
      <div className="sideways">
        <table>
          <thead>
            <tr>
              <th scope="col">{words.colNo}</th>
              <th scope="col" className="num">
                {words.colSettled(name)}
              </th>
              <th scope="col" className="num">
                {words.colPeak(name)}
              </th>
              <th scope="col" className="num">
                {words.colOvershoot}
              </th>
              <th scope="col" className="num">
                {words.colRise}
              </th>
              <th scope="col" className="num">
                {words.colNoise(name)}
              </th>
              <th scope="col" className="num">
                {words.colCreep}
              </th>
              <th scope="col" className="num">
                {words.colZero(name)}
              </th>
              <th scope="col">{words.colFlags}</th>
            </tr>
          </thead>
          <tbody>
            {cycles.map((cycle, i) => (
              <tr key={cycle.cycleId} className={cycle.dropped === null ? undefined : "void"}>
                <th scope="row">{i + 1}</th>
                <td className="num">{force(cycle.settledN)}</td>
                <td className="num">{force(cycle.peakN)}</td>
                <td className="num">{share(cycle.overshoot)}</td>
                <td className="num">
                  {cycle.riseTimeS === null ? "–" : words.milliseconds(speech.number(cycle.riseTimeS * 1000))}
                </td>
                <td className="num">{force(cycle.noiseN, 3)}</td>
                <td className="num">{cycle.creep === null ? "–" : speech.percent(cycle.creep, 2)}</td>
                <td className="num">{force(cycle.zeroN)}</td>
                <td>
                  {[
                    ...cycle.flags.map((flag) => flags[flag]),
                    ...(cycle.dropped === null
                      ? []
                      : [cycle.dropped.reason === "" ? words.droppedPlain : words.dropped(cycle.dropped.reason)]),
                  ].join(", ")}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}
