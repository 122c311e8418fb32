import type { Draft } from "../../../../app/contract/seriesViews.ts";
import { useList } from "../../../state/useList.ts";
import { Caution } from "../../../ui/feedback/Caution.tsx";
import { useWords } from "../../../words/SpeechContext.tsx";
import { roundLeadTexts } from "./texts.ts";

/** Said before the first clamping of a stop that takes another adapter than the one on the gauge, with what to mind. */
export function AdapterChange({ draft, taper }: { readonly draft: Draft; readonly taper: string | undefined }) {
  const words = useWords(roundLeadTexts);
  const adapters = useList("adapters").rows;
  const { adapterBefore, tag } = draft;
  const begun = draft.cycles.some((cycle) => cycle.dropped === undefined) || draft.typed != null;
  if (tag.spindleId == null || begun || (tag.adapterId != null && tag.adapterId === adapterBefore)) return null;
  const nameOf = (id: string) => adapters?.find((row) => row.adapter.adapterId === id)?.adapter.name ?? "";
  if (tag.adapterId == null) {
    return (
      <div className="adapter-change" role="alert">
        <b>{words.noAdapterFits(taper ?? "")}</b>
      </div>
    );
  }
  return (
    <div className="adapter-change" role="alert">
      <b>
        {adapterBefore == null
          ? words.takeAdapter(nameOf(tag.adapterId))
          : words.changeAdapter(nameOf(adapterBefore), nameOf(tag.adapterId))}
      </b>
      <Caution title={words.changeTitle}>{words.changeCare}</Caution>
    </div>
  );
}
