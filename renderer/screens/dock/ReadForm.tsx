import { useEffect, useState } from "react";
import { useStore } from "zustand";
import type { DockingView, RoundView } from "../../../app/contract/roundViews.ts";
import { useCore } from "../../state/CoreContext.ts";
import { useList } from "../../state/useList.ts";
import { Button } from "../../ui/Button.tsx";
import { Choices } from "../../ui/field/Choices.tsx";
import { FileField } from "../../ui/field/FileField.tsx";
import { SelectField } from "../../ui/field/SelectField.tsx";
import { TextField } from "../../ui/field/TextField.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { useReport } from "../shell/useReport.ts";
import { FormatChoice } from "./FormatChoice.tsx";
import { SheetForm } from "./SheetForm.tsx";
import { dockTexts } from "./texts.ts";
import { useReading } from "./useReading.tsx";

/** Which round, which gauge, and where the readings come from. */
export function ReadForm({
  roundId,
  scannedGauge,
  formatsKept,
  onRead,
}: {
  readonly roundId: string | undefined;
  /** Chosen by its label. */
  readonly scannedGauge: string | undefined;
  /** Counts ways of reading that were kept meanwhile. */
  readonly formatsKept: number;
  readonly onRead: (view: DockingView) => void;
}) {
  const core = useCore();
  const report = useReport();
  const words = useWords(dockTexts);
  const gauges = (useList("gauges").rows ?? []).filter(({ gauge }) => gauge.state === "inUse");
  const link = useStore(core.link, (state) => state.link);
  const [rounds, setRounds] = useState<readonly RoundView[]>([]);
  const [chosenRound, setChosenRound] = useState(roundId ?? "");
  const [chosenGauge, setChosenGauge] = useState<string>();
  const [from, setFrom] = useState<"file" | "port" | "sheet">("file");
  const [request, setRequest] = useState("DUMP");
  const [formatId, setFormatId] = useState("");
  const { busy, line, take } = useReading(onRead);
  useEffect(() => {
    report(core.client.call("rounds.list", {})).then((list) => setRounds(list ?? []));
  }, [core, report]);
  useEffect(() => {
    if (scannedGauge !== undefined) setChosenGauge(scannedGauge);
  }, [scannedGauge]);
  const open = rounds.filter((r) => r.state === "open" || r.roundId === roundId);
  const round = open.find((r) => r.roundId === chosenRound);
  const gaugeId = chosenGauge ?? round?.gaugeId ?? "";
  const about = {
    ...(round === undefined ? {} : { roundId: round.roundId }),
    ...(gaugeId === "" ? {} : { gaugeId }),
    ...(formatId === "" || from === "sheet" ? {} : { formatId }),
  };
  const readFile = async (file: File) => {
    const text = await file.text();
    await take(() => core.client.call("docking.read", { text, fileName: file.name, ...about }));
  };
  const source = link?.source?.kind === "serial" || link?.source?.kind === "tcp" ? link.source : undefined;
  const fetchIt = async () => {
    if (source === undefined) return;
    const asked = request.trim() === "" ? {} : { request: `${request.trim()}\r` };
    await take(async () => {
      await core.client.call("link.close", {}); // a port has one reader
      return core.client.call("docking.fetch", { source, ...asked, ...about });
    });
  };
  return (
    <section className="sheet form" aria-label={words.from}>
      <SelectField
        label={words.round}
        value={round === undefined ? "" : chosenRound}
        options={[
          { value: "", label: words.noRound },
          ...open.map((r) => ({ value: r.roundId, label: `${r.name}, ${r.on}` })),
        ]}
        onChoose={setChosenRound}
      />
      <SelectField
        label={words.gauge}
        value={gaugeId}
        options={[
          { value: "", label: words.noGauge },
          ...gauges.map(({ gauge }) => ({ value: gauge.gaugeId, label: gauge.name })),
        ]}
        onChoose={setChosenGauge}
      />
      <Choices
        label={words.from}
        value={from}
        options={(["file", "port", "sheet"] as const).map((value) => ({ value, label: words[value] }))}
        onChoose={setFrom}
      />
      {from !== "sheet" && <FormatChoice chosen={formatId} keptCount={formatsKept} onChoose={setFormatId} />}
      {from === "file" && (
        <FileField
          label={words.chooseFile}
          hint={words.fileHint}
          accept=".txt,.csv,.tsv,.log,.dat,text/plain,text/csv"
          onFile={readFile}
        />
      )}
      {from === "port" &&
        (source === undefined ? (
          <p>{words.noPort}</p>
        ) : (
          <>
            <TextField
              label={words.request}
              hint={words.requestHint}
              value={request}
              onText={setRequest}
              maxLength={39}
            />
            <div className="row">
              <Button kind="main" busy={busy} onClick={fetchIt}>
                {words.fetchFrom(link?.label ?? "")}
              </Button>
            </div>
          </>
        ))}
      {from === "sheet" &&
        (round === undefined ? (
          <p>{words.needRound}</p>
        ) : (
          <SheetForm round={round} gaugeId={gaugeId} onRead={onRead} />
        ))}
      {line}
    </section>
  );
}
