// What is said where a sheet failed, where the record does not open, and where the browser took it away.

/** What failed, on a sheet of the open record. */
export const failed = {
  missing: 'This sheet could not be loaded. There is no signal, or this page is older than its server.',
  fault: 'This sheet stopped because of a fault in our program.',
} as const;

/** Why the record does not open. */
export const notOpened = {
  missing:
    'A part of this page could not be loaded. There is no signal, or this page is older than its server. What you saved is not touched.',
  refused:
    'This browser keeps nothing for this page, as in some private windows. Open the page in an ordinary window, and allow it to keep data.',
  blocked:
    'Another tab with an older version of this page holds the record. Close that tab, then reload this page. What you saved is still there.',
  outdated:
    'A newer version of this program wrote the record in this browser. Reload this page to fetch the newer version. What you saved is still there.',
  full: 'This device has no room left, so the browser does not open the record. Make room, then reload this page. What you saved is still there.',
  closed: 'The browser closed the record while it was being opened. Reload this page.',
  deleted: 'The record was deleted from this browser while it was being opened. Reload this page.',
  unreadable:
    'Our program failed while reading the record. What you saved is still in this browser. Save it to a file before you try anything else.',
  fault: 'Our program failed while it started. Reload this page. What you saved is not touched.',
  broken: 'The browser failed to open the record. Close all tabs of this page, then open it again.',
} as const;

/** What took the record away while it was open; the page still holds what it showed. */
export const stopped = {
  outdated:
    'Another tab runs a newer version of this page, so this tab keeps nothing more. Reload this page. What you saved is still there.',
  closed:
    'The browser closed the record; perhaps its data was cleared. This page still holds the entries: save them to a file, then reload.',
  deleted:
    'The record was deleted from this browser while this page was open. This page still holds the entries: save them to a file now.',
} as const;

export const trouble = {
  sheetFailed: 'This sheet failed',
  notOpen: 'The record is not open',
  recordClosed: 'The record was closed',
  /** True while the store is open: a failing sheet writes nothing. */
  kept: 'Your record is not touched: what you saved is still there.',
  demoKept: 'The demo garden is made anew when you reload. Your own record is not touched.',
  again: 'Try this sheet again',
  toRecord: 'Open the Record sheet to make a file',
  saveFile: 'Save the record to a file',
  saved: (name: string) => `The browser was handed the file ${name}. Check that it arrived.`,
  savedWithoutPhotos: (name: string) =>
    `The browser was handed the file ${name}, with every entry but no photo. Check that it arrived.`,
  notSaved: 'The file could not be made. Reload this page, then make it on the Record sheet.',
  details: 'What the program reports',
} as const;
