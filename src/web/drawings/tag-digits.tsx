// The peg number of a tag in outline, millimetres: digits 14 mm high between the middles of their strokes, so that
// they are read from two metres and can be filled in with pencil.

import { For } from 'solid-js';

/** Middle lines of the digits in a box 7 wide and 14 high. */
const DIGITS: Readonly<Record<string, string>> = {
  '0': 'M3.5 0C0 0 0 3.5 0 7S0 14 3.5 14S7 10.5 7 7S7 0 3.5 0Z',
  '1': 'M1 3L4.2 0V14',
  '2': 'M0 3.6C0 1.2 1.5 0 3.5 0S7 1.2 7 3.6C7 6.6 4.4 8.4 0 14H7',
  '3': 'M0 1.7C1 .6 2 0 3.5 0C5.5 0 6.8 1.2 6.8 3.4S5.4 6.7 3 6.7C5.6 6.7 7 8 7 10.3S5.5 14 3.4 14C1.8 14 .8 13.4 0 12.3',
  '4': 'M5.2 14V0L0 10H7',
  '5': 'M6.5 0H1L.5 6.4C1.3 5.6 2.2 5.2 3.4 5.2C5.6 5.2 7 6.9 7 9.5C7 12.3 5.5 14 3.3 14C1.8 14 .8 13.4 0 12.4',
  '6': 'M6 0C2.6 .8 0 4.4 0 9.3C0 12.3 1.3 14 3.5 14S7 12.3 7 9.6S5.7 5.4 3.6 5.4S0 7 0 9.3',
  '7': 'M0 0H7L2.5 14',
  '8': 'M3.5 6.6C1.5 6.6 .4 5.2 .4 3.3S1.6 0 3.5 0S6.6 1.4 6.6 3.3S5.5 6.6 3.5 6.6C1.3 6.6 0 8.2 0 10.3S1.4 14 3.5 14S7 12.5 7 10.3S5.7 6.6 3.5 6.6Z',
  '9': 'M1 14C4.4 13.2 7 9.6 7 4.7C7 1.7 5.7 0 3.5 0S0 1.7 0 4.4S1.3 8.6 3.4 8.6S7 7 7 4.7',
};
const STROKE_MM = 2.8;
const OUTLINE_MM = 0.5;
const PITCH_MM = 7 + STROKE_MM + 1.2;
const HIGH_MM = 14 + STROKE_MM;

export function TagDigits(props: { readonly number: string; readonly label: string; readonly mostMm: number }) {
  const wide = () => props.number.length * PITCH_MM;
  /** Long numbers are set narrower, never lower. */
  const narrow = () => Math.min(1, props.mostMm / wide());
  return (
    <svg
      class="tag-digits"
      width={`${wide() * narrow()}mm`}
      height={`${HIGH_MM}mm`}
      viewBox={`0 0 ${wide() * narrow()} ${HIGH_MM}`}
      role="img"
      aria-label={props.label}
    >
      <g transform={`scale(${narrow()} 1)`}>
        <For each={[...props.number]}>
          {(digit, i) => (
            <g transform={`translate(${i() * PITCH_MM + STROKE_MM / 2} ${STROKE_MM / 2})`}>
              <path class="digit digit-ink" d={DIGITS[digit] ?? ''} stroke-width={STROKE_MM} />
              <path class="digit digit-paper" d={DIGITS[digit] ?? ''} stroke-width={STROKE_MM - 2 * OUTLINE_MM} />
            </g>
          )}
        </For>
      </g>
    </svg>
  );
}
