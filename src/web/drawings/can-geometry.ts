// Levels in a watering can seen from the side. Its body is straight, so that a litre is as high everywhere.

/** Height of a full can's water, as a share of its body: the fill line stands a little under the rim. */
const FILL_LINE = 0.94;

/** Height of what is in it, as a share of its body. A full can stands at its fill line, more than full is no fuller. */
export function canLevel(filledFraction: number): number {
  return FILL_LINE * Math.max(0, Math.min(1, filledFraction));
}

/** A can mixed to its fill line: concentrate from the floor, water above it, as shares of its body's height. */
export function canLayers(concentrateFraction: number): { readonly concentrate: number; readonly water: number } {
  const concentrate = canLevel(concentrateFraction);
  return { concentrate, water: canLevel(1) - concentrate };
}
