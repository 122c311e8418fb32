import { useRef, useState } from "react";
import type { ImportedKind, ImportPreview, ListFile } from "../../../app/contract/importViews.ts";
import { useCore } from "../../state/CoreContext.ts";
import { errorWords } from "../../words/errorWords.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { fileBase64 } from "./fileBase64.ts";
import { importTexts } from "./texts.ts";

const MOST_BYTES = 15_000_000;

/** What a user can say about a file; a member that is there and undefined takes back what was said. */
export type Said = Partial<Pick<ListFile, "mapping" | "unit" | "passOverKnown" | "sheet" | "dateOrder" | "names">>;

/** A chosen file, what has been said about it, and what would come of it. */
export function useListFile(what: ImportedKind): {
  readonly file: ListFile | undefined;
  readonly preview: ImportPreview | undefined;
  readonly reading: boolean;
  readonly failed: string | undefined;
  readonly choose: (chosen: File) => Promise<void>;
  readonly say: (said: Said) => Promise<void>;
} {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(importTexts);
  const [file, setFile] = useState<ListFile>();
  const [preview, setPreview] = useState<ImportPreview>();
  const [reading, setReading] = useState(false);
  const [failed, setFailed] = useState<string>();
  const newest = useRef(0); // an answer to an earlier question is not shown
  const ask = async (next: ListFile) => {
    newest.current += 1;
    const mine = newest.current;
    setFile(next);
    setReading(true);
    setFailed(undefined);
    const answer = await core.client.call("register.preview", next);
    if (mine !== newest.current) return;
    setReading(false);
    setPreview(answer.ok ? answer.value : undefined);
    if (!answer.ok) setFailed(errorWords(answer.error, speech));
  };
  const choose = async (chosen: File) => {
    setPreview(undefined);
    if (chosen.size > MOST_BYTES) {
      setFile(undefined);
      setFailed(words.tooLarge);
      return;
    }
    try {
      await ask({ what, fileName: chosen.name.slice(-260), base64: await fileBase64(chosen) });
    } catch {
      setFailed(words.unreadableFile);
    }
  };
  const say = async (said: Said) => {
    if (file !== undefined) await ask({ ...file, ...said });
  };
  return { file, preview, reading, failed, choose, say };
}
