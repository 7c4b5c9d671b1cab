// What every answer tells a browser to allow: nothing but our own files, in a window of its own. Pages, files and refusals
// bear the same; an answer that Node sends before there is a request bears what needs no page.

/** What the browser may not do for this page or anything in it; a name it does not know would be a complaint on every page. The screen is kept awake on wet-hand sheets, so that is not here. */
const NOT_USED = [
  ...['accelerometer', 'autoplay', 'camera', 'display-capture', 'encrypted-media', 'geolocation', 'gyroscope', 'hid'],
  ...[
    'magnetometer',
    'microphone',
    'midi',
    'payment',
    'picture-in-picture',
    'publickey-credentials-get',
    'serial',
    'usb',
  ],
];

/** Photos come from a file field, which needs no camera of the page's own. */
export const PERMISSIONS: string = NOT_USED.map((feature) => `${feature}=()`).join(', ');

/** The policy of the page: text of ours alone is run, drawn and styled. */
export const POLICY = {
  'default-src': ["'self'"],
  // The solver of the cover is compiled code of our own files: it may be run, text may not.
  'script-src': ["'self'", "'wasm-unsafe-eval'"],
  'style-src': ["'self'"],
  'img-src': ["'self'", 'data:', 'blob:'],
  'object-src': ["'none'"],
  'base-uri': ["'none'"],
  'form-action': ["'self'"],
  'frame-ancestors': ["'none'"],
};

/** For an answer that is a line of text: nothing in it is to be run, kept or framed. */
export const BARE: Readonly<Record<string, string>> = {
  'content-security-policy': "default-src 'none'; frame-ancestors 'none'",
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'permissions-policy': PERMISSIONS,
  'referrer-policy': 'no-referrer',
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
  'cache-control': 'no-store',
};
