import type { GaugeRow } from "../../../../app/contract/recordViews.ts";
import type { Draft } from "../../../../app/contract/seriesViews.ts";
import { taperFit } from "../../../../app/verdict/taperFit.ts";
import { roleTexts } from "../../../../app/words/recordTexts.ts";
import { useProgram } from "../../../state/CoreContext.ts";
import { useList } from "../../../state/useList.ts";
import { forceUnitOf } from "../../../words/Speech.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { measureTexts } from "../texts.ts";

type TagName = { readonly name: string | undefined; readonly about: string; readonly doubt?: boolean };

const dotted = (parts: readonly (string | undefined)[]) =>
  parts.filter((part) => part !== undefined && part !== "").join(" · ");

/** The names behind the tag's ids, with what makes one sure it is the right one, or doubt it. */
export function useTagNames(draft: Draft): Record<"spindle" | "adapter" | "gauge" | "operator", TagName> {
  const speech = useSpeech();
  const words = useWords(measureTexts);
  const roleWords = useWords(roleTexts);
  const unitShown = useProgram((state) => state.works?.unitShown);
  const { spindleId, adapterId, gaugeId, operatorId } = draft.tag;
  const spindle = useList("spindles").rows?.find((row) => row.spindle.spindleId === spindleId)?.spindle;
  const adapterRow = useList("adapters").rows?.find((row) => row.adapter.adapterId === adapterId);
  const gaugeRow = useList("gauges").rows?.find((row) => row.gauge.gaugeId === gaugeId);
  const operator = useList("operators").rows?.find((row) => row.operatorId === operatorId);
  const due = (dueOn: string | undefined, state: "none" | "current" | "pastDue") =>
    dueOn === undefined ? undefined : (state === "pastDue" ? words.pastDue : words.due)(speech.plainDate(dueOn));

  const adapter = adapterRow?.adapter;
  const wrongTaper =
    adapter !== undefined && spindle !== undefined && taperFit(spindle.taper, adapter.taper) !== "fits";
  return {
    spindle: { name: spindle?.name, about: dotted([spindle?.taper, spindle?.area]) },
    adapter: {
      name: adapter?.name,
      about:
        adapter === undefined
          ? ""
          : dotted([
              wrongTaper ? `${words.otherTaper}: ${adapter.taper}` : undefined,
              adapter.assumed ? words.scaleAssumed : `× ${speech.number(adapter.scale, 3)}`,
              due(adapter.dueOn, adapterRow?.proofState ?? "none"),
            ]),
      doubt: wrongTaper || adapterRow?.proofState === "pastDue",
    },
    gauge: {
      name: gaugeRow?.gauge.name,
      about:
        gaugeRow === undefined
          ? ""
          : dotted([
              // What is past due fills the line: the doubt must not be the part that is cut off.
              doubtful(gaugeRow) ? undefined : speech.force(gaugeRow.gauge.capacityN, forceUnitOf(unitShown), 1000),
              gaugeRow.proofState === "off" ? words.foundOff : undefined,
              gaugeRow.proofState === "off"
                ? undefined
                : gaugeRow.gauge.dueOn === undefined
                  ? words.notProved
                  : due(gaugeRow.gauge.dueOn, gaugeRow.proofState),
            ]),
      doubt: gaugeRow !== undefined && doubtful(gaugeRow),
    },
    operator: { name: operator?.name, about: operator === undefined ? "" : roleWords[operator.role] },
  };
}

const doubtful = ({ proofState }: GaugeRow) => proofState === "pastDue" || proofState === "off";
