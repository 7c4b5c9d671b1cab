// Jar tags, one to a label of 62 by 40 mm: peg number, what it is, its dates, what it is not, and the code that opens
// the peg.

import { createMemo, For, Show } from 'solid-js';
import { type Tag, tagsOf } from '#tasks/plot/prints.ts';
import { app } from '#words/en/app.ts';
import { print, tagLines } from '#words/en/print.ts';
import { useRecord } from '../app/context.tsx';
import { TagDigits } from '../drawings/tag-digits.tsx';
import { TagQr } from '../drawings/tag-qr.tsx';
import { MadeWith } from '../parts/made-with.tsx';
import { byPlace, paged } from '../parts/paged.tsx';
import { OnlyShown, PrintFrame } from './frame.tsx';

/** Tags drawn at first. */
const TAGS = 24;
const QR_MM = 18.5;
const NUMBER_MOST_MM = 38;

export function TagsPrint() {
  const record = useRecord();
  const tags = createMemo(() => tagsOf({ plot: record.plot(), now: record.now() }));
  // By their place in the list: those of the bottles to be used first.
  const shown = paged(tags, TAGS, byPlace);
  const nothing = () =>
    tags().length === 0 ? { sentence: print.noTags, act: print.noTagsAct, to: '/fill' } : undefined;
  return (
    <PrintFrame title={print.tags} note={print.tagsNote} nothing={nothing()}>
      <OnlyShown of={shown} all={tags().length} />
      <div class="tags">
        <For each={shown.ids()}>
          {(id) => <Show when={shown.of(id)}>{(tag) => <OneTag tag={tag()} isDemo={record.isDemo} />}</Show>}
        </For>
      </div>
    </PrintFrame>
  );
}

function OneTag(props: { readonly tag: Tag; readonly isDemo: boolean }) {
  const peg = () => String(props.tag.peg);
  return (
    <article class="tag">
      <MadeWith />
      <div class="tag-top">
        <div class="tag-number">
          <TagDigits number={peg()} label={print.pegNumber(props.tag.said)} mostMm={NUMBER_MOST_MM} />
        </div>
        <Show when={props.isDemo}>
          <span class="tag-demo">{app.demo}</span>
        </Show>
        <TagQr text={`${location.origin}/peg/${props.tag.batch}`} sizeMm={QR_MM} label={print.qr(props.tag.said)} />
      </div>
      <p class="tag-warning">{print.tagWarning(props.tag.of)}</p>
      <Show when={props.tag.said !== props.tag.peg}>
        <p class="tag-line">{print.pegNumber(props.tag.said)}</p>
      </Show>
      <For each={tagLines(props.tag)}>
        {(line, i) => <p class={i() === 0 ? 'tag-line' : 'tag-line whole'}>{line}</p>}
      </For>
    </article>
  );
}
