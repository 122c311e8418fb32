import type { Rejudged } from "../../../app/contract/recordViews.ts";
import { verdictTexts } from "../../../app/words/verdictTexts.ts";
import { useCore, useProgram } from "../../state/CoreContext.ts";
import { hrefOf } from "../../state/routeStore.ts";
import { useList } from "../../state/useList.ts";
import { Button } from "../../ui/Button.tsx";
import { forceUnitOf } from "../../words/Speech.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { JobLine } from "./JobLine.tsx";
import { recordsTexts } from "./texts.ts";
import { useJob } from "./useJob.ts";

const SHOWN = 25;
const order = ["stop", "act", "cannotTell", "watch", "good"] as const;

/** What today's limits and rules would say of everything filed, beside the filed verdicts. */
export function RejudgeSection() {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(recordsTexts);
  const { job, start, stop } = useJob("rejudge");
  // What `checks.rejudge` finishes with.
  const found = job?.state === "finished" ? (job.result as Rejudged | null | undefined) : undefined;
  const total = found?.counts.reduce((sum, { count }) => sum + count, 0) ?? 0;
  return (
    <section className="sheet" aria-labelledby="rejudge-title">
      <h2 id="rejudge-title">{words.rejudge}</h2>
      <p>{words.rejudgeWhy}</p>
      <div className="row">
        <Button busy={job?.state === "running"} onClick={() => start(core.client.call("checks.rejudge", {}))}>
          {words.rejudgeAct}
        </Button>
      </div>
      <JobLine job={job} running={words.rejudging} onStop={stop}>
        {found?.changedCount === 0
          ? words.rejudgedSame(speech.number(total))
          : words.rejudged(speech.number(found?.changedCount ?? 0), speech.number(total))}
        {found != null && found.notJudged > 0 && ` ${words.notJudged(speech.number(found.notJudged))}`}
      </JobLine>
      {found != null && found.changedCount > 0 && (
        <>
          <CountTable counts={found.counts} />
          <ChangedTable changed={found.changed} count={found.changedCount} />
        </>
      )}
    </section>
  );
}

function CountTable({ counts }: Pick<Rejudged, "counts">) {
  const speech = useSpeech();
  const words = useWords(recordsTexts);
  const verdicts = useWords(verdictTexts);
  const filed = order.filter((verdict) => counts.some((c) => c.filed === verdict));
  const today = order.filter((verdict) => counts.some((c) => c.today === verdict));
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">{words.filedAs}</th>
          {today.map((verdict) => (
            <th scope="col" className="num" key={verdict}>
              {words.todayAs(verdicts[verdict])}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {filed.map((row) => (
          <tr key={row}>
            <th scope="row">{verdicts[row]}</th>
            {today.map((column) => {
              const count = counts.find((c) => c.filed === row && c.today === column)?.count ?? 0;
              return (
                <td className="num" key={column}>
                  {count === 0 ? "" : speech.number(count)}
                </td>
              );
            })}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function ChangedTable({ changed, count }: { readonly changed: Rejudged["changed"]; readonly count: number }) {
  const speech = useSpeech();
  const words = useWords(recordsTexts);
  const verdicts = useWords(verdictTexts);
  const rows = useList("spindles").rows;
  const worksUnit = useProgram((state) => state.works?.unitShown ?? "kN");
  const spindleOf = (spindleId: string) => rows?.find((one) => one.spindle.spindleId === spindleId)?.spindle;
  const shown = changed.slice(0, SHOWN);
  return (
    <>
      <table>
        <caption>{words.changedFirst}</caption>
        <tbody>
          {shown.map(({ checkId, spindleId, measuredAtMs, valueN, filed, today }) => {
            const spindle = spindleOf(spindleId);
            return (
              <tr key={checkId}>
                <th scope="row">
                  <a href={hrefOf({ place: "spindle", spindleId, checkId })}>
                    {spindle?.name ?? ""} · {speech.date(measuredAtMs)}
                  </a>
                </th>
                <td className="num">
                  {valueN == null ? "" : speech.force(valueN, forceUnitOf(spindle?.unitShown ?? worksUnit))}
                </td>
                <td>{words.fromTo(verdicts[filed], verdicts[today])}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {count > shown.length && <p className="soft">{words.moreChanged(speech.number(count - shown.length))}</p>}
    </>
  );
}
