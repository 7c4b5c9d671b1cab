// The hours of today on the can card, and of tomorrow where none of today is left: one strip for the way the bed is fed,
// the next open hour, and what it was judged by.

import { A } from '@solidjs/router';
import { createMemo, Show } from 'solid-js';
import type { DayView } from '#tasks/plot/hours.ts';
import type { PourCard } from '#tasks/plot/pour.ts';
import { HoursStrip, sayOpen } from '../drawings/hours-strip.tsx';
import { measured } from '../parts/measured.ts';
import type { Can, Said } from './chosen.ts';

const FIRST_WIDTH = 350;

export function Hours(props: { readonly can: Can; readonly card: PourCard; readonly said: Said }) {
  const { record } = props.can;
  const words = () => props.can.words().hours;
  const [width, watch] = measured(FIRST_WIDTH);
  const view = createMemo(() => props.can.hoursFor(props.said));
  const isLeaf = () => props.card.way === 'leaf';
  const title = () => (isLeaf() ? words().sprayStrip : words().pourStrip);
  const openOf = ({ hours }: DayView) => hours.map(({ pour, spray }) => (isLeaf() ? spray : pour).answer === 'open');
  const next = () => (isLeaf() ? view().nextSpray : view().nextPour);
  const hourNow = () => Number(record.now().slice(11, 13)) + Number(record.now().slice(14, 16)) / 60;
  const none = () => (shown().by === 'nothing' ? words().notJudged : words().noneOpen);
  const isToday = () => next() === undefined || next()?.on === view().days[0].on;
  const shown = () => (isToday() ? view().days[0] : view().days[1]);
  return (
    <section class="hours" ref={watch} aria-labelledby="hours-title">
      <h3 id="hours-title">{title()}</h3>
      <HoursStrip
        width={width()}
        open={openOf(shown())}
        sun={shown().sun}
        now={isToday() ? hourNow() : undefined}
        nowWord={words().now}
        label={words().drawn(title(), sayOpen(openOf(shown()), none()))}
      />
      <p class="hours-next">
        <Show when={next()} fallback={none()}>
          {(one) => (
            <>
              <b>{words().open}</b> {words().next(one().on, one().hour, record.today())}
            </>
          )}
        </Show>
      </p>
      <p class="note">
        {words().by[shown().by]}{' '}
        <Show when={view().forecastAgeH !== undefined}>{words().age(view().forecastAgeH ?? 0)} </Show>
        <Show when={isLeaf()}>{words().sun[shown().sun?.by ?? 'none']}</Show>
      </p>
      <A class="block" href="/weather">
        {words().typeIt}
      </A>
    </section>
  );
}
