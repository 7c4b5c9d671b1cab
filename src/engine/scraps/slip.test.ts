import { describe, expect, it } from 'vitest';
import { excluded } from '../tables/index.ts';
import { excludedIn } from './excluded.ts';
import { answerSlip, type SlipOutcome, type SourceSlip } from './slip.ts';

const ORDER: readonly SlipOutcome[] = ['in', 'compost-only', 'set-aside', 'out'];
const rank = (slip: SourceSlip) => ORDER.indexOf(answerSlip(slip).outcome);
const ids = (slip: SourceSlip) => answerSlip(slip).reasons.map(({ rule }) => rule);

/** Fresh clippings off the grower's own untreated lawn. */
const own: SourceSlip = {
  whose: 'own',
  from: 'garden',
  treated: 'no',
  condition: 'fresh',
  material: 'grass-clippings-fresh',
};
const peelings: SourceSlip = {
  whose: 'household',
  from: 'kitchen',
  kitchen: 'raw',
  condition: 'fresh',
  material: 'kitchen-trimmings',
};

describe('a source slip', () => {
  it('lets in what is known, fresh, raw, untreated and named, without a word', () => {
    for (const slip of [own, peelings]) expect(answerSlip(slip)).toEqual({ outcome: 'in', reasons: [] });
  });

  it.each<[string, Partial<SourceSlip>, SlipOutcome, string]>([
    ['treated, kind not known', { treated: 'yes' }, 'out', 'slip-weedkiller'],
    [
      'treated with a lasting weedkiller long ago',
      { treated: 'yes', weedkiller: 'lasting', sinceTreatedDays: 700 },
      'out',
      'slip-weedkiller',
    ],
    [
      'treated with another, label not at hand',
      { treated: 'yes', weedkiller: 'other', labelAllows: 'unknown' },
      'out',
      'slip-weedkiller',
    ],
    [
      'treated with another, whose label lets it go',
      { treated: 'yes', weedkiller: 'other', labelAllows: 'yes' },
      'set-aside',
      'slip-label-allows',
    ],
    [
      'a lasting one, whatever is said of a label',
      { treated: 'yes', weedkiller: 'lasting', labelAllows: 'yes' },
      'out',
      'slip-weedkiller',
    ],
    ['treatment not known', { treated: 'unknown' }, 'set-aside', 'slip-treatment-unknown'],
    ['treatment not answered', { treated: undefined }, 'set-aside', 'slip-treatment-unknown'],
    ['whose is not known', { whose: 'unknown' }, 'set-aside', 'slip-source-unknown'],
    ['from the street', { from: 'street' }, 'compost-only', 'slip-from-the-street'],
    ['slimy', { condition: 'slimy' }, 'compost-only', 'slip-slimy'],
    ['state not told', { condition: undefined }, 'compost-only', 'slip-condition-not-told'],
    ['off the plate', { kitchen: 'plate' }, 'out', 'slip-off-the-plate'],
    ['cooked', { kitchen: 'cooked' }, 'out', 'slip-cooked'],
    ['no plant named', { material: undefined }, 'compost-only', 'slip-plant-not-named'],
    ['foxglove among it', { species: 'clear-out with foxgloves' }, 'out', 'excluded-foxglove'],
    ['dock roots among it', { excluded: ['dock-roots'] }, 'compost-only', 'excluded-dock-roots'],
  ])('%s', (_, change, outcome, rule) => {
    const answer = answerSlip({ ...own, ...change });
    expect(answer.outcome).toBe(outcome);
    expect(answer.reasons.map((reason) => reason.rule)).toEqual([rule]);
  });

  it('gives the worst answer and keeps every other reason behind it', () => {
    const slip: SourceSlip = {
      ...own,
      from: 'street',
      whose: 'found',
      treated: 'unknown',
      condition: 'slimy',
      kitchen: 'plate',
    };
    expect(answerSlip(slip).outcome).toBe('out');
    expect(ids(slip)).toEqual(['slip-off-the-plate', 'slip-treatment-unknown', 'slip-from-the-street', 'slip-slimy']);
  });

  it('asks about weedkiller of hay from a shop, not of raw kitchen food', () => {
    const bale: SourceSlip = { ...peelings, from: 'shop', whose: 'bought', material: 'hay-grass' };
    expect(ids(bale)).toEqual(['slip-treatment-unknown']);
    expect(ids({ ...peelings, treated: 'unknown' })).toEqual(['slip-treatment-unknown']);
    expect(ids({ ...peelings, from: 'shop', whose: 'bought', material: 'carrot' })).toEqual([]);
  });

  it.each(['hay-grass', 'hay-legume', 'straw', 'horse-manure', 'finished-compost', 'long-grass'])(
    'asks the same of %s from a shop, whichever it is',
    (id) => {
      expect(ids({ ...peelings, from: 'shop', whose: 'bought', material: id })).toContain('slip-treatment-unknown');
    },
  );

  it('asks the same of what a shop sold under a name of the own, and not of such a name out of the kitchen', () => {
    const typed: SourceSlip = { ...peelings, material: undefined, species: 'barley straw' };
    expect(ids({ ...typed, from: 'shop', whose: 'bought' })).toEqual(['slip-treatment-unknown']);
    expect(ids({ ...typed, species: 'samphire ends' })).toEqual([]);
  });

  it('treats a kitchen bucket nobody can speak for as off the plate', () => {
    expect(ids({ ...peelings, kitchen: undefined })).toEqual(['slip-kitchen-not-told']);
    expect(ids({ ...peelings, kitchen: 'unknown' })).toEqual(['slip-kitchen-not-told']);
  });

  it('never grows softer when a good answer is taken back, whatever else is answered', () => {
    const answers = {
      whose: ['own', 'household', 'neighbour', 'shared', 'bought', 'found', 'unknown'],
      from: ['garden', 'kitchen', 'neighbour', 'street', 'shop', 'unknown'],
      treated: ['no', undefined, 'unknown', 'yes'],
      condition: ['fresh', 'slimy', 'unknown', undefined],
      kitchen: ['raw', undefined, 'unknown', 'cooked', 'plate'],
      material: ['grass-clippings-fresh', undefined],
      site: [
        undefined,
        { outside: 'allowed' },
        { outside: 'unknown' },
        { outside: 'forbidden' },
        { outside: 'allowed', kitchen: 'forbidden' },
      ],
    } as const;
    const takenBack: readonly ((slip: SourceSlip) => SourceSlip | undefined)[] = [
      (slip) => ({ ...slip, whose: 'unknown' }),
      (slip) => (slip.from === 'street' ? undefined : { ...slip, from: 'unknown' }),
      (slip) => (slip.treated === 'yes' ? undefined : { ...slip, treated: 'unknown' }),
      (slip) => ({ ...slip, condition: 'unknown' }),
      (slip) => (slip.kitchen === 'plate' || slip.kitchen === 'cooked' ? undefined : { ...slip, kitchen: 'unknown' }),
      (slip) =>
        slip.site === undefined || slip.site.outside === 'forbidden'
          ? undefined
          : { ...slip, site: { ...slip.site, outside: 'unknown' } },
      (slip) => ({ ...slip, excluded: ['rhubarb-leaf'] }),
      (slip) => ({ ...slip, species: 'oleander' }),
    ];
    let tried = 0;
    const softer: SourceSlip[] = [];
    for (const whose of answers.whose)
      for (const from of answers.from)
        for (const treated of answers.treated)
          for (const condition of answers.condition)
            for (const kitchen of answers.kitchen)
              for (const material of answers.material)
                for (const site of answers.site) {
                  const slip: SourceSlip = { whose, from, treated, condition, kitchen, material, site };
                  const before = rank(slip);
                  for (const take of takenBack) {
                    const worse = take(slip);
                    if (worse === undefined) continue;
                    tried += 1;
                    if (rank(worse) < before) softer.push(worse);
                  }
                }
    expect(tried).toBeGreaterThan(30_000);
    expect(softer).toEqual([]);
  });
});

