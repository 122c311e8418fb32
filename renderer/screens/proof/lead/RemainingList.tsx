import { useEffect, useRef } from "react";
import type { ProofActView } from "../../../../app/contract/proofViews.ts";
import type { ForceUnit } from "../../../../app/quantity/forceUnits.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { actTexts } from "../words/actTexts.ts";
import { actShort } from "../words/actWords.ts";
import { leadTexts } from "./leadTexts.ts";
import "./remaining.css";

/** Everything there is to do, run by run: what is done with its figure, what is now, what is left. A touch on what is done repeats it. */
export function RemainingList({
  acts,
  unit,
  onRepeat,
}: {
  readonly acts: readonly ProofActView[];
  readonly unit: ForceUnit;
  readonly onRepeat?: (index: number) => void;
}) {
  const speech = useSpeech();
  const words = useWords(leadTexts);
  const said = useWords(actTexts);
  const now = useRef<HTMLLIElement>(null);
  const current = acts.find(({ standing }) => standing === "next")?.index;
  // biome-ignore lint/correctness/useExhaustiveDependencies: whenever another act is next, it is brought in sight
  useEffect(() => {
    const [item, list] = [now.current, now.current?.closest<HTMLElement>(".remaining")];
    // Only the list scrolls; the page under the hand stays where it is.
    if (item && list) list.scrollTop = item.offsetTop - list.clientHeight / 3;
  }, [current]);
  const groups = [...Map.groupBy(acts, ({ act }) => (act.kind === "cautions" ? "" : act.run))];
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a stretch that scrolls is reached by the keys too
    <section className="remaining sheet" aria-label={words.list} tabIndex={0}>
      {groups.map(([run, members]) => (
        <div key={run}>
          {run !== "" && <h3>{said.run(run)}</h3>}
          <ol>
            {members.map(({ index, act, standing, taking, repeats, lastReason }) => {
              const name = actShort(act, speech, unit);
              const figure = taking === undefined ? "" : speech.forceFigure(taking.indicationN, unit, 1);
              return (
                <li
                  key={index}
                  ref={standing === "next" ? now : undefined}
                  className={standing}
                  aria-current={standing === "next" ? "step" : undefined}
                >
                  <i aria-hidden="true" />
                  {standing === "done" && act.kind === "read" && onRepeat !== undefined ? (
                    <button type="button" aria-label={words.repeatStep(name)} onClick={() => onRepeat(index)}>
                      {name}
                    </button>
                  ) : (
                    <span>{name}</span>
                  )}
                  <span className="num">
                    {figure}
                    {figure === "" && standing === "done" && <span className="unseen">{words.done}</span>}
                    {repeats > 0 && <small title={lastReason}>{words.repeated(String(repeats))}</small>}
                  </span>
                </li>
              );
            })}
          </ol>
        </div>
      ))}
    </section>
  );
}
