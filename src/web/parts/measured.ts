// The width a place on the sheet has, in CSS pixels, so that a drawing is made for it and not stretched to it.

import { createSignal, onCleanup } from 'solid-js';

/** A width that follows its element, and the reference to hand to that element. */
export function measured(first: number): readonly [() => number, (element: Element) => void] {
  const [width, setWidth] = createSignal(first);
  const watch = new ResizeObserver((entries) => {
    const now = entries.at(-1)?.contentRect.width ?? 0;
    if (now > 0) setWidth(Math.floor(now));
  });
  onCleanup(() => watch.disconnect());
  return [width, (element) => watch.observe(element)];
}

/** Whether a media query holds, now and as it changes. */
export function mediaIs(query: string): () => boolean {
  const media = matchMedia(query);
  const [holds, setHolds] = createSignal(media.matches);
  const follow = () => setHolds(media.matches);
  media.addEventListener('change', follow);
  onCleanup(() => media.removeEventListener('change', follow));
  return holds;
}
