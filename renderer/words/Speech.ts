export { createSpeech, forceUnitOf, type Speech, unitText } from "../../app/words/Speech.ts";
