// The offline shell: registers the service worker, and holds a newer version back until the grower takes it, so that
// no form is ever reloaded half typed.

import { createSignal } from 'solid-js';

const [waiting, setWaiting] = createSignal<ServiceWorker>();

/** A newer version that is ready and waits to be taken. */
export const newerVersion = waiting;

/** Registers the worker; where the browser has none (plain http on a home network), the app works online only. */
export function startOffline(): void {
  if (!('serviceWorker' in navigator)) return;
  navigator.serviceWorker
    .register('/sw.js', { updateViaCache: 'none' })
    .then((registration) => {
      const seen = () => {
        if (registration.waiting && navigator.serviceWorker.controller) setWaiting(registration.waiting);
      };
      seen();
      registration.addEventListener('updatefound', () => {
        registration.installing?.addEventListener('statechange', seen);
      });
    })
    .catch(() => undefined);
}

/** Takes the newer version: only ever from the grower's own touch. */
export function takeNewer(): void {
  const worker = waiting();
  if (worker === undefined) return;
  navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
  worker.postMessage({ type: 'SKIP_WAITING' });
}
