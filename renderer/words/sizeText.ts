import type { Speech } from "./Speech.ts";

const steps = ["bytes", "KB", "MB", "GB"] as const;

/** A file's size for the eye: "3.4 MB". */
export function sizeText(bytes: number, speech: Speech): string {
  const step = bytes < 1000 ? 0 : Math.min(steps.length - 1, Math.floor(Math.log10(bytes) / 3));
  return `${speech.number(bytes / 1000 ** step, step === 0 ? 0 : 1)}\u00a0${steps[step]}`;
}
