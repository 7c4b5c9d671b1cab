// The demo garden: how it is offered, and what stands on the block that steps through its days.

/** Words of the demo. */
export const demo = {
  offer: 'Show me the demo garden',
  offerNote: 'A season of an invented plot, to look around in. Nothing of it gets into your own record.',
  missing: 'The demo garden could not be loaded. There is no signal, or this page is older than its server.',
  heading: 'This is the demo garden',
  note: 'All of it is invented. What you do here is forgotten when you leave.',
  earlier: 'A day earlier',
  later: 'A day later',
  leave: 'Leave the demo',
  noFiles: 'The demo garden is not kept on this device and goes into no file.',
} as const;
