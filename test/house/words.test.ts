// No screen, label or answer holds a word that promises, comforts falsely or talks like a product.

import { parse as parseCsv } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { codeUnder, filesUnder } from './code.ts';
import { claimFaults, claimsIn, type Exception, keptOffIn, shownIn, type Unclaimed, wordFaults } from './prose.ts';

/** Each line needs its reason; a line that nothing needs any more is a fault. */
const EXCEPTIONS: readonly Exception[] = [
  {
    file: 'src/words/en/weigh-in-labels.ts',
    text: 'cures',
    reason: 'names a place on the sheet to the code; nobody reads it',
  },
];

const sources = [
  ...codeUnder('src/words'),
  ...codeUnder('src/web'),
  ...codeUnder('src/plot'),
  ...codeUnder('src/tasks'),
  ...codeUnder('src/cli'),
];

describe('what the faces say', () => {
  it('holds no kept-off word', () => {
    expect(sources.length).toBeGreaterThan(5);
    expect(sources.flatMap((one) => wordFaults(one, EXCEPTIONS))).toEqual([]);
  });

  it('has no exception that nothing needs', () => {
    const idle = EXCEPTIONS.filter(
      ({ file, text }) =>
        !sources.some((one) => one.file === file && shownIn(one).some((shown) => shown.text === text)),
    );
    expect(idle).toEqual([]);
  });

  it('holds no kept-off word in the page around the script', () => {
    const pages = filesUnder(['src/web'], /\.html$/);
    const said = pages.flatMap(({ file, text }) =>
      keptOffIn(text.replace(/<[^>]*>/g, ' ')).map(({ word }) => `${file}: ${word}`),
    );
    expect(said).toEqual([]);
  });

  it.each(['materials.csv', 'sugars.csv', 'excluded.csv'])(
    'holds no kept-off word in the names and reasons of %s',
    (table) => {
      const [source] = filesUnder(['data'], new RegExp(`^${table.replace('.', '\\.')}$`));
      const rows = parseCsv(source?.text ?? '', { columns: true }) as readonly Record<string, string>[];
      expect(rows.length).toBeGreaterThan(3);
      const said = rows.flatMap(({ id, name, why }) =>
        keptOffIn(`${name} ${why ?? ''}`).map(({ word }) => `${id}: ${word}`),
      );
      expect(said).toEqual([]);
    },
  );
});

/** Columns of the tables that no screen shows. */
const NEVER_SHOWN: readonly string[] = ['id', 'address', 'licence', 'seen_on'];

/** Passages that hold a claiming word and claim nothing. A line that nothing needs any more is a fault. */
const UNCLAIMED: readonly Unclaimed[] = [
  {
    file: 'src/engine/working/heap.ts',
    passage: 'organic matter over its carbon',
    reason: 'what a laboratory calls the part of a dry sample that burns',
  },
  {
    file: 'data/heap.csv',
    passage: 'organic matter over its carbon',
    reason: 'what a laboratory calls the part of a dry sample that burns',
  },
  {
    file: 'src/words/en/heap.ts',
    passage: 'United States organic growers',
    reason: 'whom the rule on raw manure is written for',
  },
  {
    file: 'src/words/en/heap.ts',
    passage: 'United States organic rules',
    reason: 'the code a log of heat is held against, named so that nobody takes it for a claim',
  },
  {
    file: 'src/words/en/heap.ts',
    passage: 'United States organic rule (7 CFR 205.203)',
    reason: 'the code a log of heat is held against',
  },
  {
    file: 'src/words/en/heap.ts',
    passage: 'United States organic board 2006',
    reason: 'the board whose recommendation a log of heat is held against',
  },
  {
    file: 'data/sources.csv',
    passage: 'nitrogen from organic materials',
    reason: 'the title of a report',
  },
  {
    file: 'data/sources.csv',
    passage: 'National Organic Program',
    reason: 'the name of a publisher',
  },
  {
    file: 'src/engine/working/water.ts',
    passage: 'water with much organic matter',
    reason: 'matter that once lived, as chemists say; nothing is said of how it was grown',
  },
  {
    file: 'src/engine/working/ledger.ts',
    passage: 'set free by organic matter',
    reason: 'what a soil report calls the part of the soil that burns',
  },
  {
    file: 'src/words/en/record.ts',
    passage: 'organic matter',
    reason: 'what a soil report calls the part of the soil that burns',
  },
  {
    file: 'src/words/en/water.ts',
    passage: 'US organic rule for raw manure',
    reason: 'names the regulation that the days are borrowed from',
  },
  {
    file: 'data/sources.csv',
    passage: 'organic materials of orange peel',
    reason: 'title of a publication, as printed',
  },
  {
    file: 'data/sources.csv',
    passage: 'organic matter digestibility',
    reason: 'title of a publication, as printed',
  },
  {
    file: 'data/sources.csv',
    passage: 'mineralization from organic amendments',
    reason: 'title of a publication, as printed',
  },
  {
    file: 'data/sources.csv',
    passage: 'Garden Organic',
    reason: 'name of an author and publisher',
  },
  {
    file: 'data/sources.csv',
    passage: 'Organic lawn clipping silage',
    reason: 'title of a publication, as printed',
  },
  {
    file: 'data/sources.csv',
    passage: 'National Organic Standards Board',
    reason: 'name of an author of sources',
  },
  {
    file: 'data/sources.csv',
    passage: 'Liquid organic fertilizer production',
    reason: 'title of a publication, as printed',
  },
  {
    file: 'data/sources.csv',
    passage: 'Journal of Recycling of Organic Waste',
    reason: 'name of a journal that published it',
  },
];

