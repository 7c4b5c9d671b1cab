// Die Kannenkarte auf Deutsch: the can card in German, with the same keys as en/can-card.ts; the compiler checks them.
// The sentences of every rule that may stand on the card are here too.

import type { Measure } from '#engine/can/measures.ts';
import type { SpoonCountry } from '#engine/quantity/units.ts';
import type { Values } from '#engine/rules/rule.ts';
import type { CanCardWords, RatioSaid } from '../en/can-card.ts';
import { eatingCautions, eatingInstead } from './eating.ts';
import { besideLimit, figure, NBSP, stunden, unit } from './figures.ts';
import { hourCautions } from './spray.ts';

const n = (values: Values, key: string) => Number(values[key]);
const peg = (v: Values) => (v.peg ? `Pflock ${v.peg}` : 'dieser Ansatz');
const Peg = (v: Values) => (v.peg ? `Pflock ${v.peg}` : 'Dieser Ansatz');

const ml = (volumeMl: number) => unit(volumeMl, 'mL', volumeMl >= 20 ? 0 : volumeMl >= 2 ? 1 : 2);
const ratio = ({ n: parts, reading }: RatioSaid) =>
  reading === 'in' ? `1 Teil in ${figure(parts)} Teilen fertig` : `1 zu ${figure(parts)} Wasser`;
const EC = 'dS/m';
/** Whose spoon, and what it holds: a table and a tea spoon of one country do not hold the same. */
const spoons: Readonly<Record<'tablespoon' | 'teaspoon', Readonly<Record<SpoonCountry, string>>>> = {
  tablespoon: { us: 'US', metric: 'metrisch, 15 mL', uk: 'alt-britisch, 17,8 mL', au: 'australisch, 20 mL' },
  teaspoon: { us: 'US', metric: 'metrisch, 5 mL', uk: 'alt-britisch, 5,9 mL', au: 'australisch, 5 mL' },
};

const NUTRIENTS: Readonly<Record<string, string>> = { nG: 'Stickstoff', pG: 'Phosphor', kG: 'Kalium' };

const WEEKDAYS = ['So', 'Mo', 'Di', 'Mi', 'Do', 'Fr', 'Sa'];
const MONTHS = ['Jan.', 'Feb.', 'März', 'Apr.', 'Mai', 'Juni', 'Juli', 'Aug.', 'Sept.', 'Okt.', 'Nov.', 'Dez.'];

function date(on: string, today: string): string {
  const [year = 0, month = 1, day = 1] = on.slice(0, 10).split('-').map(Number);
  const weekday = WEEKDAYS[new Date(Date.UTC(year, month - 1, day)).getUTCDay()];
  const text = `${weekday} ${day}.${NBSP}${MONTHS[month - 1]}`;
  return today.slice(0, 4) === on.slice(0, 4) ? text : `${text} ${year}`;
}

/** The date from which a batch is sour for long enough, where one is known. */
const heldFrom = ({ heldOn }: Values) =>
  heldOn === undefined
    ? ''
    : ` Lange genug sauer ab ${date(String(heldOn), String(heldOn))}, wenn nichts dazwischenkommt.`;

const ago = (days: number) => (days === 0 ? 'Heute' : days === 1 ? 'Gestern' : `Vor ${unit(days, 'Tagen', 0)}`);

function measure(one: Measure): string {
  const rounded = Math.round(one.errorPercent * 10) / 10;
  const off = rounded === 0 ? '' : ` (${rounded > 0 ? '+' : '−'}${unit(Math.abs(rounded), '%', 1)})`;
  switch (one.tool) {
    case 'jug':
      return `Messbecher: ${unit(one.count, 'mL', 0)}${off}`;
    case 'syringe':
      return `Spritze 20 mL: zusammen ${unit(one.count, 'mL', 1)}${off}`;
    case 'tablespoon':
    case 'teaspoon':
      return `${one.countText} ${one.tool === 'tablespoon' ? 'Esslöffel' : 'Teelöffel'} (${spoons[one.tool][one.spoon]})${off}`;
    case 'mix':
      return `eine Vormischung für ${one.count} Kannen: ${ml(one.concentrateMl)} Ansatz, mit Wasser auf ${ml(one.mixMl)}, davon ${ml(one.eachMl)} in jede Kanne`;
  }
}

