import { useEffect, useRef } from "react";
import { hrefOf } from "../../state/routeStore.ts";
import { useWords } from "../../words/SpeechContext.tsx";
import { TourOffer } from "../tour/TourOffer.tsx";
import { Glossary } from "./Glossary.tsx";
import { StatisticsPage } from "./statistics/StatisticsPage.tsx";
import { TaskPage } from "./TaskPage.tsx";
import { helpTexts } from "./texts.ts";
import { isTask, type TaskTopic, taskTopics } from "./topics/taskTopics.ts";
import "./help.css";

const explained = ["statistics", "glossary"] as const;

/** What is needed beside the work, without a network: tasks with pictures, the statistics with one's own figures, the terms. */
export function Help({ topic, about }: { readonly topic: string | undefined; readonly about: string | undefined }) {
  const words = useWords(helpTexts);
  const page = useRef<HTMLElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another page is read from its top
  useEffect(() => {
    scrollTo({ top: 0 });
    page.current?.focus({ preventScroll: true });
  }, [topic, about]);
  const link = (id: TaskTopic | (typeof explained)[number], name: string) => (
    <li key={id}>
      <a href={hrefOf({ place: "help", topic: id })} aria-current={id === topic ? "page" : undefined}>
        {name}
      </a>
    </li>
  );
  return (
    <div className="stack help">
      <header className="place">
        <div>
          <h1>{words.title}</h1>
          <p className="why">{words.lead}</p>
        </div>
      </header>
      <div className="help-body">
        <article className="sheet" ref={page} tabIndex={-1}>
          {isTask(topic) ? (
            <TaskPage topic={topic} />
          ) : topic === "statistics" ? (
            <StatisticsPage spindleId={about} />
          ) : topic === "glossary" ? (
            <Glossary />
          ) : (
            <Start />
          )}
        </article>
        <section className="contents sheet" aria-label={words.contents}>
          <h2>{words.tasks}</h2>
          <ul>{taskTopics.map((id) => link(id, words[id]))}</ul>
          <h2>{words.understand}</h2>
          <ul>{explained.map((id) => link(id, words[id]))}</ul>
        </section>
      </div>
    </div>
  );
}

/** The first page: the way through the house in four sentences, the tour, the keys. */
function Start() {
  const words = useWords(helpTexts);
  return (
    <>
      <h2>{words.startTitle}</h2>
      <ol className="steps">
        <li>{words.start1}</li>
        <li>{words.start2}</li>
        <li>{words.start3}</li>
        <li>{words.start4}</li>
      </ol>
      <TourOffer />
      <h3>{words.keysTitle}</h3>
      <p className="why">{words.keys}</p>
      <h3>{words.cautionTitle}</h3>
      <ul className="cautions">
        <li>{words.caution1}</li>
        <li>{words.caution2}</li>
        <li>{words.caution3}</li>
        <li>{words.caution4}</li>
        <li>{words.caution5}</li>
      </ul>
    </>
  );
}
