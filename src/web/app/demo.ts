// The demo garden: a plot of its own in memory, at a day of its own, with nothing in common with the own record.

import { createContext, useContext } from 'solid-js';

export interface Demo {
  /** The day the demo stands at; undefined while the own plot is shown. */
  readonly day: () => string | undefined;
  /** Fetches the garden and shows it; rejects where it does not arrive. */
  readonly open: () => Promise<void>;
  readonly step: (days: 1 | -1) => void;
  readonly leave: () => void;
}

export const DemoContext = createContext<Demo>();

/** Opening, stepping and leaving the demo garden, from any sheet. */
export function useDemo(): Demo {
  const demo = useContext(DemoContext);
  if (demo === undefined) throw new Error('useDemo: no demo context above this sheet');
  return demo;
}

/** The calendar date so many days later. */
export function dayAfter(on: string, days: number): string {
  return new Date(Date.parse(`${on}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);
}
