import type { ReactNode } from "react";
import { useProgram } from "../../../state/CoreContext.ts";
import { hrefOf } from "../../../state/routeStore.ts";
import { forceUnitOf } from "../../../words/Speech.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { useSpindlePage } from "../../spindle/useSpindlePage.ts";
import { statisticsHere } from "./statisticsHere.ts";
import { statisticsTexts } from "./statisticsTexts.ts";

/** The statistics explained; with a spindle given, by its own figures. */
export function StatisticsPage({ spindleId }: { readonly spindleId: string | undefined }) {
  return spindleId === undefined ? <Explained /> : <WithSpindle spindleId={spindleId} />;
}

function WithSpindle({ spindleId }: { readonly spindleId: string }) {
  const speech = useSpeech();
  const words = useWords(statisticsTexts);
  const worksUnit = useProgram((state) => state.works?.unitShown ?? "kN");
  const { page } = useSpindlePage(spindleId);
  if (page === undefined) return <Explained />;
  const { name, unitShown } = page.row.spindle;
  const here = statisticsHere(page, forceUnitOf(unitShown ?? worksUnit), speech);
  return (
    <Explained here={here} lead={words.with(name)}>
      <a href={hrefOf({ place: "spindle", spindleId })}>{words.toSpindle(name)}</a>
    </Explained>
  );
}

function Explained({
  here = {},
  lead,
  children,
}: {
  readonly here?: ReturnType<typeof statisticsHere>;
  readonly lead?: string;
  readonly children?: ReactNode;
}) {
  const words = useWords(statisticsTexts);
  const part = (title: string, text: string, figures: readonly string[] = []) => (
    <section>
      <h3>{title}</h3>
      <p className="why">{text}</p>
      {figures.map((figure) => (
        <p key={figure} className="why here">
          {figure}
        </p>
      ))}
    </section>
  );
  return (
    <>
      <h2>{words.title}</h2>
      <p className="why">
        {lead ?? words.without} {children}
      </p>
      {part(words.slopeTitle, words.slope, here.slope)}
      {part(words.kendallTitle, words.kendall, here.kendall)}
      {part(words.forecastTitle, words.forecast, here.forecast)}
      {part(words.guardTitle, words.guard, here.guard)}
      {part(words.chanceTitle, words.chance)}
    </>
  );
}