const cautions: Readonly<Record<string, (values: Values) => string>> = {
  ...eatingCautions,
  'batch-none': () =>
    'Kein Ansatz genannt: das sind nur Mengen. Gieße nur, was einen Pflock hat und als fertig beurteilt wurde.',
  'batch-no-peg': () =>
    'Keine Menge für ein Glas ohne Pflock. Miss den pH-Wert und rieche mit ausgestrecktem Arm, niemals kosten. Kennt es niemand, kommt es auf den Kompost, fern von Gräben und Brunnen.',
  'batch-lost': (v) =>
    `Keine Menge: ${peg(v)} ist verdorben. Auf kein Beet gießen. Mit trockenem Laub auf den Kompost schichten, fern von Gräben und Brunnen, nach den örtlichen Regeln.`,
  'batch-unknown': (v) =>
    `Keine Menge: wie es um ${peg(v)} steht, ist nicht bekannt, und das zählt nie als gut. Sieh nach und miss den Säuregrad, oder auf den Kompost damit.`,
  'batch-souring': (v) =>
    `Warten: ${peg(v)} säuert noch. Gieße erst, wenn zwei Messungen im Abstand von 48 Stunden ihn fertig zeigen.`,
  'batch-slow': (v) => `Warten: ${peg(v)} ist langsam und noch nicht sauer genug. Ein wärmerer Platz hilft.`,
  'batch-doubtful': (v) =>
    `Warten: ${peg(v)} ist zweifelhaft. Hole innerhalb von 24 Stunden eine zweite Nase und eine zweite Messung.`,
  'batch-not-held': (v) =>
    `${Peg(v)} ist fertig, aber noch nicht lange genug bei pH 4,0 oder darunter. Bis dahin nur auf Beete, deren nächste Ernte gekocht wird oder mehr als ${unit(n(v, 'days'), 'Tage', 0)} entfernt ist.${heldFrom(v)}`,
  'batch-not-held-raw-bed': (v) =>
    `Noch nicht auf dieses Beet: es wird roh gegessen, und ${peg(v)} ist noch nicht lange genug sauer. Warte, oder gieße ein Beet, das gekocht oder erst in mehr als ${unit(n(v, 'days'), 'Tagen', 0)} geerntet wird.${heldFrom(v)}`,
  'raw-bed-picked-soon': (v) =>
    v.toPickDays === undefined
      ? `Wann wird hier geerntet? Was roh gegessen wird, wartet ${unit(n(v, 'days'), 'Tage', 0)} nach dem Gießen auf den Boden; örtliche Regeln können mehr verlangen.`
      : `Mit diesem Beet warten: es wird roh gegessen und in ${unit(n(v, 'toPickDays'), 'Tagen', 0)} geerntet. Gieße nur, wenn die Ernte ${unit(n(v, 'days'), 'Tage', 0)} oder mehr entfernt ist; örtliche Regeln können mehr verlangen.`,
  'leaf-eaten-raw': () =>
    'Nie auf Blätter von etwas, das roh gegessen wird. Auf den Boden gießen, an den Fuß der Pflanzen.',
  'aim-too-weak': () => 'Dieser Ansatz ist auch unverdünnt zu schwach für dieses Ziel.',
  'aim-water-too-salty': () => 'Schon das Wasser hat mehr Salz, als das Ziel erlaubt. Nimm Regenwasser.',
  'salt-never': (v) =>
    `Keine Menge in dieser Stärke: sie brächte ${besideLimit(n(v, 'ecDsPerM'), n(v, 'limitDsPerM'), EC)} Salz, mehr als ${besideLimit(n(v, 'limitDsPerM'), n(v, 'ecDsPerM'), EC)}. Stärker verdünnen.`,
  'salt-over': (v) =>
    `Zu salzig: ${besideLimit(n(v, 'ecDsPerM'), n(v, 'limitDsPerM'), EC)}, die Grenze ist ${besideLimit(n(v, 'limitDsPerM'), n(v, 'ecDsPerM'), EC)}. Stärker verdünnen.`,
  'salt-near': (v) =>
    `Nahe an der Salzgrenze von ${unit(n(v, 'limitDsPerM'), EC)}. Erst an drei Pflanzen versuchen, oder stärker verdünnen.`,
  'crop-salt-over': (v) =>
    `Zu salzig für ${v.crop}: die Kanne hat ${besideLimit(n(v, 'ecDsPerM'), n(v, 'limitDsPerM'), EC)}, die Grenze ist ${besideLimit(n(v, 'limitDsPerM'), n(v, 'ecDsPerM'), EC)}. Stärker verdünnen.`,
  'crop-salt-near': (v) =>
    `Nahe an dem, was ${v.crop} verträgt: ${unit(n(v, 'limitDsPerM'), EC)}. Stärker verdünnen oder gut nachgießen.`,
  'crop-salt-not-known': (v) =>
    `Wie viel Salz ${v.crop} verträgt, steht nicht in der Tabelle; nur die allgemeinen Grenzen wurden geprüft.`,
  'salt-not-measured-strong': (v) =>
    `Miss zuerst das Salz im Ansatz, oder verdünne 1 in ${figure(n(v, 'n'), 0)} oder schwächer. Die salzigste veröffentlichte Flüssigkeit brächte ${besideLimit(n(v, 'mostEcDsPerM'), n(v, 'limitDsPerM'), EC)}, die Grenze ist ${besideLimit(n(v, 'limitDsPerM'), n(v, 'mostEcDsPerM'), EC)}.`,
  'salt-not-measured': (v) =>
    `Das Salz im Ansatz wurde nicht gemessen. Die salzigste veröffentlichte Flüssigkeit brächte ${besideLimit(n(v, 'mostEcDsPerM'), n(v, 'limitDsPerM'), EC)}, unter der Grenze von ${besideLimit(n(v, 'limitDsPerM'), n(v, 'mostEcDsPerM'), EC)}.`,
  'too-sour-for-dry-soil': (v) =>
    `Erst den Boden anfeuchten: die Kanne liegt bei pH ${besideLimit(n(v, 'ph'), n(v, 'limitPh'), '', 1)} und darf unter ${besideLimit(n(v, 'limitPh'), n(v, 'ph'), '', 1)} nur auf feuchten Boden.`,
  'outside-pour-ph': (v) =>
    `Die Kanne liegt zwischen pH ${figure(n(v, 'lowPh'), 1)} und ${figure(n(v, 'highPh'), 1)}. Auf feuchten Boden gießen, erst an drei Pflanzen versuchen.`,
  'nozzle-clogs': (v) => `Die Düse von ${unit(n(v, 'nozzleMm'), 'mm')} verstopft: feiner sieben, oder gießen.`,
  'eaten-not-told': (v) =>
    `Wird das Beet roh oder gekocht gegessen? Roh heißt: nur auf den Boden, ${unit(n(v, 'days'), 'Tage', 0)} vor der Ernte.`,
  'can-water-not-told': () =>
    'Das Wasser wurde nicht beschrieben; wie sauer und salzig die Kanne ist, wurde nicht berechnet.',
  'ratio-is-practice': (v) =>
    `Die Stärke (1 ${v.reading === 'to' ? 'zu' : 'in'} ${figure(n(v, 'n'))}) ist üblich, ohne Quelle. Erst an drei Pflanzen versuchen.`,
  'use-today': () => 'Heute verbrauchen, den Rest auf den Boden. Verdünnt hält die Säure nichts mehr.',
  'bed-gets-none': (v) =>
    v.leaf
      ? 'Kein Guss, solange hier Blatt roh gegessen wird: so sagt es der Garten.'
      : 'Kein Guss auf dieses Beet: so sagt es der Garten.',
  'bed-nothing-grows': () => 'Hier wächst gerade nichts. Gieße, wenn wieder gepflanzt ist.',
  'bed-size-not-told': () => 'Wie groß ist es? Fläche oder Töpfe auf dem Gartenblatt eintragen.',
  'bed-eaten-not-told': () => 'Roh oder gekocht? Auf dem Gartenblatt eintragen. Bis dahin zählt es als roh gegessen.',
  'bed-fed-just-now': (v) =>
    `${n(v, 'fedDays') < 1 ? 'Heute' : 'Gestern'} schon gegossen. Frage die anderen, bevor es zweimal geschieht.`,
  'bed-fed-lately': (v) =>
    `Warte auf die nächste Runde, ${date(String(v.on), String(v.today))}. ${ago(n(v, 'fedDays'))} wurde hier voll gegossen.`,
  ...hourCautions,
  'care-wash-before-picking': () => 'Hände, Kanne und Messbecher waschen, bevor du etwas erntest.',
};

