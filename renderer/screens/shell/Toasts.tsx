import { useEffect } from "react";
import { useStore } from "zustand";
import { useCore } from "../../state/CoreContext.ts";
import type { Toast } from "../../state/toastStore.ts";
import { Button } from "../../ui/Button.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { shellTexts } from "./texts.ts";

/** Short words, read out once as they come. They stay while the pointer or the focus is on them. */
export function Toasts() {
  const core = useCore();
  const toasts = useStore(core.toasts, (state) => state.toasts);
  return (
    <div role="status">
      {toasts.map((toast) => (
        <OneToast key={toast.id} toast={toast} />
      ))}
    </div>
  );
}

function OneToast({ toast }: { readonly toast: Toast }) {
  const core = useCore();
  const words = useWords(shellTexts);
  const dismiss = () => core.toasts.getState().dismiss(toast.id);
  useEffect(() => {
    const timer = setTimeout(() => core.toasts.getState().dismiss(toast.id), Math.max(0, toast.untilMs - Date.now()));
    return () => clearTimeout(timer);
  }, [core, toast]);
  const { act } = toast;
  return (
    <div className="toast">
      <span>{toast.text}</span>
      {act !== undefined && (
        <Button
          keyHint={act.keyHint}
          onClick={() => {
            act.run();
            dismiss();
          }}
        >
          {act.label}
        </Button>
      )}
      <Button kind="quiet" onClick={dismiss}>
        {words.dismiss}
      </Button>
    </div>
  );
}
