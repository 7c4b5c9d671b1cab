// What the record says twice, for a person who was there to settle. An answer is an entry like any other.

import { createMemo, createSignal, For, Show } from 'solid-js';
import { type AnswerOffer, openQuestions } from '#tasks/plot/questions.ts';
import { sayMoment } from '#words/en/app.ts';
import { questionWords as words } from '#words/en/questions.ts';
import { record as recordWords } from '#words/en/record.ts';
import { useRecord } from '../app/context.tsx';
import { sayFailure } from '../parts/failure.ts';
import { HandMark } from '../parts/marks.tsx';
import { More, paged } from '../parts/paged.tsx';

/** Questions drawn at first. */
const QUESTIONS = 12;

export function Questions() {
  const record = useRecord();
  const [said, setSaid] = createSignal('');
  const [advice, setAdvice] = createSignal<{ readonly key: string; readonly text: string }>();
  const open = createMemo(() =>
    openQuestions(record.plot(), record.entries(), { now: record.now(), device: record.device }),
  );
  const shown = paged(open, QUESTIONS, ({ key }) => key);
  const answer = (question: string, { stands, text, correction }: AnswerOffer) => {
    const write =
      correction === undefined
        ? record.act('question.answered', { question, stands: [...stands], note: text })
        : record.correct(correction.of, correction);
    write.catch((failure) => setSaid(sayFailure(failure)));
  };
  return (
    <Show when={open().length > 0}>
      <section aria-labelledby="record-questions">
        <h2 id="record-questions">{words.heading}</h2>
        <p class="note">{words.note}</p>
        <For each={shown.ids().flatMap((key) => shown.of(key) ?? [])}>
          {(question) => (
            <article class="question">
              <p>
                <HandMark />
                <b>{question.sentence}</b>
              </p>
              <ul class="plain">
                <For each={question.about}>
                  {({ on, by, sentence }) => (
                    <li>
                      {sayMoment(on, record.today())}, {recordWords.writtenBy(by)}: {sentence}
                    </li>
                  )}
                </For>
              </ul>
              <Show when={question.disagrees}>
                <p>{words.disagree}</p>
              </Show>
              <div class="choices">
                <For each={question.offers}>
                  {(offer) => (
                    <button
                      type="button"
                      class="block"
                      onClick={() =>
                        offer.advice === undefined
                          ? answer(question.key, offer)
                          : setAdvice({ key: question.key, text: offer.advice })
                      }
                    >
                      {offer.text}
                    </button>
                  )}
                </For>
              </div>
              <p role="status" class="said">
                {advice()?.key === question.key ? advice()?.text : ''}
              </p>
            </article>
          )}
        </For>
        <More of={shown} />
        <p role="status" class="said">
          {said()}
        </p>
      </section>
    </Show>
  );
}
