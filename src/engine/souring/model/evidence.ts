// How well a look fits one of the draws: acidity by the error of its tool and of the model, nose and top by how often
// such a word is said of such a liquid. A look that fits no draw counts little against any, so that one slip of a
// meter never decides.

import { hasNose, isFoul, type Look } from '../look.ts';
import { at, type Course } from './course.ts';

/** Error of a reading, one standard deviation. @memory a meter set that week 0.1, a strip 0.3 */
export const READING_SD = { meter: 0.1, strip: 0.3 } as const;
/** Error of the model at one moment, one standard deviation. @memory added in quadrature */
export const MODEL_SD = 0.15;
/** Share of readings that are slips, and how many times wider they lie. @practice our caution, no source */
const SLIP = { share: 0.05, wider: 4 } as const;

/** Sourness at which half of the noses would say a sour word, and over what span. @practice our caution, no source */
const SOUR_WORDS = { ph: 5, span: 0.4 } as const;
/** Butyric acid at which half of the noses would say a foul word. @memory smelt at about 0.1 g/L */
const FOUL_WORDS_G_PER_L = 0.2;
/** A word is said for no reason this often, and missed this often. @practice our caution, no source */
const WORD_SLIP = 0.15;

/** Error of a reading against the true course of a batch. @arithmetic quadrature */
export function readingSd(by: Look['by']): number {
  return Math.hypot(READING_SD[by === 'meter' ? 'meter' : 'strip'], MODEL_SD);
}

/** ln of the likelihood of a reading that is offPh by so much. @arithmetic normal with a wide share of slips */
function offLn(offPh: number, sdPh: number): number {
  const near = ((1 - SLIP.share) / sdPh) * Math.exp(-0.5 * (offPh / sdPh) ** 2);
  const wide = (SLIP.share / (sdPh * SLIP.wider)) * Math.exp(-0.5 * (offPh / (sdPh * SLIP.wider)) ** 2);
  return Math.log(near + wide);
}

const share = (x: number) => 1 / (1 + Math.exp(-x));
const slipped = (chance: number) => WORD_SLIP + (1 - 2 * WORD_SLIP) * chance;

/** Chance that a nose says a foul word of a run on a day. @practice our caution, no source */
function foulChance(run: Course, day: number): number {
  const butyric = at(run, day, 'butyricGPerL');
  return slipped(butyric / (butyric + FOUL_WORDS_G_PER_L));
}

/**
 * How well one look fits one run, as the natural logarithm of a likelihood.
 *
 * Acidity: normal error of tool and model, with 5 % of slips four times as wide. Nose: a foul word against butyric
 * acid; sour words against pH. Neither can outweigh a reading: a word is wrong 15 times in 100.
 * @practice our caution, no source, apart from the errors of the tools
 * @checked test/property/forecast.test.ts
 */
export function fitLn(run: Course, look: Look): number {
  if (!Number.isFinite(look.day)) return 0;
  let sum = 0;
  if (look.ph !== undefined && Number.isFinite(look.ph))
    sum += offLn(look.ph - at(run, look.day, 'ph'), readingSd(look.by));
  if (hasNose(look)) {
    const foul = foulChance(run, look.day);
    if (isFoul(look)) sum += Math.log(foul);
    else {
      const sour = slipped(share((SOUR_WORDS.ph - at(run, look.day, 'ph')) / SOUR_WORDS.span));
      sum += Math.log(1 - foul) + Math.log(look.smell === 'grassy' ? 1 - sour : sour);
    }
  }
  return sum;
}
