// The crops of data/crops.csv by the names growers give them, and the reading of a bed's crop as it was typed: several
// crops with commas, counts in front. A name the table lacks stays a name; nothing is guessed.

/** Names of each crop, the first one shown. */
const NAMES: Readonly<Record<string, readonly string[]>> = {
  asparagus: ['asparagus'],
  'snap-bean': [
    ...['snap bean', 'green bean', 'french bean', 'bush bean', 'pole bean', 'climbing bean', 'runner bean', 'bean'],
  ],
  'broad-bean': ['broad bean', 'fava bean', 'faba bean'],
  beetroot: ['beetroot', 'beet', 'red beet'],
  broccoli: ['broccoli', 'calabrese'],
  'brussels-sprouts': ['brussels sprout', 'sprout', 'brussel sprout'],
  cabbage: ['cabbage', 'white cabbage', 'red cabbage', 'savoy'],
  carrot: ['carrot'],
  cauliflower: ['cauliflower'],
  celery: ['celery'],
  cucumber: ['cucumber', 'gherkin'],
  eggplant: ['aubergine', 'eggplant'],
  garlic: ['garlic'],
  kale: ['kale', 'collard', 'curly kale'],
  kohlrabi: ['kohlrabi'],
  leek: ['leek'],
  lettuce: ['lettuce', 'salad', 'cos', 'romaine'],
  melon: ['melon', 'muskmelon', 'cantaloupe'],
  onion: ['onion', 'bulb onion'],
  pea: ['pea', 'shelling pea', 'garden pea'],
  pepper: ['sweet pepper', 'pepper', 'bell pepper', 'chilli', 'chili', 'chillies', 'chilies', 'capsicum'],
  potato: ['potato'],
  pumpkin: ['winter squash', 'pumpkin', 'squash'],
  radish: ['radish'],
  spinach: ['spinach'],
  'summer-squash': ['courgette', 'zucchini', 'summer squash', 'marrow'],
  'sweet-corn': ['sweet corn', 'sweetcorn', 'corn', 'maize'],
  'sweet-potato': ['sweet potato'],
  tomato: ['tomato'],
  turnip: ['turnip'],
  strawberry: ['strawberry'],
  apple: ['apple', 'apple tree'],
  chard: ['chard', 'swiss chard', 'leaf beet'],
  rocket: ['rocket', 'arugula', 'rucola'],
};

const byName = new Map(
  Object.entries(NAMES).flatMap(([id, names]) =>
    [id.replaceAll('-', ' '), ...names].map((name) => [name, id] as const),
  ),
);

/** One crop of a bed as typed, and the id of the table where it has one. */
export interface NamedCrop {
  readonly typed: string;
  /** The name without its count, in small letters and in the forms it may be the plural of. */
  readonly names: readonly string[];
  readonly id: string | undefined;
}

/** Every id a crop of the table can be asked by. @arithmetic look-up */
export const cropIds: readonly string[] = Object.keys(NAMES);

/** The name a crop goes by on a screen. @arithmetic look-up */
export function cropName(id: string): string {
  return NAMES[id]?.[0] ?? id;
}

/**
 * The crops of a bed as typed: "8 tomatoes", "kale, chard", "carrots and beetroot".
 * @arithmetic text alone: counts in front fall away, plurals are read as one
 */
export function readCrops(typed: string): readonly NamedCrop[] {
  return typed
    .split(/[,;/+&]|\band\b/i)
    .map((one) => one.trim())
    .filter((one) => one !== '')
    .map((one) => ({ typed: one, names: formsOf(one), id: idOf(one) }));
}

/** A crop's name without its count, as typed and as it may be the plural of. @arithmetic text alone */
export function formsOf(typed: string): readonly string[] {
  const name = typed
    .toLowerCase()
    .replace(/^\d+\s*[×x]?\s*/, '')
    .replaceAll('-', ' ')
    .trim();
  return [name, name.replace(/ies$/, 'y'), name.replace(/oes$/, 'o'), name.replace(/es$/, ''), name.replace(/s$/, '')];
}

function idOf(typed: string): string | undefined {
  for (const form of formsOf(typed)) {
    const id = byName.get(form);
    if (id !== undefined) return id;
  }
  return undefined;
}