/** What may be done in place of every stop that may stand on the card. */
const instead: Readonly<Record<string, string>> = {
  ...eatingInstead,
  'batch-no-peg':
    'Frage die anderen und binde den Pflock wieder an; kennt es niemand, kommt es auf den Kompost, fern von Gräben und Brunnen.',
  'batch-lost': 'Mit trockenem Laub auf den Kompost schichten, fern von Gräben und Brunnen.',
  'batch-unknown': 'Sieh noch einmal nach und miss den Säuregrad; oder auf den Kompost damit.',
  'leaf-eaten-raw':
    'Auf den Boden gießen, an den Fuß der Pflanzen, aus einem abgestandenen Ansatz, mit den Tagen vor der Ernte, die das Beet verlangt.',
  'aim-too-weak': 'Ein kleineres Ziel nehmen, öfter gießen, oder den Rest mit Kompost oder Mulch decken.',
  'aim-water-too-salty': 'Mit Regenwasser strecken, oder eine höhere Grenze eingeben, wenn die Kultur sie verträgt.',
  'salt-never': 'Stärker verdünnen und das Salz der Kanne messen, bevor gegossen wird.',
  'bed-gets-none':
    'Mit reinem Wasser gießen und mit Kompost oder Mulch düngen; oder ändern, was für das Beet eingestellt ist.',
};