/** Every text of the program, whichever floor it stands on, and every cell of the data. */
const texts: readonly { readonly file: string; readonly texts: readonly string[] }[] = [
  ...codeUnder('src').map((source) => ({ file: source.file, texts: shownIn(source).map(({ text }) => text) })),
  ...filesUnder(['src'], /\.(html|svg|webmanifest)$/).map(({ file, text }) => ({
    file,
    texts: [text.replace(/<[^>]*>/g, ' ')],
  })),
  ...filesUnder(['data'], /\.csv$/).map(({ file, text }) => ({
    file,
    texts: (parseCsv(text, { columns: true }) as readonly Record<string, string>[]).flatMap((row) =>
      Object.entries(row).flatMap(([column, cell]) => (NEVER_SHOWN.includes(column) ? [] : [cell])),
    ),
  })),
];

describe('what is claimed', () => {
  it('is read from every floor, from the page, and from every table', () => {
    const from = (pattern: RegExp) => texts.filter(({ file, texts: said }) => pattern.test(file) && said.length > 0);
    for (const floor of ['engine', 'words/en', 'words/de', 'tasks', 'journal', 'web', 'cli']) {
      expect(from(new RegExp(`^src/${floor}/`)).length, floor).toBeGreaterThan(0);
    }
    expect(from(/\.html$/).length).toBeGreaterThan(0);
    expect(from(/^data\/(materials|excluded|sources)\.csv$/)).toHaveLength(3);
  });

  it('is nothing safe, sterile, proven or organic, in any language of the screens', () => {
    expect(texts.flatMap(({ file, texts: said }) => claimFaults(file, said, UNCLAIMED))).toEqual([]);
  });

  it('has no line on the list of passages that nothing needs, and none without its reason', () => {
    const idle = UNCLAIMED.filter(
      ({ file, passage }) =>
        !texts.some(
          (one) => one.file === file && one.texts.some((text) => text.includes(passage) && claimsIn(text)[0]),
        ),
    );
    expect(idle).toEqual([]);
    expect(UNCLAIMED.filter(({ reason }) => !/\w+ \w+ \w+/.test(reason))).toEqual([]);
  });

  it.each(['It is safe.', 'ORGANIC feed', 'proven, by us', 'Das ist sicher.', 'bio', 'ökologisch', 'a “sterile” jar'])(
    'is found in "%s"',
    (text) => {
      expect(claimFaults('a.ts', [text])).toHaveLength(1);
    },
  );

  it.each(['unsafe', 'inorganic', 'Versicherung', 'sichern', 'organic-matter', 'biology', 'improvement', 'Biomüll'])(
    'is not found in "%s"',
    (text) => {
      expect(claimFaults('a.ts', [text])).toEqual([]);
    },
  );

  it('is let pass in its own file and passage alone', () => {
    const allowed = [{ file: 'a.ts', passage: 'Board of Organic Rules', reason: 'the name of a publisher' }];
    expect(claimFaults('a.ts', ['by the Board of Organic Rules'], allowed)).toEqual([]);
    expect(claimFaults('b.ts', ['by the Board of Organic Rules'], allowed)).toHaveLength(1);
    expect(claimFaults('a.ts', ['our organic feed'], allowed)).toHaveLength(1);
  });
});

describe('the rule on words', () => {
  it.each([
    ['a text', "export const a = 'This is perfect for beds.';"],
    ['a template', ['const a = `It is $', '{b} and Safe`;'].join('')],
    ['words between tags', 'const a = <p>A miracle.</p>;'],
    ['a spoken attribute', "const a = <p aria-label='health  score' />;"],
    ['a value beside a field', "const a = { word: 'guaranteed' };"],
    ['a phrase with a no-break space', "const a = '100\\u00a0% sour';"],
    ['a hyphenated prefix', "const a = 'a super-feed';"],
  ])('finds %s', (_, text) => {
    expect(wordFaults({ file: 'planted.tsx', text })).not.toEqual([]);
  });

  it.each([
    ['a longer word', "const a = 'safety, imperfect, powerless, unsafe';"],
    ['a module name', "import { a } from './stream.ts'; export { b } from './parts/b.ts'; import('./parts/c.ts');"],
    ['a field', "const a = { level: 1, 'score': 2 }; a['level'];"],
    ['a comparison', "if (a === 'level') b();"],
    ['a machine attribute', "const a = <p class='stream' id='level' />;"],
    ['a type', "type A = 'level' | 'score';"],
    ['a comment', '// a safe bet'],
  ])('is content with %s', (_, text) => {
    expect(wordFaults({ file: 'planted.tsx', text })).toEqual([]);
  });

  it('leaves out an exception in its own file alone', () => {
    const exception = { file: 'a.ts', text: 'a level spoon', reason: 'a spoon struck off flat' };
    const text = "const a = 'a level spoon';";
    expect(wordFaults({ file: 'a.ts', text }, [exception])).toEqual([]);
    expect(wordFaults({ file: 'b.ts', text }, [exception])).toHaveLength(1);
    expect(wordFaults({ file: 'a.ts', text: "const a = 'a level field';" }, [exception])).toHaveLength(1);
  });
});
