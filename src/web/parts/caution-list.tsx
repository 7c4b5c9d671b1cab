// Cautions on a sheet: every stop with what to do instead, at most two others on the whole sheet, the rest folded. Each
// with its mark, its word and its source.

import { createMemo, For, Show } from 'solid-js';
import type { Level } from '#engine/rules/rule.ts';
import { type Caution, onSheet } from '#tasks/caution.ts';
import { cautionWords } from '#words/en/care.ts';
import '../styles/cautions.css';
import { useCautionPlace } from './caution-places.ts';
import { LevelMark } from './marks.tsx';

/** What a list says around its sentences, in one language. */
export interface CautionListWords {
  readonly levels: Readonly<Record<Level, string>>;
  readonly moreCautions: (count: number) => string;
  readonly insteadLead: string;
}

export function CautionList(props: {
  readonly cautions: readonly Caution[];
  /** Whether a link on the sheet leads to each stop. */
  readonly linked?: boolean;
  /** In a fold of its own: it neither counts nor is counted on the sheet. */
  readonly apart?: boolean;
  /** Notes are folded too: for hands that are wet. */
  readonly quiet?: boolean;
  readonly words?: CautionListWords;
}) {
  const mine = () => props.cautions;
  const place = useCautionPlace(mine, props.apart === true);
  const words = () => props.words ?? cautionWords;
  const parted = createMemo(() => {
    const { here, all } = place();
    const { open, folded } = onSheet(
      here,
      all.map((one) => one()),
    );
    const isQuiet = ({ level }: Caution) => props.quiet === true && level === 'note';
    return { open: open.filter((one) => !isQuiet(one)), folded: [...folded, ...open.filter(isQuiet)] };
  });
  const lines = (cautions: readonly Caution[]) => (
    <For each={cautions}>{(one) => <CautionLine caution={one} linked={props.linked} words={words()} />}</For>
  );
  return (
    <>
      <Show when={parted().open.length > 0}>
        <ul class="cautions">{lines(parted().open)}</ul>
      </Show>
      <Show when={parted().folded.length > 0}>
        <details class="fold">
          <summary>{words().moreCautions(parted().folded.length)}</summary>
          <ul class="cautions">{lines(parted().folded)}</ul>
        </details>
      </Show>
    </>
  );
}

function CautionLine(props: {
  readonly caution: Caution;
  readonly linked: boolean | undefined;
  readonly words: CautionListWords;
}) {
  const { caution } = props;
  return (
    <li class="caution" id={props.linked && caution.level === 'stop' ? `stop-${caution.rule}` : undefined}>
      <LevelMark level={caution.level} />
      <div>
        <p>
          <b>{props.words.levels[caution.level]}.</b> {caution.text}
        </p>
        {/* Where the sentence ends in what to do, it is not said a second time. */}
        <Show when={caution.instead !== undefined && !caution.text.includes(caution.instead)}>
          <p class="instead">
            <b>{props.words.insteadLead}</b> {caution.instead}
          </p>
        </Show>
        <p class="source">{caution.source}</p>
      </div>
    </li>
  );
}
