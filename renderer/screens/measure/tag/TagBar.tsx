import type { Draft } from "../../../../app/contract/seriesViews.ts";
import { checkReasonTexts } from "../../../../app/words/recordTexts.ts";
import { useRolesCount } from "../../../state/useRolesCount.ts";
import { useWords } from "../../../words/SpeechContext.tsx";
import { measureTexts } from "../texts.ts";
import { useTagNames } from "./useTagNames.ts";
import "./tagBar.css";

export type TagPart = "spindle" | "adapter" | "gauge" | "operator" | "check";
export const tagKeys: Readonly<Record<TagPart, string>> = {
  spindle: "s",
  adapter: "a",
  gauge: "g",
  operator: "o",
  check: "n",
};

/** Whom and what the series belongs to, always in sight; each part opens its choice. */
export function TagBar({ draft, onOpen }: { readonly draft: Draft; readonly onOpen: (part: TagPart) => void }) {
  const words = useWords(measureTexts);
  const reasons = useWords(checkReasonTexts);
  const names = useTagNames(draft);
  const rolesCount = useRolesCount();
  const warm = draft.spindleWarm === undefined ? words.warmOrCold : draft.spindleWarm ? words.warm : words.cold;
  const parts: readonly {
    part: TagPart;
    name: string | undefined;
    about: string;
    doubt?: boolean;
    wanted?: boolean;
  }[] = [
    { part: "spindle", ...names.spindle, wanted: true },
    { part: "adapter", ...names.adapter },
    { part: "gauge", ...names.gauge, wanted: true },
    { part: "operator", ...names.operator, wanted: rolesCount },
    { part: "check", name: reasons[draft.reason], about: draft.note === "" ? warm : `${warm} · ${draft.note}` },
  ];
  return (
    <section className="tags sheet" aria-label={words.check}>
      {parts.map(({ part, name, about, doubt, wanted }) => (
        <button
          key={part}
          type="button"
          className={name === undefined && wanted === true ? "wanted" : undefined}
          aria-keyshortcuts={tagKeys[part].toUpperCase()}
          onMouseDown={(event) => event.preventDefault()}
          onClick={() => onOpen(part)}
        >
          <span className="what">
            {words[part]}
            <span className="key" aria-hidden="true">
              {tagKeys[part].toUpperCase()}
            </span>
          </span>
          <b className={name === undefined ? "soft" : undefined}>{name ?? words.notChosen}</b>
          <small className={doubt === true ? "doubt" : undefined}>{about}</small>
        </button>
      ))}
    </section>
  );
}
