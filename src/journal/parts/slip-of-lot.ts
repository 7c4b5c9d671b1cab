// A lot of the record as the engine's slip asks for it. Answers that were written down are taken as they stand; older
// entries, which had no field for an answer, are read by whose lot it is and by its material. What nobody told stays
// missing, and the engine counts it as not known.

import { bioassayVerdict } from '#engine/scraps/bioassay.ts';
import type { SiteAnswer, SiteRules, SourceSlip } from '#engine/scraps/slip.ts';
import { material } from '#engine/tables/index.ts';
import type { ActOf } from '../act.ts';
import type { Body } from '../kinds/index.ts';
import { momentOf } from '../moment.ts';
import type { PlotFacts } from './described.ts';

type Weighed = Body<'scraps.weighed'>;
type Tested = Body<'lot.tested'>;

/** The row of the materials table for cooked food. */
const COOKED = 'cooked-food';
/** Rows and groups of that table whose name says what state they are in. */
const NAMED_FRESH: readonly string[] = ['grass-clippings-fresh', 'lucerne'];
const NAMED_WILTED = 'grass-clippings-wilted';
const DRY_GROUPS: readonly string[] = ['hay-straw', 'browns'];

/** What the plot says of scraps; undefined where it says nothing: it is then no site with a rule. */
export function siteOf({ outsideScraps, kitchenScraps, cookedFood }: PlotFacts): SiteRules | undefined {
  if (outsideScraps === undefined && kitchenScraps === undefined && cookedFood === undefined) return undefined;
  const others = outsideScraps === undefined && kitchenScraps === undefined;
  return {
    // A plot that speaks of cooked food alone says nothing of the rest.
    outside: others ? 'allowed' : siteAnswer(outsideScraps),
    kitchen: kitchenScraps === undefined ? undefined : siteAnswer(kitchenScraps),
    cooked: cookedFood === undefined ? undefined : siteAnswer(cookedFood),
  };
}

function siteAnswer(allowed: boolean | undefined): SiteAnswer {
  return allowed === undefined ? 'unknown' : allowed ? 'allowed' : 'forbidden';
}

/** The slip of a lot; `beans` and `site` come from elsewhere in the record. */
export function slipOfLot(
  lot: Weighed,
  around: { readonly site?: SiteRules | undefined; readonly beans?: SourceSlip['beans'] } = {},
): SourceSlip {
  const { slip } = lot;
  return {
    whose: slip?.whose ?? 'unknown',
    from: fromOf(lot),
    treated: slip?.treated,
    weedkiller: slip?.weedkiller,
    labelAllows: slip?.labelAllows,
    condition: lot.condition ?? conditionOf(lot),
    kitchen: kitchenOf(lot),
    material: lot.material,
    species: lot.name,
    site: around.site,
    beans: around.beans,
  };
}

/** The state that the name of a material tells where the lot does not. */
function conditionOf({ material: id }: Weighed): SourceSlip['condition'] {
  const row = id === undefined ? undefined : material(id);
  if (row === undefined) return undefined;
  if (DRY_GROUPS.includes(row.group)) return 'dry';
  return NAMED_FRESH.includes(row.id) ? 'fresh' : row.id === NAMED_WILTED ? 'wilted' : undefined;
}

/** Where a lot comes from: as told, otherwise by whose it is and what it is. */
function fromOf({ origin, slip, material: id }: Weighed): SourceSlip['from'] {
  if (slip?.cameFrom !== undefined) return slip.cameFrom;
  if (slip?.whose === 'neighbour') return 'neighbour';
  if (slip?.whose === 'found') return 'street';
  if (origin === 'kitchen' || origin === 'cooked' || origin === 'plate') return 'kitchen';
  if (slip?.whose === 'bought') return 'shop';
  if (origin === 'garden') return 'garden';
  const group = id === undefined ? undefined : material(id)?.group;
  return group === 'kitchen' ? 'kitchen' : slip?.whose === undefined || slip.whose === 'unknown' ? 'unknown' : 'garden';
}

/** Raw, cooked or off the plate; what the materials table names is raw, unless the lot says otherwise. */
function kitchenOf({ origin, kitchen, material: id }: Weighed): SourceSlip['kitchen'] {
  if (origin === 'cooked' || origin === 'plate') return origin;
  if (kitchen !== undefined) return kitchen;
  return id !== undefined && id !== COOKED && material(id) !== undefined ? 'raw' : undefined;
}

/**
 * What the tests of a lot say together: harm in any of them stays, and only beans can clear.
 * @source wsu-bioassay general procedures
 */
export function beansOf(tests: readonly ActOf<'lot.tested'>[]): SourceSlip['beans'] {
  if (tests.length === 0) return undefined;
  const read = tests.map(({ body, when }) => ({ test: body.test, outcome: outcomeOfTest(body, when.dateDay) }));
  if (read.some(({ outcome }) => outcome === 'harmed')) return 'harmed';
  return read.some(({ test, outcome }) => test === 'bean' && outcome === 'clear') ? 'clear' : undefined;
}

/** The outcome as written, unless the counts that stand beside it say something stricter. */
export function outcomeOfTest(body: Tested, readDay: number): Tested['outcome'] {
  const { outcome, sownOn, testSown, testUp, testDeformed, controlSown, controlUp, controlDeformed } = body;
  if (outcome === 'harmed' || testSown === undefined || controlSown === undefined) return outcome;
  const { verdict } = bioassayVerdict({
    test: {
      potCount: body.testPots ?? Number.NaN,
      sownCount: testSown,
      germinatedCount: testUp ?? Number.NaN,
      deformedCount: testDeformed ?? Number.NaN,
    },
    control: {
      potCount: body.controlPots ?? Number.NaN,
      sownCount: controlSown,
      germinatedCount: controlUp ?? Number.NaN,
      deformedCount: controlDeformed ?? Number.NaN,
    },
    sinceSownDays: sownOn === undefined ? Number.NaN : readDay - momentOf(sownOn).dateDay,
    leavesCount: body.leaves ?? Number.NaN,
  });
  if (verdict === 'affected') return 'harmed';
  return verdict === 'clear' ? outcome : 'unclear';
}
