// Long work in short turns: between them the page draws and answers.

/** Longer turns are felt. @practice a frame lasts 16.7 ms */
const TURN_MS = 12;

export interface Turns {
  /** Whether the turn has lasted long enough. */
  readonly isOver: () => boolean;
  /** Lets everybody else have a turn, where this one is over. */
  readonly next: () => Promise<void>;
}

export function turns(): Turns {
  let begun = performance.now();
  const isOver = () => performance.now() - begun > TURN_MS;
  return {
    isOver,
    async next() {
      if (!isOver()) return;
      await othersFirst();
      begun = performance.now();
    },
  };
}

/** A message to oneself comes after what waits already; a timer would be slowed in a tab that is not seen. */
function othersFirst(): Promise<void> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(undefined);
  });
}
