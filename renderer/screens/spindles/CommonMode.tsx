import type { SharedMove } from "../../../app/trend/commonMode.ts";
import { hrefOf } from "../../state/routeStore.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { useToolNames } from "../spindle/useToolNames.ts";
import { spindlesTexts } from "./texts.ts";

/** A gauge or adapter whose spindles moved together is looked at before any spindle is taken apart. */
export function CommonMode({ moves }: { readonly moves: readonly SharedMove[] }) {
  const speech = useSpeech();
  const words = useWords(spindlesTexts);
  const tools = useToolNames();
  const nameOf = ({ by, id }: { readonly by: "gauge" | "adapter"; readonly id: string }) => tools[by](id) ?? "?";
  return moves.map((move) => {
    const moved = move.shift < 0 ? words.fellTogether : words.roseTogether;
    const others = move.or.map(nameOf);
    return (
      <section key={`${move.by}${move.id}`} className="common-mode" aria-label={words.lookAtGauge(nameOf(move))}>
        <p>
          <b>{words.lookAtGauge(nameOf(move))}</b>{" "}
          {moved(
            move.spindleIds.length,
            move.spindles,
            speech.date(move.sinceMs),
            speech.percent(Math.abs(move.shift), 1),
          )}
          {others.length > 0 && ` ${words.orOther(speech.list(others))}`}
        </p>
        <p>
          {move.by === "gauge" ? words.proveGauge : words.proveAdapter}{" "}
          <a href={hrefOf({ place: "gauges" })}>{words.toGauges}</a>
        </p>
      </section>
    );
  });
}
