// Up to three photos of a look, added once it is written down: drawn small and anew (shrink.ts), kept by the store
// before their entry names them. They are shown from a canvas, so that the page needs no address for them.

import { createMemo, createResource, createSignal, For, Show } from 'solid-js';
import type { LookWords } from '#words/en/look.ts';
import { useRecord } from '../app/context.tsx';
import { freshId } from '../app/record.ts';
import { HandMark } from '../parts/marks.tsx';
import { shrink } from './shrink.ts';

/** As many as a look may carry. */
export const MOST_PHOTOS = 3;

export function Photos(props: { readonly look: string; readonly words: LookWords }) {
  const record = useRecord();
  const [trouble, setTrouble] = createSignal<'unread' | 'unkept'>();
  const [busy, setBusy] = createSignal(false);
  // By id, so that a photo that stands is not drawn again when another joins it.
  const kept = createMemo(() =>
    record.plot().photos.flatMap(({ body }) => (body.of === props.look ? [body.photo] : [])),
  );

  async function add(file: File): Promise<void> {
    setTrouble(undefined);
    setBusy(true);
    try {
      const small = await shrink(file).catch(() => undefined);
      if (small === undefined) {
        setTrouble('unread');
        return;
      }
      const photo = freshId();
      const bytes = new Uint8Array(await small.blob.arrayBuffer());
      await record.store.putPhoto({ id: photo, type: 'image/jpeg', bytes });
      await record.act('photo.taken', {
        photo,
        of: props.look,
        type: 'image/jpeg',
        bytes: bytes.length,
        widthPx: small.widthPx,
        heightPx: small.heightPx,
      });
    } catch {
      setTrouble('unkept');
    } finally {
      setBusy(false);
    }
  }

  return (
    <section class="photos" aria-label={props.words.photo.heading}>
      <ul>
        <For each={kept()}>
          {(photo, i) => (
            <li>
              <PhotoView photo={photo} alternative={props.words.photo.alternative(i() + 1)} />
            </li>
          )}
        </For>
      </ul>
      <Show when={kept().length < MOST_PHOTOS}>
        <label class="block photo">
          <input
            type="file"
            accept="image/*"
            capture="environment"
            disabled={busy()}
            onChange={(event) => {
              const input = event.currentTarget;
              const file = input.files?.[0];
              if (file)
                add(file)
                  .finally(() => (input.value = ''))
                  .catch(() => undefined);
            }}
          />
          <span>{props.words.photo.add(kept().length)}</span>
        </label>
        <p class="note">{props.words.photo.note}</p>
      </Show>
      <Show when={trouble()}>
        {(what) => (
          <p class="accent" role="alert">
            <HandMark />
            {props.words.photo[what()]}
          </p>
        )}
      </Show>
    </section>
  );
}

const SHOWN_PX = 240;

/** A kept photo, drawn on a canvas. */
export function PhotoView(props: { readonly photo: string; readonly alternative: string }) {
  const record = useRecord();
  let canvas: HTMLCanvasElement | undefined;
  createResource(
    () => props.photo,
    async (photo) => {
      const kept = await record.store.getPhoto(photo);
      if (kept === undefined || canvas === undefined) return;
      const picture = await createImageBitmap(new Blob([new Uint8Array(kept.bytes)], { type: kept.type }));
      const share = SHOWN_PX / Math.max(picture.width, picture.height);
      canvas.width = Math.round(picture.width * share);
      canvas.height = Math.round(picture.height * share);
      canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height);
      picture.close();
    },
  );
  return <canvas ref={canvas} role="img" aria-label={props.alternative} width="240" height="180" />;
}
