import { Caution } from "../../ui/feedback/Caution.tsx";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { pictureOf } from "./pictureOf.ts";
import { helpTexts } from "./texts.ts";
import { type TaskTopic, taskTexts } from "./topics/taskTopics.ts";

/** One task: why, the caution where a hand is about to act, the steps, a picture of the place, what else to know. */
export function TaskPage({ topic }: { readonly topic: TaskTopic }) {
  const speech = useSpeech();
  const words = useWords(helpTexts);
  const page: Readonly<Record<string, string>> = taskTexts[topic][speech.language];
  const parts = (kind: string) => Object.entries(page).filter(([key]) => key.startsWith(kind));
  return (
    <>
      <h2>{page.title}</h2>
      <p className="why">{page.lead}</p>
      {page.caution !== undefined && <Caution title={`${words.cautionTitle}:`}>{page.caution}</Caution>}
      <ol className="steps">
        {parts("step").map(([key, text]) => (
          <li key={key}>{text}</li>
        ))}
      </ol>
      <figure>
        <img src={pictureOf(topic, speech.language)} alt={page.picture} width={1000} height={640} loading="lazy" />
        <figcaption className="small soft">{page.picture}</figcaption>
      </figure>
      {parts("note").map(([key, text]) => (
        <p key={key} className="why">
          {text}
        </p>
      ))}
    </>
  );
}
