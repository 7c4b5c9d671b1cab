// The screen set against a bank card, and the jug's inside width: both once on a device. Only then is the jug drawn
// at full size and said to be so.

import { type Accessor, createSignal, Show } from 'solid-js';
import type { CanCardWords } from '#words/en/can-card.ts';
import { lasting } from '../app/device.ts';

/** Long side of a bank card, mm. @memory of the standard for such cards */
const CARD_MM = 85.6;
const CARD_HEIGHT_MM = 53.98;
const PLACE = 'tilthwright.screen';
/** Pixels in a millimetre where nothing was set: 96 to the inch. */
const USUAL_PX_PER_MM = 96 / 25.4;
const USUAL_BORE_MM = 100;
const LEAST_PX = 220;
const MOST_PX = 620;

interface SetTo {
  readonly pxPerMm: number;
  readonly boreMm: number;
}

export interface Screen {
  /** Whether the screen was set on this device. */
  readonly ready: Accessor<boolean>;
  readonly pxPerMm: Accessor<number>;
  readonly boreMm: Accessor<number>;
  readonly keep: (set: SetTo) => void;
  readonly forget: () => void;
}

function kept(): SetTo | undefined {
  try {
    const found: unknown = JSON.parse(lasting.read(PLACE) ?? 'null');
    if (typeof found !== 'object' || found === null) return undefined;
    const { pxPerMm, boreMm } = found as Partial<SetTo>;
    return typeof pxPerMm === 'number' && typeof boreMm === 'number' ? { pxPerMm, boreMm } : undefined;
  } catch {
    return undefined;
  }
}

/** How large a millimetre is on this screen. */
export function useScreen(): Screen {
  const [set, setSet] = createSignal(kept());
  return {
    ready: () => set() !== undefined,
    pxPerMm: () => set()?.pxPerMm ?? USUAL_PX_PER_MM,
    boreMm: () => set()?.boreMm ?? USUAL_BORE_MM,
    keep(next) {
      setSet(next);
      lasting.write(PLACE, JSON.stringify(next));
    },
    forget() {
      setSet(undefined);
      lasting.remove(PLACE);
    },
  };
}

/** Sets it: an outline as large as a bank card, and the jug's bore under it. */
export function ScreenSetter(props: { readonly screen: Screen; readonly words: CanCardWords }) {
  const [cardPx, setCardPx] = createSignal(Math.round(props.screen.pxPerMm() * CARD_MM));
  const [boreMm, setBoreMm] = createSignal(props.screen.boreMm());
  const step = (by: number) => setCardPx(Math.min(MOST_PX, Math.max(LEAST_PX, cardPx() + by)));
  const heightPx = () => (cardPx() * CARD_HEIGHT_MM) / CARD_MM;
  return (
    <details class="fold">
      <summary>{props.words.set}</summary>
      <p>{props.words.setHow}</p>
      <div class="bank-card">
        <svg width={cardPx()} height={heightPx()} role="img" aria-label={props.words.card}>
          <rect class="outline" x="1.25" y="1.25" width={cardPx() - 2.5} height={heightPx() - 2.5} />
          <text x="14" y="30">
            {props.words.card}
          </text>
        </svg>
      </div>
      <Stepper
        label={props.words.card}
        value={`${cardPx()} px`}
        less={props.words.setNarrower}
        more={props.words.setWider}
        onStep={(by) => step(by * 2)}
      />
      <Stepper
        label={props.words.setBore}
        value={`${boreMm()} mm`}
        less={props.words.setNarrower}
        more={props.words.setWider}
        onStep={(by) => setBoreMm(Math.min(250, Math.max(40, boreMm() + by)))}
      />
      <button
        type="button"
        class="block wide"
        onClick={() => props.screen.keep({ pxPerMm: cardPx() / CARD_MM, boreMm: boreMm() })}
      >
        {props.words.setDone}
      </button>
      <Show when={props.screen.ready()}>
        <button type="button" class="block wide" onClick={() => props.screen.forget()}>
          {props.words.setForget}
        </button>
      </Show>
    </details>
  );
}

/** Minus left, plus right, the figure between. */
export function Stepper(props: {
  readonly label: string;
  readonly value: string;
  readonly less: string;
  readonly more: string;
  readonly onStep: (by: -1 | 1) => void;
}) {
  return (
    <fieldset class="stepper" aria-label={props.label}>
      <button type="button" class="block" aria-label={`${props.label}: ${props.less}`} onClick={() => props.onStep(-1)}>
        −
      </button>
      <p>
        <span>{props.label}</span>
        <b>{props.value}</b>
      </p>
      <button type="button" class="block" aria-label={`${props.label}: ${props.more}`} onClick={() => props.onStep(1)}>
        +
      </button>
    </fieldset>
  );
}
