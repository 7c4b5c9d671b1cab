// Keeps the screen awake on wet-hand sheets, where the browser can.

import { onCleanup, onMount } from 'solid-js';

/** Holds a screen wake lock while the sheet stands, and takes it again when the page comes back to the front. */
export function keepAwake() {
  let lock: WakeLockSentinel | undefined;
  async function take() {
    if (!('wakeLock' in navigator) || document.visibilityState !== 'visible') return;
    try {
      lock = await navigator.wakeLock.request('screen');
    } catch {
      lock = undefined;
    }
  }
  const again = () => {
    take().catch(() => undefined);
  };
  onMount(() => {
    again();
    document.addEventListener('visibilitychange', again);
  });
  onCleanup(() => {
    document.removeEventListener('visibilitychange', again);
    lock?.release().catch(() => undefined);
  });
}
