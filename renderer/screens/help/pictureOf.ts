import type { Language } from "../../../app/words/Language.ts";
import type { TaskTopic } from "./topics/taskTopics.ts";

/** Where the picture of a task lies; `npm run pictures` takes it from the running program. */
export const pictureOf = (topic: TaskTopic, language: Language): string =>
  new URL(`./pictures/${topic}-${language}.png`, import.meta.url).href;