describe('the plants that stay out', () => {
  it('are found by every common and Latin name in the table', () => {
    for (const row of excluded) {
      for (const name of row.names)
        expect(excludedIn(`a bag of ${name.toUpperCase()}, cut today`), name).toContain(row);
      const [latin = ''] = row.latin.split(';');
      if (!/ on | spp\./.test(latin) && latin !== '') expect(excludedIn(latin), latin).toContain(row);
    }
  });

  it.each([
    ['foxglove leaves', 'foxglove'],
    ['tomatoes with late blight', 'late-blight'],
    ['Onions, white rot', 'white-rot'],
    ['Japanese Knotweed', 'japanese-knotweed'],
    ['angel’s trumpets', 'angels-trumpet'],
    ['Euphorbia', 'spurge'],
    ['rhubarb leaves', 'rhubarb-leaf'],
  ])('"%s" is %s', (typed, id) => {
    expect(excludedIn(typed).map((row) => row.id)).toContain(id);
  });

  it.each([
    'rhubarb stalks',
    'tomato leaves',
    'cabbage',
    'docile grass',
    'nettle',
    'comfrey',
    'bay laurel',
    'lawn clippings',
    '',
  ])('leaves "%s" alone', (typed) => {
    expect(excludedIn(typed)).toEqual([]);
  });

  it('are at least thirty, of all five groups, those that poison most among them', () => {
    expect(excluded.length).toBeGreaterThanOrEqual(30);
    expect(new Set(excluded.map((row) => row.group)).size).toBe(5);
  });
});
