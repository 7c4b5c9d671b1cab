// Cautions of the weigh-in at the question that decides them.

import { createMemo } from 'solid-js';
import { placeOf } from '#words/en/weigh-in-labels.ts';
import { CautionList } from '../parts/caution-list.tsx';
import type { WeighIn } from './model.ts';

export function Cautions(props: { readonly model: WeighIn; readonly place: ReturnType<typeof placeOf> }) {
  const here = createMemo(() =>
    (props.model.result()?.cautions ?? []).filter((one) => placeOf(one.rule) === props.place),
  );
  return <CautionList cautions={here()} linked />;
}
