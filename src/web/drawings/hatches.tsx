// One texture for each group of materials, named beside it wherever it is drawn. A new group gets a new
// texture, not a new spacing. The patterns stand once in the page; drawings point at them by name.

import type { JSX } from 'solid-js';

/** The textures, by name. `over` is for too much and nothing else; `band` for what is expected, `upright` for it in a second case. */
const TEXTURES: Readonly<Record<string, () => JSX.Element>> = {
  water: () => (
    <pattern id="h-water" width="30" height="14" patternUnits="userSpaceOnUse">
      <path class="h" d="M1 3.5H17M16 10.5H29" />
    </pattern>
  ),
  clippings: () => (
    <pattern id="h-clippings" width="20" height="18" patternUnits="userSpaceOnUse">
      <path class="h" d="M4 8L2.5 2.5M6 8V1.5M8 8L10 3M14 17L12.5 11.5M16 17V10.5M18 17L19.6 12" />
    </pattern>
  ),
  trimmings: () => (
    <pattern id="h-trimmings" width="8" height="8" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <path class="h" d="M4 0V8" />
    </pattern>
  ),
  roots: () => (
    <pattern id="h-roots" width="18" height="20" patternUnits="userSpaceOnUse">
      <path class="h" d="M1.5 1.5H7.5L4.5 9.5ZM10.5 11H16.5L13.5 19Z" />
    </pattern>
  ),
  fruit: () => (
    <pattern id="h-fruit" width="16" height="14" patternUnits="userSpaceOnUse">
      <circle class="h" cx="4" cy="4" r="2.8" />
      <circle class="h" cx="12" cy="11" r="2.8" />
    </pattern>
  ),
  grounds: () => (
    <pattern id="h-grounds" width="7" height="7" patternUnits="userSpaceOnUse">
      <circle class="d" cx="2" cy="2" r="1.15" />
      <circle class="d" cx="5.5" cy="5.5" r="1.15" />
    </pattern>
  ),
  halves: () => (
    <pattern id="h-halves" width="20" height="16" patternUnits="userSpaceOnUse">
      <path class="h" d="M1.5 7A4 4 0 0 1 9.5 7ZM11.5 11A4 4 0 0 0 19.5 11Z" />
    </pattern>
  ),
  veins: () => (
    <pattern id="h-veins" width="24" height="20" patternUnits="userSpaceOnUse">
      <path class="h" d="M6 10V1M6 5L2.5 1.5M6 8L9.5 4.5M18 20V11M18 15L14.5 11.5M18 18L21.5 14.5" />
    </pattern>
  ),
  clods: () => (
    <pattern id="h-clods" width="20" height="18" patternUnits="userSpaceOnUse">
      <path class="h" d="M2 5L5 1.5L9 3L8 7L4 8ZM12 13L15 10L19 12L17.5 16L13.5 16.5Z" />
    </pattern>
  ),
  saw: () => (
    <pattern id="h-saw" width="12" height="10" patternUnits="userSpaceOnUse">
      <path class="h" d="M3 0L7.5 5L3 10" />
    </pattern>
  ),
  pods: () => (
    <pattern id="h-pods" width="20" height="16" patternUnits="userSpaceOnUse">
      <path class="h" d="M1 6Q5 -1 9 3Q6 7 1 6ZM11 14Q15 7 19 11Q16 15 11 14Z" />
    </pattern>
  ),
  forks: () => (
    <pattern id="h-forks" width="18" height="22" patternUnits="userSpaceOnUse">
      <path class="h" d="M5 10V5L2 1M5 5L8 1M14 21V16L11 12M14 16L17 12" />
    </pattern>
  ),
  ribbons: () => (
    <pattern id="h-ribbons" width="9" height="16" patternUnits="userSpaceOnUse">
      <path class="h" d="M4.5 0Q8 4 4.5 8T4.5 16" />
    </pattern>
  ),
  roofs: () => (
    <pattern id="h-roofs" width="18" height="14" patternUnits="userSpaceOnUse">
      <path class="h" d="M2 8L6 3L10 8M11 13L14 9L17 13" />
    </pattern>
  ),
  basket: () => (
    <pattern id="h-basket" width="20" height="12" patternUnits="userSpaceOnUse">
      <path class="h" d="M1 2H9M1 6H9M1 10H9M12 1V11M15 1V11M18 1V11" />
    </pattern>
  ),
  crumbs: () => (
    <pattern id="h-crumbs" width="18" height="16" patternUnits="userSpaceOnUse">
      <path class="h" d="M2 4L6 1M10 7L14 4M4 13L8 10" />
      <circle class="d" cx="13" cy="12" r="1.3" />
      <circle class="d" cx="3" cy="8" r="1" />
      <circle class="d" cx="16" cy="2" r="1" />
    </pattern>
  ),
  crosses: () => (
    <pattern id="h-crosses" width="16" height="16" patternUnits="userSpaceOnUse">
      <path class="h" d="M2 2L7 7M7 2L2 7M10 10L15 15M15 10L10 15" />
    </pattern>
  ),
  sugar: () => (
    <pattern id="h-sugar" width="5" height="5" patternUnits="userSpaceOnUse">
      <path class="h" d="M0 2.5H5M2.5 0V5" />
    </pattern>
  ),
  'bottled-feed': () => (
    <pattern id="h-bottled-feed" width="16" height="6" patternUnits="userSpaceOnUse">
      <path class="h2" d="M0 3H9M12 3H13.4" />
    </pattern>
  ),
  window: () => (
    <pattern id="h-window" width="4" height="4" patternUnits="userSpaceOnUse">
      <path class="h2" d="M0 2H4" />
    </pattern>
  ),
  band: () => (
    <pattern id="h-band" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
      <path class="h0" d="M3.5 0V7" />
    </pattern>
  ),
  upright: () => (
    <pattern id="h-upright" width="6" height="6" patternUnits="userSpaceOnUse">
      <path class="h0" d="M3 0V6" />
    </pattern>
  ),
  over: () => (
    <pattern id="h-over" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <path class="ha" d="M3.5 0V7" />
      <path class="ha" d="M0 3.5H7" />
    </pattern>
  ),
};

/** The patterns of the page; once, at its head. */
export function Hatches() {
  return (
    <svg class="defs" width="0" height="0" aria-hidden="true">
      <defs>{Object.values(TEXTURES).map((texture) => texture())}</defs>
    </svg>
  );
}

/** A square of one texture, as it stands in the drawing. */
export function Swatch(props: { readonly hatch: string }) {
  return (
    <svg class="swatch" width="40" height="40" viewBox="0 0 40 40" aria-hidden="true">
      <rect class="hatched" x="1" y="1" width="38" height="38" fill={fillOf(props.hatch)} />
    </svg>
  );
}

/** The paint of a texture. */
export function fillOf(hatch: string): string {
  return `url(#h-${hatch})`;
}
