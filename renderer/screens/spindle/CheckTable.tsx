import { useState } from "react";
import type { CheckRow, SpindlePage } from "../../../app/contract/recordViews.ts";
import { type ForceUnit, fromNewtons } from "../../../app/quantity/forceUnits.ts";
import { uncertaintyDecimals } from "../../../app/words/uncertaintyDecimals.ts";
import { useCore } from "../../state/CoreContext.ts";
import { hrefOf } from "../../state/routeStore.ts";
import { Button } from "../../ui/Button.tsx";
import { VerdictWord } from "../../ui/verdict/VerdictWord.tsx";
import { unitText } from "../../words/Speech.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { useReport } from "../shell/useReport.ts";
import { spindleTexts } from "./texts.ts";
import { useToolNames } from "./useToolNames.ts";

const PAGE = 100;

/** The checks, newest first; each opens with its readings. */
export function CheckTable({ page, unit }: { readonly page: SpindlePage; readonly unit: ForceUnit }) {
  const core = useCore();
  const report = useReport();
  const words = useWords(spindleTexts);
  const [earlier, setEarlier] = useState<{ rows: readonly CheckRow[]; more: boolean }>();
  const rows = [...page.checks, ...(earlier?.rows ?? [])];
  const more = earlier?.more ?? page.moreChecks;
  const load = async () => {
    const after = rows.at(-1)?.checkId;
    const input = {
      spindleId: page.row.spindle.spindleId,
      limit: PAGE,
      ...(after === undefined ? {} : { after }),
    };
    const answer = await report(core.client.call("checks.list", input));
    if (answer !== undefined) setEarlier({ rows: [...(earlier?.rows ?? []), ...answer.rows], more: answer.more });
  };
  if (rows.length === 0) return null;
  return (
    <section className="sheet tall" aria-labelledby="checks-title">
      <h2 id="checks-title" className="unseen">
        {words.checks}
      </h2>
      <div className="sideways">
        <table>
          <thead>
            <tr>
              <th scope="col">{words.colDate}</th>
              <th scope="col" className="num">
                {words.colValue(unitText(unit))}
              </th>
              <th scope="col" className="num">
                {words.colChange}
              </th>
              <th scope="col">{words.colVerdict}</th>
              <th scope="col">{words.colWith}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <CheckLine key={row.checkId} row={row} unit={unit} />
            ))}
          </tbody>
        </table>
      </div>
      {more && <Button onClick={load}>{words.more}</Button>}
    </section>
  );
}

function CheckLine({ row, unit }: { readonly row: CheckRow; readonly unit: ForceUnit }) {
  const speech = useSpeech();
  const words = useWords(spindleTexts);
  const tools = useToolNames();
  const { valueN, expandedN, dropFromBaseline: drop, voided } = row;
  const value = valueN === undefined ? undefined : fromNewtons(valueN, unit);
  const within = expandedN === undefined || !(expandedN > 0) ? undefined : fromNewtons(expandedN, unit);
  const decimals = within === undefined ? 2 : uncertaintyDecimals(within);
  return (
    <tr className={voided === undefined || voided === null ? undefined : "void"}>
      <th scope="row">
        <a href={hrefOf({ place: "spindle", spindleId: row.spindleId, checkId: row.checkId })}>
          {speech.date(row.measuredAtMs)}
        </a>
        {row.isBaseline && <small> {words.isBaseline}</small>}
        {voided !== undefined && voided !== null && <small> {words.voided(voided.reason)}</small>}
      </th>
      <td className="num">
        {value === undefined ? "–" : speech.number(value, decimals)}
        {within !== undefined && <span className="soft">{` ± ${speech.number(within, decimals)}`}</span>}
      </td>
      <td className="num">{drop === undefined ? "" : speech.percent(-drop, 1)}</td>
      <td>
        <VerdictWord verdict={row.verdict} />
      </td>
      <td>
        {[tools.gauge(row.gaugeId), tools.adapter(row.adapterId)].filter((name) => name !== undefined).join(" · ")}
        {row.source !== "measured" && <small> {words[`source.${row.source}`]}</small>}
      </td>
    </tr>
  );
}
