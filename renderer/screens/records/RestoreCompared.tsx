import { useState } from "react";
import type { RestoreTried } from "../../../app/contract/backupViews.ts";
import { useCore } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { Dialog } from "../../ui/Dialog.tsx";
import { Caution } from "../../ui/feedback/Caution.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { useReport } from "../shell/useReport.ts";
import { restoreTexts } from "./restoreTexts.ts";

/** What the copy holds beside the records, and the act that puts it in their place. */
export function RestoreCompared({ tried, onLeave }: { readonly tried: RestoreTried; readonly onLeave: () => void }) {
  const core = useCore();
  const report = useReport();
  const speech = useSpeech();
  const words = useWords(restoreTexts);
  const [sure, setSure] = useState(false);
  const { file, entries, chains, newestAt } = tried;
  const until = newestAt === undefined ? "–" : speech.dateTime(Date.parse(newestAt));
  const leave = async () => {
    if ((await report(core.client.call("restore.forget", { file }))) !== undefined) onLeave();
  };
  const swap = async () => {
    setSure(false);
    if ((await report(core.client.call("restore.swap", { file }))) !== undefined) core.loadAnew();
  };
  return (
    <div className="stack">
      <p>{words.found(speech.number(entries), until)}</p>
      <Loss tried={tried} />
      {chains.length > 0 && (
        <div className="scroll">
          <table>
            <thead>
              <tr>
                <th scope="col">{words.colChain}</th>
                <th scope="col">{words.colHere}</th>
                <th scope="col">{words.colThere}</th>
                <th scope="col">{words.colSame}</th>
              </tr>
            </thead>
            <tbody>
              {chains.map(({ origin, here, there, same }) => (
                <tr key={origin}>
                  <th scope="row">{origin.slice(0, 8)}</th>
                  <td>{here}</td>
                  <td>{there}</td>
                  <td>{same}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      <div className="row">
        <Button onClick={() => setSure(true)}>{words.swap}</Button>
        <Button onClick={leave}>{words.leave}</Button>
      </div>
      {sure && <Sure tried={tried} onSwap={swap} onClose={() => setSure(false)} />}
    </div>
  );
}

function Loss({ tried: { lost, lostChecks, chains } }: { readonly tried: RestoreTried }) {
  const speech = useSpeech();
  const words = useWords(restoreTexts);
  if (lost === undefined || lost === null) return <p>{words.cannotCompare}</p>;
  return (
    <p>
      {chains.every(({ same }) => same === 0) && `${words.otherChain} `}
      {lost === 0 ? words.nothingLost : words.lost(speech.number(lost), speech.number(lostChecks ?? 0))}
    </p>
  );
}

function Sure({
  tried,
  onSwap,
  onClose,
}: {
  readonly tried: RestoreTried;
  readonly onSwap: () => void;
  readonly onClose: () => void;
}) {
  const words = useWords(restoreTexts);
  const common = useWords(commonTexts);
  return (
    <Dialog
      title={words.sureTitle}
      onClose={onClose}
      onSubmit={onSwap}
      acts={
        <>
          <Button kind="main" onClick={onClose}>
            {common.cancel}
          </Button>
          <Button type="submit">{words.swapNow}</Button>
        </>
      }
    >
      <Caution title={words.caution}>{words.cautionWhy}</Caution>
      <Loss tried={tried} />
      <p>{words.keptWhy}</p>
    </Dialog>
  );
}