export const canCard: CanCardWords = {
  language: 'de',
  cautions,
  instead,
  insteadLead: 'Stattdessen:',
  moreCautions: (count) => `${count} weitere Hinweise`,
  passable: {
    'bed-gets-none': 'kein Guss auf dieses Beet',
    'salt-never': 'zu viel Salz für jede Pflanze',
    'eating-animal-possible-on-leaves': 'Tiere am Wasser, auf Blätter',
    'eating-immune-weak-raw-bed': 'schwaches Immunsystem und ein Beet, das roh gegessen wird',
  },
  passAsk: (what) => `„${what}“ übergehen? Nur mit einem Grund, den die anderen beurteilen können.`,
  passBecause: 'Weil',
  passTooShort: 'Nenne den Grund in Worten, mindestens drei. Er bleibt beim Guss und am Beet stehen.',
  passAct: 'Übergehen',
  passedMark: (what, reason, on) => `Übergangen am ${on}: ${what}, weil: ${reason}`,
  passedHere: (what, reason) => `Übergangen: ${what}, weil: ${reason}`,
  passTakeBack: 'Doch nicht übergehen',
  states: {
    souring: 'säuert',
    slow: 'langsam',
    ready: 'fertig',
    doubtful: 'zweifelhaft',
    lost: 'verdorben',
    unknown: 'unbekannt',
  },
  held: 'lange genug sauer',
  notHeld: 'noch nicht lange genug sauer',
  levels: { stop: 'Halt', hold: 'Warten', caution: 'Mit Vorsicht', note: 'Gut zu wissen' },
  litres: (volumeL) => unit(volumeL, 'L', volumeL >= 10 || Number.isInteger(volumeL) ? undefined : 1),
  ml,
  mlFine: (volumeMl) => unit(Math.round(volumeMl * 2) / 2, 'mL', 1),
  ratio,
  date,

  choose: 'Was wird gegossen, und wo?',
  noBeds: 'Hier stehen die Beete in der Reihenfolge des Rundgangs, jedes mit ja, warten oder nie.',
  startBeds: 'Beete eintragen',
  noLiquid:
    'Die Kannenkarte steht hier, sobald ein Ansatz abgeseiht ist: mit Ansatz, Beet und der Menge für jede Kanne.',
  startLiquid: 'Zur Linie',
  jar: 'Ein Glas ohne Pflock',
  showMore: (count: number) => `${count} weitere zeigen`,
  fromWhich: 'Aus welchem Ansatz?',
  bottles: 'Flaschen',
  drained: 'abgeseiht, nicht abgefüllt',
  left: (low, high) => (low === high ? `noch ${low}` : `noch ${low} bis ${high}`),
  pegWord: (number) => `Pflock ${number}`,
  heldFrom: (on) => `lange genug sauer ab ${on}`,
  whichCan: 'Welche Kanne?',
  otherCan: 'Eine andere Kanne',
  canSize: 'Was sie bis zur Marke fasst',
  canSizeHint: 'zum Beispiel 10 L oder 2 gal',
  canKeep: 'Kanne merken',
  canNoSize: 'Größe unbekannt',
  canName: (typed) => `Kanne ${typed}`,
  gallon: { us: 'US-Gallone', imperial: 'britische Gallone' },
  gallonAsk: 'Wessen Gallone? Für diese Kanne wird nur einmal gefragt.',
  howStrong: 'Wie stark?',
  matched: (r, leafGPerL) => `${ratio(r)}: ${unit(leafGPerL, 'g', 1)} Pflanze im gegossenen Liter`,
  matchedNote: (wantedGPerL) =>
    `Angeglichen an eine veröffentlichte Nesseljauche mit ${unit(wantedGPerL, 'g', 1)} im Liter. Dass das gut düngt, hat kein Versuch gezeigt.`,
  noMatch: 'Die Pflanzen in diesem Ansatz sind nicht bekannt. Gib ein Verhältnis ein.',
  typedStrength: 'Ein eigenes Verhältnis',
  typedHint: 'zum Beispiel 1 in 100 oder 1 to 40',
  twoReadings: 'Das lässt sich auf zwei Arten lesen. Welche ist gemeint?',
  reading: (r, concentrateMl, canL) => `${ratio(r)}: ${ml(concentrateMl)} in ${unit(canL, 'L')}`,
  whichBed: 'Welches Beet?',
  roundSum: (volumeL, concentrateMl) =>
    `Alle mit Ja: ${unit(volumeL, 'L', 1)}, darin ${ml(concentrateMl)} aus dem Ansatz.`,
  verdicts: { yes: 'Ja', hold: 'Warten', never: 'Nie' },
  reasonsOf: (name) => `Warum: ${name}`,
  noneSaid: 'Nichts spricht dagegen.',
  fedDays: (days) => (days === 0 ? 'heute gegossen' : days === 1 ? 'gestern gegossen' : `vor ${days} Tagen gegossen`),

  bedLine: (name, size) => `${name}, ${size}`,
  area: (areaM2) => unit(areaM2, 'm²'),
  pots: (count) => `${count}${NBSP}${count === 1 ? 'Topf' : 'Töpfe'}`,
  onSoil: (crop) => `${crop}: auf den Boden, nicht auf Blätter`,
  onSoilNoCrop: 'Auf den Boden, nicht auf Blätter',
  per: { m2: 'Liter auf einen Quadratmeter', pot: 'Liter in einen Topf' },
  less: 'weniger',
  more: 'mehr',
  into: 'in die Kanne',
  of: (number) => `aus Pflock ${number}`,
  fullJugs: (count, jugMl) => `${count} volle Becher zu ${ml(jugMl)}, dann bis`,
  fillTo: 'dann auffüllen auf',
  fillToPart: 'dann nur auffüllen auf',
  canOf: (i, count) => `Kanne ${i} von ${count}`,
  canPoured: 'gegossen',
  canHalf: 'halb gegossen',
  jug: (jugMl) => `${jugMl >= 1000 ? unit(jugMl / 1000, 'L') : ml(jugMl)}-Becher`,
  syringe: 'Spritze 20 mL',
  fullSyringes: (count) => `${count} volle Spritze${count === 1 ? '' : 'n'}, dann bis`,
  fullSize: 'wahre Größe',
  fullSizeAt: (height) => `wahre Größe, ${height} über dem Becherboden`,
  notFullSize: 'nicht wahre Größe: nach den Marken gehen',
  mm: (heightMm) => unit(heightMm, 'mm', 0),
  fromFloor: 'vom Boden',
  drawn: 'Zeichnung der Menge',
  measure,
  orWith: 'oder mit',
  spoonAsk: 'Löffel stehen hier, sobald der Garten sagt, aus welchem Land sie sind.',
  spoonCountries: { us: 'US', metric: 'metrisch', uk: 'alt-britisch', au: 'australisch' },
  twoStep: (first, water, then) =>
    `In zwei Schritten: ${ml(first)} Ansatz in ${ml(water)} Wasser rühren, davon ${ml(then)} in die Kanne.`,
  poured: (i) => `Kanne ${i} ist gegossen`,
  half: 'Nur die Hälfte',
  stopHere: 'Hier aufhören und das Gegossene eintragen',
  undoCan: (i) => `Kanne ${i} war nicht gegossen`,
  useToday: 'Heute verbrauchen, den Rest auf den Boden.',
  notEnough: (leftL, wantedMl) =>
    `Nur noch ${unit(leftL, 'L', 2)} da, dieses Beet will ${ml(wantedMl)}. Weniger Liter gießen oder einen anderen Ansatz nehmen.`,
  soilAsk: 'Der Boden unter dem Mulch',
  soils: { moist: 'feucht', dry: 'trocken', cracked: 'trocken mit Rissen', soaked: 'durchnässt' },
  airAsk: 'Die Luft jetzt',
  airs: {
    still: 'still, Blätter hängen',
    'leaves-rustle': 'Blätter rascheln',
    'twigs-move': 'Zweige bewegen sich',
    'branches-move': 'Äste bewegen sich',
  },
  wayAsk: 'Wie wird es gegeben?',
  ways: { soil: 'auf den Boden', leaf: 'auf die Blätter' },
  onLeaf: (crop) => `${crop}: auf die Blätter, nichts davon roh gegessen`,
  leafSteps:
    'Blätter benetzen, bis sie gerade tropfen; Augen und Mund bedecken. Nicht, wer schwanger ist oder leicht krank wird.',
  hours: {
    pourStrip: 'Stunden zum Gießen auf feuchten Boden',
    sprayStrip: 'Stunden zum Benetzen der Blätter',
    now: 'jetzt',
    open: 'offen',
    drawn: (name, stretches) => `${name}: ${stretches}`,
    noneOpen: 'keine Stunde offen',
    notJudged: 'Mit dem Wetter lassen sich die Stunden beurteilen.',
    next: (on, hour, today) => `${on === today ? 'heute' : date(on, today)}, ${String(hour).padStart(2, '0')}:00`,
    by: {
      hours: 'Nach den Stunden einer Vorhersage.',
      day: 'Nach den wenigen Angaben zum Tag.',
      nothing: 'Kein Wetter bekannt: nur Faustregeln.',
    },
    age: (ageH) => (Number.isNaN(ageH) ? 'Ihr Alter ist nicht bekannt.' : `Sie ist ${stunden(ageH)} alt.`),
    sun: {
      place: 'Sonnenaufgang und Sonnenuntergang nach dem Ort des Gartens.',
      told: 'Sonnenaufgang und Sonnenuntergang wie eingetragen.',
      none: 'Sonnenaufgang und Sonnenuntergang sind nicht bekannt: Ort oder Zeiten eintragen.',
    },
    typeIt: 'Wetter eintragen',
  },
  pickAsk: 'Wann wird wieder geerntet?',
  picks: {
    soon: 'in weniger als 14 Tagen',
    later: 'in 14 Tagen oder später',
    'after-21': 'in 21 Tagen oder später',
    'after-90': 'in 90 Tagen oder später',
    far: 'in mehr als 120 Tagen',
  },
  animalAsk: (peg) => `Warum Tiere an Pflock ${peg} gekommen sein können:`,
  animalWhys: {
    manure: 'Mist kam in den Ansatz',
    meat: 'Fleisch, Fisch oder Milchprodukte kamen in den Ansatz',
    plate: 'Gekochtes oder Tellerreste kamen in den Ansatz',
    droppings: 'in seinem Wasser wurde Kot gesehen',
    compost: 'Kompost kam in den Ansatz',
    'open-water': 'sein Wasser kam von einem Dach, aus einem Graben, einem Teich oder von einer anderen offenen Stelle',
    'water-not-told': 'woher sein Wasser kam, ist nicht eingetragen',
    starter: 'er wurde mit einem solchen Ansatz gestartet',
    'starter-not-told': 'womit er gestartet wurde, ist nicht eingetragen',
    'scraps-not-named': 'etwas darin steht nicht in der Liste der Reste',
  },
  waterAsk: (peg) => `Woher kam das Wasser in Pflock ${peg}?`,
  waterFrom: {
    tap: 'Leitung',
    butt: 'Regentonne',
    well: 'Brunnen',
    ditch: 'Graben',
    pond: 'Teich',
    bought: 'gekauft',
    other: 'anderswoher',
  },
  waterSaved: 'Danke. Das Gartenbuch sagt jetzt, woher das Wasser kam.',
  noDose: 'Keine Menge',
  goWhere: {
    bed: 'Dieses Beet gibt es hier nicht. Wähle eines.',
    liquid: 'Sage zuerst, aus welchem Ansatz.',
    strength: 'Sage zuerst, wie stark.',
    size: 'Trage die Größe des Beets ein.',
    can: 'Sage zuerst, welche Kanne.',
    sprayer: 'Trage den Sprüher und was er fasst auf dem Gartenblatt ein.',
    reasons: 'Warum, und was zu tun ist:',
  },
  toChoose: 'Ansatz, Kanne und Stärke wählen',
  toPlot: 'Zum Garten',
  toShelf: 'Zum Regal',
  toPeg: (number) => `Zu Pflock ${number}`,
  otherBed: 'Ein anderes Beet',
  toLine: 'Zur Linie',
  saving: 'Wird eingetragen',
  notSaved:
    'Noch nicht eingetragen: der Browser hat es abgelehnt. Die Kannen bleiben hier stehen; noch einmal versuchen.',
  tryAgain: 'Noch einmal',
  done: (volumeL, concentrateMl) => `${volumeL} gegossen, darin ${concentrateMl} aus dem Ansatz`,
  brought: (figures) => {
    const given = figures.filter(({ likely }) => figure(likely) !== '0');
    const said = given.map(
      ({ what, low, likely, high }) =>
        `${unit(likely, 'g')} (${figure(low)} bis ${figure(high)}) ${NUTRIENTS[what] ?? what}`,
    );
    return said.length === 0 ? '' : `Das Beet bekam etwa ${said.join('; ')}.`;
  },
  cansHere: 'Die Kannen dieses Gartens',
  why: 'warum?',
  whyOf: (what) => `warum? ${what}`,
  dose: 'die Menge',
  howOpen: 'wie?',
  close: 'Schließen',
  workingHeading: 'Die Rechnung',
  how: 'Wie eine Kanne gemischt und gegossen wird',
  howSteps: [
    'Flasche sacht schwenken und das Gas ablassen, weg vom Gesicht.',
    'Becher bis zur Marke füllen, Augen auf gleicher Höhe.',
    'In die Kanne geben, dann mit Wasser bis zu ihrer Marke auffüllen.',
    'Tief auf feuchten Boden gießen, an den Fuß der Pflanzen, nicht auf Blätter.',
    'Heute verbrauchen. Becher und Kanne spülen, Hände waschen.',
  ],
  holds: 'Was zu beachten ist',
  noHolds: 'Für dieses Beet gilt kein Warten.',
  set: 'Becher in wahrer Größe zeigen',
  setHow: 'Lege eine Bankkarte auf den Umriss und ändere ihn, bis beide gleich groß sind. Das bleibt auf diesem Gerät.',
  setBore: 'Innenbreite deines Bechers',
  setWider: 'breiter',
  setNarrower: 'schmaler',
  setDone: 'Es passt',
  setForget: 'Nicht mehr in wahrer Größe',
  card: 'Bankkarte',
};
