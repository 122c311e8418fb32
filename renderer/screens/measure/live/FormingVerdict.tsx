import { useState } from "react";
import { useStore } from "zustand";
import type { Draft } from "../../../../app/contract/seriesViews.ts";
import type { ForceUnit } from "../../../../app/quantity/forceUnits.ts";
import { reasonsText } from "../../../../app/words/reasonSentence.ts";
import { remarkWords } from "../../../../app/words/remarkWords.ts";
import { settlingTexts, settlingWords } from "../../../../app/words/settlingWords.ts";
import { useCore } from "../../../state/CoreContext.ts";
import { Button } from "../../../ui/Button.tsx";
import { Dialog } from "../../../ui/Dialog.tsx";
import { Caution } from "../../../ui/feedback/Caution.tsx";
import { VerdictWord } from "../../../ui/verdict/VerdictWord.tsx";
import { commonTexts } from "../../../words/commonTexts.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { BudgetFigures } from "../../check/BudgetTable.tsx";
import { measureTexts } from "../texts.ts";
import { Weakened } from "./Weakened.tsx";

/** What the verdict would be now, why, and what weakens it. */
export function FormingVerdict({ draft, unit }: { readonly draft: Draft; readonly unit: ForceUnit }) {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(measureTexts);
  const loaded = useStore(core.live, ({ live }) => live.word === "holding" || live.word === "rising");
  const settling = useWords(settlingTexts);
  const common = useWords(commonTexts);
  const [budgetShown, setBudgetShown] = useState(false);
  const { forming } = draft;
  return (
    <div className="forming">
      {forming === undefined || draft.tag.spindleId === undefined ? (
        <p className="step">{draft.tag.spindleId === undefined ? words.nextSpindle : words.formingSoon}</p>
      ) : (
        <>
          <div className="verdict-line">
            <VerdictWord verdict={forming.judgement.verdict} size="large" />
            <Button kind="quiet" onClick={() => setBudgetShown(true)}>
              {words.showBudgetShort}
            </Button>
          </div>
          <p className="why">{reasonsText(forming.judgement.reasons, speech, unit, forming.budget.expandedN)}</p>
          {forming.settling !== undefined && forming.settling !== null && (
            <p className="why">{settlingWords(forming.settling, speech, unit)}</p>
          )}
          {(forming.judgement.verdict === "stop" || forming.judgement.verdict === "cannotTell") && (
            <Caution title={words.cautionTitle}>{settling[forming.judgement.verdict]}</Caution>
          )}
          {budgetShown && (
            <Dialog
              wide
              title={words.showBudget}
              onClose={() => setBudgetShown(false)}
              onSubmit={() => setBudgetShown(false)}
              acts={<Button type="submit">{common.close}</Button>}
            >
              <BudgetFigures budget={forming.budget} unit={unit} />
              {forming.weakenedBy.length > 0 && (
                <>
                  <h3>{words.weakened}</h3>
                  <ul>
                    {forming.weakenedBy.map((remark) => (
                      <li key={remark.code + (remark.about ?? "")}>{remarkWords(remark, speech, unit)}</li>
                    ))}
                  </ul>
                </>
              )}
            </Dialog>
          )}
          {/* With the gauge clamped, what the hand does next goes before what weakens the figure. */}
          {!loaded && <Weakened by={forming.weakenedBy} warnings={draft.warnings} unit={unit} />}
        </>
      )}
      {loaded && <Caution title={words.beforeRelease}>{words.releaseHold}</Caution>}
    </div>
  );
}
