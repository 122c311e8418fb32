import type { ReactNode } from "react";
import { commonTexts } from "../words/commonTexts.ts";
import { useWords } from "../words/SpeechContext.tsx";
import { Button } from "./Button.tsx";
import { Dialog } from "./Dialog.tsx";
import { Problem } from "./feedback/Problem.tsx";

/**
 * A form over the page: save or leave it.
 * @param refused  why the last try to save was not taken, in words
 */
export function SaveDialog({
  title,
  children,
  refused,
  onSave,
  onClose,
  wide,
}: {
  readonly title: string;
  readonly children: ReactNode;
  readonly refused?: string | undefined;
  readonly onSave: () => void;
  readonly onClose: () => void;
  readonly wide?: boolean;
}) {
  const common = useWords(commonTexts);
  return (
    <Dialog
      wide={wide ?? false}
      title={title}
      onClose={onClose}
      onSubmit={onSave}
      acts={
        <>
          <Button kind="main" type="submit">
            {common.save}
          </Button>
          <Button onClick={onClose}>{common.cancel}</Button>
        </>
      }
    >
      {refused !== undefined && <Problem>{refused}</Problem>}
      {children}
    </Dialog>
  );
}
