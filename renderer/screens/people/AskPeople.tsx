import { useState } from "react";
import { useStore } from "zustand";
import type { OperatorView } from "../../../app/contract/recordViews.ts";
import { may, type Right, rights } from "../../../app/people/rights.ts";
import { roleTexts } from "../../../app/words/recordTexts.ts";
import type { Ask } from "../../state/askStore.ts";
import { useCore } from "../../state/CoreContext.ts";
import { useList } from "../../state/useList.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { changeSeries } from "../measure/acts.ts";
import { useReport } from "../shell/useReport.ts";
import { PersonChoice } from "./PersonChoice.tsx";
import { PinDialog } from "./PinDialog.tsx";
import { peopleTexts } from "./peopleTexts.ts";

/** The question an act waits for, over whatever screen it came from. */
export function AskPeople() {
  const core = useCore();
  const open = useStore(core.ask, (state) => state.open);
  const rows = useList("operators").rows;
  if (open === undefined || rows === undefined) return null;
  const people = rows.filter((one) => one.state === "inUse");
  const { asks } = open;
  if (asks.what === "who") return <WhoIsOnShift ask={open} people={people} />;
  if (asks.what === "role") return <WhoMay ask={open} right={asks.right} people={people} />;
  if (asks.what !== "pin") return null;
  const { operatorId, right } = asks;
  const person = people.find((one) => one.operatorId === operatorId);
  if (person === undefined) return null;
  return (
    <PinDialog
      key={`${operatorId} ${right}`}
      person={person}
      right={right}
      onDone={() => open.settle(true)}
      onClose={() => open.settle(false)}
    />
  );
}

type Asking = { readonly ask: Ask; readonly people: readonly OperatorView[] };

function WhoIsOnShift({ ask, people }: Asking) {
  const core = useCore();
  const report = useReport();
  const words = useWords(peopleTexts);
  const likely = useStore(core.draft, (state) => state.draft?.tag.operatorId);
  const choose = async ({ operatorId }: OperatorView) =>
    ask.settle((await report(changeSeries(core, "series.tag", { operatorId }))) !== undefined);
  return (
    <PersonChoice
      title={words.whoTitle}
      why={words.whoWhy}
      people={people}
      likely={likely}
      onChoose={choose}
      onClose={() => ask.settle(false)}
    />
  );
}

function WhoMay({ ask, right, people }: Asking & { readonly right: Right }) {
  const core = useCore();
  const report = useReport();
  const speech = useSpeech();
  const words = useWords(peopleTexts);
  const roleWords = useWords(roleTexts);
  const [pinOf, setPinOf] = useState<OperatorView>();
  const close = () => ask.settle(false);
  if (pinOf !== undefined)
    return <PinDialog person={pinOf} right={right} onDone={() => ask.settle(true)} onClose={close} />;
  const choose = async (person: OperatorView) => {
    if (person.hasPin) setPinOf(person);
    else {
      const answer = core.client.call("people.confirm", { operatorId: person.operatorId, right });
      ask.settle((await report(answer)) !== undefined);
    }
  };
  return (
    <PersonChoice
      title={words.roleTitle}
      why={words.roleWhy(words[`act.${right}`], speech.list(rights[right].map((role) => roleWords[role])))}
      people={people.filter((one) => may(one.role, right))}
      empty={words.nobodyMay}
      onChoose={choose}
      onClose={close}
    />
  );
}
