// The look at a bucket: four strips, no keyboard, at most five touches, then one sentence. Wet hands, glare and no
// signal are the rule here: the screen stays awake, what is half answered survives a reload, what is written is durable.

import { A, useParams } from '@solidjs/router';
import { createMemo, createSignal, Match, Show, Switch } from 'solid-js';
import { spokenWith } from '#tasks/caution.ts';
import { afterLook, beforeLook } from '#tasks/plot/look-cautions.ts';
import { batchNamed, pegView } from '#tasks/plot/peg.ts';
import { explainPeg } from '#tasks/plot/peg-working.ts';
import { useRecord } from '../app/context.tsx';
import { useDraft } from '../app/draft.ts';
import { Sheet } from '../app/sheet.tsx';
import { keepAwake } from '../app/wake.ts';
import { CautionList } from '../parts/caution-list.tsx';
import { How } from '../parts/how.tsx';
import { WorkingDialog } from '../parts/working-dialog.tsx';
import '../styles/look.css';
import { foretellPeg } from '../souring/peg.ts';
import { type Answers, lookBody, skipped, UNANSWERED } from './answers.ts';
import { Asking } from './asking.tsx';
import { signer } from './keyholder.ts';
import { Photos } from './photos.tsx';
import { lookSteps } from './steps.tsx';
import { Told } from './told.tsx';

export function LookScreen() {
  const record = useRecord();
  const params = useParams<{ batch: string }>();
  const who = signer(record);
  const words = () => who.words().look;
  /** The batch's id, also where the address has the number of its peg. */
  const id = () => batchNamed(record.plot(), params.batch)?.id ?? params.batch;
  const answers = useDraft<Answers>(`look.${record.plotId()}.${id()}`, UNANSWERED);
  const reader = useDraft('look.reader', { readBy: '' });
  const [saved, setSaved] = createSignal<string>();
  const [saving, setSaving] = createSignal(false);
  const [failed, setFailed] = createSignal(false);
  const [asked, setAsked] = createSignal(false);
  keepAwake();

  const view = createMemo(() => {
    const batch = batchNamed(record.plot(), params.batch);
    return batch && pegView({ plot: record.plot(), batch, now: record.now() });
  });
  /** The look just written down, until it is taken back. */
  const told = () => view()?.looks.find(({ id }) => id === saved());
  /** Only once a look is told: nothing is worked out while hands are at the strips. */
  const foretold = foretellPeg(
    record,
    () => (told() === undefined ? undefined : view()),
    () => told()?.day,
  );
  const askNose = () => {
    const look = told();
    if (look === undefined || (!who.cannotSmell() && look.body.smell !== 'cannot-smell')) return false;
    const sameDay = view()?.looks.filter(({ when }) => when.dateDay === look.when.dateDay) ?? [];
    return !sameDay.some(({ body }) => body.smell !== undefined && body.smell !== 'cannot-smell');
  };

  function answer(given: Partial<Answers>) {
    if (saving()) return;
    answers.change(given);
    if (skipped(answers.draft()).length === 0) save();
  }

  function save() {
    if (saving() || skipped(answers.draft()).length === 4) return;
    setSaving(true);
    setFailed(false);
    const body = lookBody(answers.draft(), {
      batch: id(),
      readBy: reader.draft().readBy,
      noseNote: who.cannotSmell() ? words().noseNote : undefined,
    });
    record
      .act('peg.looked', body, (entry) => {
        answers.clear();
        setSaved(entry.id);
        setSaving(false);
      })
      .catch(() => {
        setFailed(true);
        setSaving(false);
      });
  }

  return (
    <Sheet
      title={words().title}
      aside={view() && words().pegDay(view()?.peg ?? 0, view()?.day ?? 0)}
      here="pail"
      number={3}
    >
      <div class="look" lang={words().lang}>
        <Switch fallback={<NoPeg text={words().noPeg} link={words().toLine} />}>
          <Match when={told() && view()}>
            {(seen) => (
              <Show when={told()}>
                {(look) => (
                  <>
                    <Told
                      view={seen()}
                      words={words()}
                      today={record.today()}
                      temperature={who.temperature}
                      look={look()}
                      askNose={askNose()}
                      foretold={foretold}
                      cautions={spokenWith(afterLook(seen(), look()), words().cautions, words().instead)}
                    />
                    <Photos look={look().id} words={words()} />
                    <div class="after">
                      <Show when={seen().state === 'ready' && seen().endedOn === undefined}>
                        <A class="block" classList={{ act: seen().held }} href={`/peg/${id()}/strain`}>
                          {words().toStrain}
                        </A>
                      </Show>
                      <A class="block" href={`/peg/${id()}`}>
                        {words().toPeg(seen().peg)}
                      </A>
                      <button type="button" class="block" onClick={() => setSaved(undefined)}>
                        {words().lookAgain}
                      </button>
                    </div>
                  </>
                )}
              </Show>
            )}
          </Match>
          <Match when={view()?.endedOn}>
            {(on) => (
              <NoPeg
                text={words().ended(view()?.peg ?? 0, words().date(on(), record.today()))}
                link={words().toPeg(view()?.peg ?? 0)}
                href={`/peg/${id()}`}
              />
            )}
          </Match>
          <Match when={view()}>
            {(seen) => (
              <>
                <CautionList
                  cautions={spokenWith(beforeLook(record.plot(), seen()), words().cautions, words().instead)}
                  words={words()}
                />
                <Asking
                  words={words()}
                  view={seen()}
                  today={record.today()}
                  answers={answers.draft()}
                  others={who.others()}
                  readBy={reader.draft().readBy}
                  cannotSmell={who.cannotSmell()}
                  saving={saving()}
                  failed={failed()}
                  temperature={who.temperature}
                  onReadBy={(readBy) => reader.change({ readBy })}
                  onAnswer={answer}
                  onSave={save}
                />
              </>
            )}
          </Match>
        </Switch>
        <Show when={view()}>
          {(seen) => (
            <div class="ask-more">
              <button type="button" class="why" aria-label={words().whyOf} onClick={() => setAsked(true)}>
                {words().why}
              </button>
              <How steps={lookSteps(words())} heading={words().howHeading} open={words().how} close={words().close} />
              <WorkingDialog
                model={{
                  workings: () => (asked() ? explainPeg(seen()) : undefined),
                  closeWhy: () => setAsked(false),
                }}
              />
            </div>
          )}
        </Show>
      </div>
    </Sheet>
  );
}

function NoPeg(props: { readonly text: string; readonly link: string; readonly href?: string | undefined }) {
  return (
    <div class="no-peg">
      <p class="lead-in">{props.text}</p>
      <A class="block" href={props.href ?? '/'}>
        {props.link}
      </A>
    </div>
  );
}
