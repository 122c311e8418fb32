import { type FormEvent, useState } from "react";
import type { RunningProof } from "../../../../app/contract/proofViews.ts";
import { useProgram } from "../../../state/CoreContext.ts";
import { Button } from "../../../ui/Button.tsx";
import { useWords } from "../../../words/SpeechContext.tsx";
import type { Act } from "../lead/useLeadActs.ts";
import { AboutFields } from "../plan/AboutFields.tsx";
import { aboutDraftOf, aboutOf } from "../plan/aboutDraft.ts";
import { aboutTexts } from "../plan/aboutTexts.ts";
import { fileTexts } from "./fileTexts.ts";

/** What the report says beside the readings, while it can still be changed. */
export function AboutSection({ proof, act }: { readonly proof: RunningProof; readonly act: Act }) {
  const words = useWords(fileTexts);
  const about = useWords(aboutTexts);
  const rule = useProgram((state) => state.works?.rule.rule ?? "iso14253");
  const [draft, setDraft] = useState(() => aboutDraftOf(proof.about, proof.operatorId, rule));
  const [tried, setTried] = useState(false);
  const [saved, setSaved] = useState(false);
  const save = async (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    const { said, faults } = aboutOf(draft);
    if (faults.size === 0) setSaved(await act("proof.describe", said));
  };
  return (
    <details className="sheet part">
      <summary>{about.title}</summary>
      <form className="stack" noValidate onSubmit={save}>
        <AboutFields
          draft={draft}
          tried={tried}
          method={proof.plan.method}
          onDraft={(part) => {
            setDraft({ ...draft, ...part });
            setSaved(false);
          }}
        />
        <div className="row">
          <Button type="submit">{words.saveAbout}</Button>
          <span role="status">{saved && words.aboutSaved}</span>
        </div>
      </form>
    </details>
  );
}
