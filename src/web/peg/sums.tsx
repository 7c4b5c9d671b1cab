// What the looks of a peg saw, the newest first, with their photos; and what its mass adds up to.

import { For, Show } from 'solid-js';
import type { MassSum } from '#journal/parts/batch.ts';
import type { PegView } from '#tasks/plot/peg.ts';
import { look as lookWords } from '#words/en/look.ts';
import { pegWords } from '#words/en/peg.ts';
import { useRecord } from '../app/context.tsx';
import { PhotoView } from '../look/photos.tsx';
import { seenIn } from '../look/told.tsx';

interface SumsProps {
  readonly view: PegView;
  readonly temperature: (temperatureC: number) => string;
  readonly mass: (massKg: number) => string;
}

export function LooksSoFar(props: SumsProps) {
  const record = useRecord();
  const photosOf = (look: string) => record.plot().photos.flatMap(({ body }) => (body.of === look ? [body.photo] : []));
  const day = (look: PegView['looks'][number]) => look.when.dateDay - props.view.batch.filled.dateDay;
  return (
    <section aria-labelledby="looks">
      <h2 id="looks">{pegWords.looksHeading}</h2>
      <Show when={props.view.looks.length > 0} fallback={<p>{pegWords.noLooks}</p>}>
        <ol class="looks">
          <For each={props.view.looks.toReversed()}>
            {(look) => (
              <li>
                <b>{lookWords.date(look.when.on, record.today())}</b>{' '}
                <small>{pegWords.lookBy(day(look), look.by)}</small>
                <p>
                  {seenIn(look, lookWords, props.temperature)}
                  {look.body.lidBulged ? `, ${pegWords.lidBulged}` : ''}
                </p>
                <Show when={look.body.note}>{(note) => <p class="note">{note()}</p>}</Show>
                <For each={photosOf(look.id)}>
                  {(photo, i) => <PhotoView photo={photo} alternative={lookWords.photo.alternative(i() + 1)} />}
                </For>
              </li>
            )}
          </For>
        </ol>
      </Show>
    </section>
  );
}

const COLUMNS: readonly (keyof MassSum)[] = [
  'filledKg',
  'toppedUpKg',
  'joinedInKg',
  'splitOffKg',
  'joinedAwayKg',
  'spilledKg',
  'strainedKg',
  'tippedKg',
];

export function MassSums(props: Pick<SumsProps, 'view' | 'mass'>) {
  /** Less than a gram is what rounding leaves. */
  const leftKg = () => (Math.abs(props.view.batch.mass.leftKg) < 0.001 ? 0 : props.view.batch.mass.leftKg);
  const told = () => COLUMNS.filter((column) => props.view.batch.mass[column] !== 0);
  return (
    <section aria-labelledby="mass">
      <h2 id="mass">{pegWords.massHeading}</h2>
      <dl class="inputs">
        <For each={told()}>
          {(column) => (
            <div>
              <dt>{pegWords.sums[column]}</dt>
              <dd>{props.mass(props.view.batch.mass[column])}</dd>
            </div>
          )}
        </For>
        <div>
          <dt>{pegWords.sums.leftKg}</dt>
          <dd>{leftKg() === 0 ? pegWords.nothing : props.mass(leftKg())}</dd>
        </div>
      </dl>
    </section>
  );
}
