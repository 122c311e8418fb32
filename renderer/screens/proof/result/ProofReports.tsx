import type { ProofPage } from "../../../../app/contract/proofViews.ts";
import { useCore } from "../../../state/CoreContext.ts";
import { Button } from "../../../ui/Button.tsx";
import { useWords } from "../../../words/SpeechContext.tsx";
import { ReportAct } from "../../records/ReportAct.tsx";
import { saveFile } from "../../rounds/saveFile.ts";
import { useReport } from "../../shell/useReport.ts";
import { fileTexts } from "./fileTexts.ts";

/** A filed proof for others: the report on paper, and its figures for other programs. */
export function ProofReports({ page }: { readonly page: ProofPage }) {
  const core = useCore();
  const report = useReport();
  const words = useWords(fileTexts);
  const { proofId } = page.proof;
  const data = async (as: "csv" | "json") => {
    const file = await report(core.client.call("proofs.data", { proofId, as }));
    if (file !== undefined) saveFile(file);
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset is for what is sent; these are acts
    <div className="row" role="group" aria-label={words.reports}>
      <ReportAct of={{ what: "proof", proofId }} />
      <Button onClick={() => data("csv")}>{words.csv}</Button>
      <Button onClick={() => data("json")}>{words.json}</Button>
    </div>
  );
}
