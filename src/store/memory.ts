// A store in memory: for tests, for the demo, and where a browser keeps nothing, so that the work of the day can at least
// be written to a file. It forgets everything when it is let go of, and whoever uses it must say so.

import type { Kept } from '#journal/entry.ts';
import { checked, isNew, isNewPhoto } from './gate.ts';
import { photoOf } from './photos.ts';
import { type Photo, type Store, StoreFailure } from './store.ts';

/** A store that lives as long as the page. */
export function memoryStore(): Store {
  const rows: { readonly seq: number; readonly kept: Kept }[] = [];
  const byId = new Map<string, Kept>();
  const facts = new Map<string, unknown>();
  const photos = new Map<string, Photo>();
  const watchers = new Set<() => void>();
  let seq = 0;
  let open = true;
  const ready = () => {
    if (!open) throw new StoreFailure('closed', 'the store was closed');
  };
  const tell = () => {
    for (const changed of watchers) changed();
  };
  const append = async (entries: readonly Kept[]) => {
    ready();
    const fresh = checked(entries).filter((kept) => isNew(kept, byId.get(kept.id)));
    // Copied before anything is kept: what cannot be copied must leave nothing behind.
    for (const kept of structuredClone(fresh)) {
      rows.push({ seq: ++seq, kept });
      byId.set(kept.id, kept);
    }
    if (fresh.length > 0) tell();
  };
  return {
    // No tab sees another's memory, so none has anything to hear of.
    hearsTabs: true,
    append,
    async all() {
      ready();
      return structuredClone(rows.map(({ kept }) => kept));
    },
    async since(cursor) {
      ready();
      const later = rows.filter((row) => row.seq > cursor);
      return { entries: structuredClone(later.map(({ kept }) => kept)), cursor: later.at(-1)?.seq ?? cursor };
    },
    async forget(plot) {
      ready();
      const gone = rows.filter(({ kept }) => plot === undefined || kept.plot === plot);
      for (const { kept } of gone) {
        byId.delete(kept.id);
        const photo = photoOf(kept);
        if (photo !== undefined) photos.delete(photo);
      }
      rows.splice(0, rows.length, ...rows.filter((row) => !gone.includes(row)));
      if (plot === undefined) {
        facts.clear();
        photos.clear();
      }
      tell();
    },
    async getFact(name) {
      ready();
      return structuredClone(facts.get(name));
    },
    async setFact(name, value) {
      ready();
      if (value === undefined) facts.delete(name);
      else facts.set(name, structuredClone(value));
    },
    async putPhoto(photo) {
      ready();
      if (isNewPhoto(photo, photos.get(photo.id))) photos.set(photo.id, structuredClone(photo));
    },
    async getPhoto(id) {
      ready();
      return structuredClone(photos.get(id));
    },
    async photoIds() {
      ready();
      return [...photos.keys()].sort();
    },
    async takeIn() {
      ready();
      const put = new Map<string, Photo>();
      return {
        async putPhoto(photo) {
          ready();
          if (isNewPhoto(photo, put.get(photo.id) ?? photos.get(photo.id))) put.set(photo.id, structuredClone(photo));
        },
        async keep(entries) {
          const before = rows.length;
          await append(entries);
          for (const [id, photo] of put) photos.set(id, photo);
          return rows.length - before;
        },
        async drop() {
          put.clear();
        },
      };
    },
    differing: async () => [],
    places: () => 1,
    watch(changed) {
      watchers.add(changed);
      return () => watchers.delete(changed);
    },
    close() {
      open = false;
      watchers.clear();
    },
  };
}
