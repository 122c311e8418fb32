import type { GaugeRow } from "../../../../app/contract/recordViews.ts";
import type { Draft } from "../../../../app/contract/seriesViews.ts";
import { taperFit } from "../../../../app/verdict/taperFit.ts";
import { roleTexts } from "../../../../app/words/recordTexts.ts";
import { useCore } from "../../../state/CoreContext.ts";
import { hrefOf } from "../../../state/routeStore.ts";
import { useList } from "../../../state/useList.ts";
import { useRolesCount } from "../../../state/useRolesCount.ts";
import { type Choice, Picker } from "../../../ui/Picker.tsx";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { peopleTexts } from "../../people/peopleTexts.ts";
import { useReport } from "../../shell/useReport.ts";
import { changeSeries } from "../acts.ts";
import { measureTexts } from "../texts.ts";
import type { TagPart } from "./TagBar.tsx";

type Chosen = Exclude<TagPart, "check">;

/** Choosing a part of the tag. What fits the spindle's taper stands on top; what does not can still be chosen, and says so. */
export function TagPicker({
  part,
  draft,
  onClose,
}: {
  readonly part: Chosen;
  readonly draft: Draft;
  readonly onClose: () => void;
}) {
  const core = useCore();
  const report = useReport();
  const speech = useSpeech();
  const words = useWords(measureTexts);
  const people = useWords(peopleTexts);
  const roleWords = useWords(roleTexts);
  const rolesCount = useRolesCount();
  const spindles = useList("spindles").rows ?? [];
  const adapters = useList("adapters").rows ?? [];
  const gauges = useList("gauges").rows ?? [];
  const operators = useList("operators").rows ?? [];
  const taper = spindles.find((row) => row.spindle.spindleId === draft.tag.spindleId)?.spindle.taper;

  const doubtOf = (state: GaugeRow["proofState"], dueOn: string | undefined) => {
    if (state === "off") return words.foundOff;
    return state === "pastDue" && dueOn !== undefined ? words.pastDue(speech.plainDate(dueOn)) : undefined;
  };
  const kinds: Record<
    Chosen,
    {
      title: string;
      choices: Choice[];
      chosen: string | undefined;
      none?: string;
      empty: string;
      add: string;
      href: string;
    }
  > = {
    spindle: {
      title: words.chooseSpindle,
      choices: spindles
        .filter((row) => row.spindle.state === "inUse")
        .map(({ spindle }) => ({
          id: spindle.spindleId,
          name: spindle.name,
          about: [spindle.taper, spindle.machine, spindle.area].filter(Boolean).join(" · "),
        })),
      chosen: draft.tag.spindleId,
      empty: words.noneYetSpindle,
      add: words.addSpindle,
      href: hrefOf({ place: "spindles" }),
    },
    adapter: {
      title: words.chooseAdapter,
      choices: adapters
        .filter((row) => row.adapter.state === "inUse")
        .map(({ adapter }) => ({
          id: adapter.adapterId,
          name: adapter.name,
          about: adapter.taper,
          doubt: taper !== undefined && taperFit(taper, adapter.taper) !== "fits" ? words.otherTaper : undefined,
        }))
        .toSorted((a, b) => Number(a.doubt !== undefined) - Number(b.doubt !== undefined)),
      chosen: draft.tag.adapterId,
      none: words.noAdapter,
      empty: words.noneYetAdapter,
      add: words.addAdapter,
      href: hrefOf({ place: "gauges" }),
    },
    gauge: {
      title: words.chooseGauge,
      choices: gauges
        .filter((row) => row.gauge.state === "inUse")
        .map(({ gauge, proofState }) => ({
          id: gauge.gaugeId,
          name: gauge.name,
          about: gauge.serial ?? "",
          doubt: doubtOf(proofState, gauge.dueOn),
        })),
      chosen: draft.tag.gaugeId,
      empty: words.noneYetGauge,
      add: words.addGauge,
      href: hrefOf({ place: "gauges" }),
    },
    operator: {
      title: rolesCount ? people.whoTitle : words.chooseOperator,
      choices: operators
        .filter((operator) => operator.state === "inUse")
        .map(({ operatorId, name, role }) => ({ id: operatorId, name, about: roleWords[role] })),
      chosen: draft.tag.operatorId,
      none: rolesCount ? people.shiftEnd : words.noOperator,
      empty: words.noneYetOperator,
      add: words.addOperator,
      href: hrefOf({ place: "setup" }),
    },
  };
  const kind = kinds[part];
  const choose = (id: string | undefined) => {
    report(changeSeries(core, "series.tag", { [`${part}Id`]: id ?? null }));
    onClose();
  };
  return (
    <Picker
      title={kind.title}
      choices={kind.choices}
      chosen={kind.chosen}
      none={kind.none}
      onChoose={choose}
      onClose={onClose}
      empty={
        <p>
          {kind.empty}{" "}
          <a href={kind.href} onClick={onClose}>
            {kind.add}
          </a>
        </p>
      }
    />
  );
}
