// The jug of the can card on paper: its own marks, and one heavy mark for each can's dose. Millimetres; not at full
// size, since nobody measured the jug's bore: it is read by its marks. Broken off above the highest.

import { For } from 'solid-js';

const WIDE_MM = 27;
const HIGH_MM = 39;
const STEP_ML = 50;

export function TagJug(props: {
  readonly jugMl: number;
  readonly doses: readonly { readonly volumeMl: number; readonly text: string }[];
  readonly label: string;
}) {
  const topMl = () => {
    const most = Math.max(...props.doses.map(({ volumeMl }) => volumeMl % props.jugMl), STEP_ML);
    return Math.min(props.jugMl, Math.ceil(most / STEP_ML + 1) * STEP_ML);
  };
  const y = (volumeMl: number) => HIGH_MM - 3 - (volumeMl / topMl()) * (HIGH_MM - 15);
  const marks = () => Array.from({ length: Math.floor(topMl() / STEP_ML) }, (_, i) => (i + 1) * STEP_ML);
  /** Names keep apart; their leaders lead back to the mark. */
  const named = () => {
    let last = Number.POSITIVE_INFINITY;
    return [...props.doses]
      .sort((a, b) => a.volumeMl - b.volumeMl)
      .map((dose) => {
        const at = y(dose.volumeMl % props.jugMl || dose.volumeMl);
        last = Math.min(at, last - 6.5);
        return { ...dose, at, nameY: last };
      });
  };
  return (
    <svg
      class="tag-jug"
      width="87mm"
      height={`${HIGH_MM}mm`}
      viewBox={`0 0 87 ${HIGH_MM}`}
      role="img"
      aria-label={props.label}
    >
      <path
        class="jug-wall"
        d={`M3 6V${HIGH_MM - 5}Q3 ${HIGH_MM - 3} 5 ${HIGH_MM - 3}H${WIDE_MM - 2}Q${WIDE_MM} ${HIGH_MM - 3} ${WIDE_MM} ${HIGH_MM - 5}V6`}
      />
      <path class="jug-hair" d={`M0 6H17l1.6 2 2.4 -4 1.6 2H${WIDE_MM + 3}`} />
      <For each={marks()}>
        {(volumeMl) => (
          <>
            <path class="jug-edge" d={`M3 ${y(volumeMl)}h${volumeMl % 100 === 0 ? 6 : 3.5}`} />
            {volumeMl % 100 === 0 && (
              <text class="jug-text" x="10.5" y={y(volumeMl) + 1.4}>
                {volumeMl}
              </text>
            )}
          </>
        )}
      </For>
      <For each={named()}>
        {(dose) => (
          <>
            <path class="jug-mark" d={`M${WIDE_MM - 7} ${dose.at}H${WIDE_MM + 2}`} />
            <path class="jug-hair" d={`M${WIDE_MM + 2} ${dose.at}L${WIDE_MM + 6} ${dose.nameY}H${WIDE_MM + 8}`} />
            <text class="jug-text jug-name" x={WIDE_MM + 9} y={dose.nameY + 1.5}>
              {dose.text}
            </text>
          </>
        )}
      </For>
    </svg>
  );
}
