import { proofAboutTexts } from "./proofAboutTexts.ts";
import { proofResultTexts } from "./proofResultTexts.ts";

/** Everything a proof's report says beside the words it shares with the screens. */
export const proofReportTexts = {
  en: { ...proofAboutTexts.en, ...proofResultTexts.en },
  de: { ...proofAboutTexts.de, ...proofResultTexts.de },
};
