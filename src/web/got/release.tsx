// The season of one bed in nitrogen: the band of what came free of everything given, the line of what the crop can have
// taken up, today marked, in words how the two stand, and the table behind. Figures come from tasks/plot/release.ts.

import { createMemo, For, Show } from 'solid-js';
import { type ReleaseView, releaseView } from '#tasks/plot/release.ts';
import { sayDate } from '#words/en/app.ts';
import { release, releaseGrams, sayRelease } from '#words/en/release.ts';
import { useRecord } from '../app/context.tsx';
import { fillOf } from '../drawings/hatches.tsx';
import { seasonBand, seasonLine, seasonScale } from '../drawings/release-geometry.ts';
import { measured } from '../parts/measured.ts';
import { TableFold } from '../parts/table-fold.tsx';
import '../styles/drawing.css';
import '../styles/got.css';

const FIRST_WIDTH = 350;
const MOST_WIDTH = 720;
const HIGH = 270;
/** Months nearer to each other than this are named only every other time. */
const MONTH_PX = 42;

/** A season by itself, for any sheet of a bed; nothing for a bed without an area. */
export function ReleaseCurve(props: { readonly bed: string }) {
  const record = useRecord();
  const view = createMemo(() => releaseView({ plot: record.plot(), bed: props.bed, today: record.today() }));
  return <Show when={view()}>{(found) => <Season view={found()} />}</Show>;
}

function Season(props: { readonly view: ReleaseView }) {
  const sentences = () => sayRelease(props.view);
  return (
    <section class="release">
      <h2>{release.heading}</h2>
      <For each={sentences()}>{(line) => <p>{line}</p>}</For>
      <Curve view={props.view} sentences={sentences()} />
      <Legend />
      <Weeks view={props.view} />
    </section>
  );
}

function Curve(props: { readonly view: ReleaseView; readonly sentences: readonly string[] }) {
  const [room, watch] = measured(FIRST_WIDTH);
  const width = () => Math.min(MOST_WIDTH, room());
  const points = () => props.view.points;
  const scale = createMemo(() => seasonScale(points(), { width: width(), height: HIGH }));
  const line = (end: 'low' | 'likely' | 'high') =>
    seasonLine(
      points().flatMap(({ day, takenUpG }) =>
        takenUpG === null ? [] : [[scale().x(day), scale().y(takenUpG[end])] as const],
      ),
    );
  const todayX = () => scale().x(props.view.today.day);
  const months = () => {
    const [first, second] = props.view.months;
    const apart = first && second ? scale().x(second.day) - scale().x(first.day) : MONTH_PX;
    return props.view.months.map((month, i) => ({ ...month, named: apart >= MONTH_PX || i % 2 === 0 }));
  };
  return (
    <div class="release-room" ref={watch}>
      <svg
        class="drawing release-curve"
        width={width()}
        height={HIGH}
        viewBox={`0 0 ${width()} ${HIGH}`}
        role="img"
        aria-label={release.alternative(props.view.name, props.sentences)}
      >
        <For each={scale().gramTicks}>
          {(grams) => (
            <>
              <path class="hair release-rule" d={`M${scale().left} ${scale().y(grams)}H${scale().right}`} />
              <text x={scale().left - 6} y={scale().y(grams) + 6} text-anchor="end">
                {grams}
              </text>
            </>
          )}
        </For>
        <text x={scale().left - 6} y={18} text-anchor="end">
          {release.grams}
        </text>
        <For each={months()}>
          {({ on, day, named }) => (
            <>
              <path class="hair" d={`M${scale().x(day)} ${scale().bottom}v6`} />
              <Show when={named && scale().x(day) < scale().right - 24}>
                <text x={scale().x(day) + 2} y={HIGH - 6}>
                  {release.month(on)}
                </text>
              </Show>
            </>
          )}
        </For>
        <path class="hatched" d={seasonBand(points(), scale())} fill={fillOf('band')} />
        <path class="hair" stroke-dasharray="5 4" d={line('low')} />
        <path class="hair" stroke-dasharray="5 4" d={line('high')} />
        <path class="outline" d={line('likely')} />
        <path class="edge" d={`M${todayX()} ${scale().top - 6}V${scale().bottom}`} />
        <text
          class="knocked"
          x={todayX()}
          y={16}
          text-anchor={todayX() > scale().right - 40 ? 'end' : todayX() < scale().left + 30 ? 'start' : 'middle'}
        >
          {release.today}
        </text>
        <path class="hair" d={`M${scale().left} ${scale().top}V${scale().bottom}H${scale().right}`} />
      </svg>
    </div>
  );
}

function Legend() {
  return (
    <ul class="got-legend plain">
      <li>
        <svg class="swatch" width="40" height="28" aria-hidden="true">
          <path class="outline" d="M2 24L38 6" />
          <path class="hair" stroke-dasharray="5 4" d="M2 27L38 16M2 20L38 1" />
        </svg>
        {release.takenUp}
      </li>
      <li>
        <svg class="swatch" width="40" height="28" aria-hidden="true">
          <rect class="hatched" x="1" y="1" width="38" height="26" fill={fillOf('band')} />
        </svg>
        {release.free}
      </li>
    </ul>
  );
}

function Weeks(props: { readonly view: ReleaseView }) {
  const record = useRecord();
  return (
    <TableFold name={release.table} columns={release.columns}>
      <For each={props.view.points}>
        {({ on, takenUpG, freeG }) => (
          <tr>
            <th scope="row">{sayDate(on, record.today())}</th>
            <td>{releaseGrams(takenUpG)}</td>
            <td>{releaseGrams(freeG)}</td>
          </tr>
        )}
      </For>
    </TableFold>
  );
}
