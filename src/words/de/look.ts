// The look in plain German, with the same keys as the English: wet-hand places speak the keyholder's language.

import type { Values } from '#engine/rules/rule.ts';
import type { ChangeCode, ReasonCode, State } from '#engine/souring/reason.ts';
import type { LookWords, Strip } from '../en/look.ts';
import { changesDe, geruch, komma, reasonsDe } from './souring.ts';

const WEEKDAYS = ['So', 'Mo', 'Di', 'Mi', 'Do', 'Fr', 'Sa'];
const MONTHS = ['Jan.', 'Feb.', 'März', 'April', 'Mai', 'Juni', 'Juli', 'Aug.', 'Sept.', 'Okt.', 'Nov.', 'Dez.'];
const NBSP = '\u00a0';

/** "Do 18. Juni" of a local date; the year is named where it is not the reader's own. */
export function sagDatum(on: string, today: string): string {
  const [year = 0, month = 1, day = 1] = on.slice(0, 10).split('-').map(Number);
  const weekday = WEEKDAYS[new Date(Date.UTC(year, month - 1, day)).getUTCDay()];
  const text = `${weekday} ${day}.${NBSP}${MONTHS[month - 1]}`;
  return today.slice(0, 4) === on.slice(0, 4) ? text : `${text} ${year}`;
}

/** "4,2 bis 4,6", oder eine Zahl, wo beide gleich sind. */
function spanne(low: string, high: string): string {
  return low === high ? low : `${low} bis ${high}`;
}

const zustand: Readonly<Record<State, string>> = {
  souring: 'am Säuern',
  slow: 'langsam, nicht verloren',
  ready: 'fertig',
  doubtful: 'zweifelhaft',
  lost: 'verloren',
  unknown: 'unbekannt',
};

const strips: LookWords['strips'] = { sour: 'Sauer', nose: 'Nase', top: 'Oben', warmth: 'Wärme' };
const womit = { meter: 'mit dem Messgerät', strip: 'mit dem Streifen' } as const;
const oben: LookWords['surfaces'] = {
  clear: 'klar',
  bubbles: 'Blasen',
  'flat-white': 'flach weiß',
  'fuzzy-white': 'weißer Flaum',
  'coloured-fuzz': 'farbiger Flaum',
  larvae: 'Larven',
};

function aufgezählt(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} und ${words.at(-1)}`;
}

/** Keeps "Tag 6" and "pH 5,1" on one line. */
function unzerteilt(sentence: string): string {
  return sentence.replaceAll(/\b(Tag|pH) (?=\d)/g, `$1${NBSP}`);
}

const FRISCHE_LUFT =
  'Fühlt sich jemand unwohl: sofort an die frische Luft und den Notruf wählen. Nie jemandem nachgehen, der umgefallen ist: Hilfe rufen.';
/** Anteile in der Luft, in ppm. */
const ppm = (value: unknown) => `${Math.round(Number(value))}${NBSP}ppm`;

/** One sentence or two for each rule that may stand on the screen of a look. */
const cautions: LookWords['cautions'] = {
  'foul-closed-open-it-outdoors': (v) =>
    `Nicht drinnen öffnen und nicht allein. Geschlossen ins Freie tragen, Kinder und Hund fernhalten, mit dem Wind im Rücken und mit ausgestrecktem Arm arbeiten. Nie darüberbeugen. ${v.bulged ? 'Der Deckel wölbt sich: seitlich stehen und eine Klammer lösen, bis es nicht mehr zischt. ' : 'Ist der Deckel geklammert: seitlich stehen und erst eine Klammer lösen. '}Eine Stunde offen stehen lassen, bevor es ausgekippt wird. ${FRISCHE_LUFT}`,
  'foul-open-keep-off': () =>
    `Nicht darüberbeugen und nicht drinnen rühren. Im Freien auskippen, mit dem Wind im Rücken, nicht allein, Kinder und Hund fern. ${FRISCHE_LUFT}`,
  'foul-gas-under-the-lid': (v) =>
    Number.isFinite(Number(v.highPpm))
      ? `Unter dem Deckel könnten etwa ${ppm(v.likelyPpm)} Schwefelwasserstoff stehen, höchstens ${ppm(v.highPpm)}: geschätzt, nicht gemessen. Arbeitsplätze erlauben ${ppm(v.ceilingPpm)}; ${ppm(v.dangerPpm)} gelten als sofort lebensgefährlich.`
      : `Wie viel Schwefelwasserstoff unter dem Deckel steht, ist nicht bekannt. Handle, als wären es mehr als die ${ppm(v.dangerPpm)}, die als sofort lebensgefährlich gelten.`,
  'foul-gas-nose-fails': (v) =>
    `Verlass dich nicht auf die Nase: Ab etwa ${ppm(v.smellFailsPpm)} riecht sie Schwefelwasserstoff nicht mehr. Dass ein Geruch vergeht, heißt nicht, dass das Gas weg ist.`,
  'care-gloves-first-days': (v) =>
    `Bei den Blicken der ersten ${Number(v.days)} Tage Handschuhe tragen und danach die Hände waschen: Noch ist es nicht sauer.`,
  'care-larvae-cover': () =>
    'Larven: Fliegen kommen hinein. Abschöpfen und ein feines Tuch unter dem losen Deckel darüberbinden.',
  'hands-of-somebody-else': (v) =>
    `${v.pregnant ? (v.immuneWeak ? 'Jemand ist schwanger, und jemand wird leicht krank' : 'Jemand ist schwanger') : 'Jemand wird leicht krank'}: Andere übernehmen Blick, Abseihen und Sprühen.`,
  'hands-of-grown-ups': () =>
    'Schulgarten: Erwachsene öffnen, seihen ab, mischen und sprühen; die Kinder sehen mit einem Schritt Abstand zu.',
};

export const lookDe: LookWords = {
  cautions,
  instead: {
    'foul-closed-open-it-outdoors':
      'Zu zweit geschlossen ins Freie tragen, mit dem Wind im Rücken und ausgestrecktem Arm öffnen und eine Stunde offen lassen. Bist du allein: Menschen und Tiere fernhalten und mit Hilfe wiederkommen.',
  },
  levels: { stop: 'Halt', hold: 'Warten', caution: 'Mit Vorsicht', note: 'Gut zu wissen' },
  moreCautions: (count) => `${count} weitere Hinweise`,
  insteadLead: 'Stattdessen:',
  lang: 'de',
  title: 'Blick',
  skip: 'auslassen',
  date: sagDatum,
  day: (day) => `Tag ${day}`,
  pegDay: (peg, day) => `Pflock ${peg}, Tag ${day}`,
  strips,
  asks: {
    sour: 'Wie sauer ist es?',
    nose: 'Wonach riecht es?',
    top: 'Was ist oben?',
    warmth: 'Wie warm ist es?',
  },
  stripPads: 'Papierstreifen',
  pad: (ph) => `Streifen ${komma(ph)}`,
  ph: (ph) => komma(ph),
  meter: 'Messgerät',
  wholeBlock: (whole) => `${whole},`,
  meterWhole: (whole) => `Messgerät, ${whole} Komma etwas`,
  meterTenths: (whole) => `Messgerät, ${whole} Komma …`,
  meterBack: 'Zurück',
  meterOver: '8 oder mehr',
  lastReading: (ph, by, on) => `zuletzt ${komma(ph)} ${womit[by]}, ${on}`,
  someoneReads: 'Jemand anders liest ab',
  readByTag: (tag) => `abgelesen von ${tag}`,
  somebody: 'jemand',
  smells: geruch,
  surfaces: oben,
  noseOfAnother: 'Du riechst nach eigener Angabe nichts: Lass eine zweite Person riechen.',
  noseNote: 'Nase einer zweiten Person.',
  about: 'um',
  asLast: 'gleich',
  save: 'Aufschreiben',
  saveSkipping: (skipped: readonly Strip[]) => `Aufschreiben, ohne ${aufgezählt(skipped.map((one) => strips[one]))}`,
  nothingYet: 'Berühre, was du siehst. Was du auslässt, bleibt offen; nach der vierten Antwort wird es aufgeschrieben.',
  saving: 'Wird aufgeschrieben',
  verdict: (peg, state, held) => ({
    lead: `Pflock ${peg} ist`,
    word:
      state === 'ready' ? (held ? 'fertig und abgestanden.' : 'fertig, noch nicht abgestanden.') : `${zustand[state]}.`,
  }),
  advice: (state, held) => {
    if (state === 'souring') return 'Auf dem Weg. Noch nichts davon ausgießen.';
    if (state === 'slow') return 'Später als es sein sollte, aber auf dem Weg. Noch nichts davon ausgießen.';
    if (state === 'doubtful') return 'Binnen 24 Stunden noch einmal prüfen, bis dahin nichts ausgießen.';
    if (state === 'lost')
      return 'Nichts davon ausgießen. Mit trockenem Laub in den Kompost schichten, fern von Gräben und Brunnen, wie es die örtlichen Regeln verlangen.';
    if (state === 'unknown')
      return 'Niemand kann sagen, wie es jetzt ist, und das gilt nie als gut. Nichts davon ausgießen.';
    return held
      ? 'Die Kannenkarte sagt, wohin es darf.'
      : 'Nur für Gekochtes; nichts roh Gegessenes, bis es abgestanden ist.';
  },
  seen: ({ reading, readBy, smell, surface, temperature }) =>
    [
      reading && `pH${NBSP}${komma(reading.ph)}${NBSP}±${NBSP}${komma(reading.errorPh)} ${womit[reading.by]}`,
      readBy && `abgelesen von ${readBy}`,
      smell && (smell === 'cannot-smell' ? 'Nase: rieche nichts' : `Nase: ${geruch[smell]}`),
      surface && `oben: ${oben[surface]}`,
      temperature,
    ]
      .filter(Boolean)
      .join(', ')
      .replace(/^o/, 'O')
      .replace(/^a/, 'A'),
  tooWarm: (temperature) =>
    `${temperature} ist zu warm: heute in den Schatten stellen. Ab 35 °C leidet, was es säuert; unsere Vorsicht, ohne Quelle.`,
  secondNose: 'Noch hat niemand daran gerochen: Bitte eine zweite Person darum und schreibe es als eigenen Blick auf.',
  whyHeading: (state, held) =>
    `Warum ${state === 'ready' && held ? 'fertig und abgestanden' : zustand[state].split(',')[0]}`,
  changeHeading: 'Was das ändern würde',
  reason: (code: ReasonCode, values: Values) => unzerteilt(reasonsDe[code](values)),
  change: (code: ChangeCode, values: Values) => unzerteilt(changesDe[code](values)),
  nextLook: 'Nächster Blick',
  today: 'heute',
  noNextLook: 'Kein weiterer Blick ist nötig.',
  lookAgain: 'Noch ein Blick',
  toPeg: (peg) => `Zum Blatt von Pflock ${peg}`,
  toStrain: 'Abseihen',
  line: {
    ph: 'pH',
    day: 'Tag',
    late: 'ab hier zu spät',
    limits: { food: '4,6 Lebensmittelgrenze', ready: '4,2 zweimal: fertig', held: '4,0 zum Abstehen' },
    table: ['Tag', 'pH', 'Abgelesen'],
    caption: (peg) => `Messungen an Pflock ${peg}`,
    error: (ph, errorPh) => `pH ${komma(ph)} ± ${komma(errorPh)}`,
    by: (by, who) => `${womit[by]}, ${who}`,
    alternative: (peg, readings) =>
      readings.length === 0
        ? `Säurelinie von Pflock ${peg}: noch nichts gemessen.`
        : `Säurelinie von Pflock ${peg}: ${readings.join('; ')}.`,
    nothing: 'Hier steht die Säurelinie, sobald einmal gemessen wurde.',
    expected: 'erwartet',
    likely: 'wohl',
    today: 'heute',
    asTable: 'als Tabelle',
    expectedCaption: (peg) => `Erwartet von Pflock ${peg}, 8 von 10 Mal`,
    expectedTable: ['Tag', 'pH', 'Wärme'],
    expectedHead: 'Erwartet',
    between: (lowPh, highPh) => spanne(komma(lowPh), komma(highPh)),
    warmth: 'Flüssigkeit',
    betweenC: spanne,
    expectedToo: (lowPh, highPh) => ` Erwartet, 8 von 10 Mal: pH ${spanne(komma(lowPh), komma(highPh))}.`,
    spans: { ready: 'Fertig', held: 'Abgestanden' },
    span: (name, from, to) => (from === to ? `${name}: etwa ${from}` : `${name}: ${from} bis ${to}`),
    spanFrom: (name, from) => `${name}: ab ${from} oder später`,
    spanNot: (name, until) => `${name}: bis ${until} eher nicht`,
    spanWaits: (name) => `${name}: wird ausgerechnet`,
    insideOf: (lowPh, highPh) =>
      `Dort wurde es erwartet: pH${NBSP}${spanne(komma(lowPh), komma(highPh))}, 8 von 10 Mal.`,
    outsideOf: (lowPh, highPh) =>
      `Erwartet wurde es anderswo: pH${NBSP}${spanne(komma(lowPh), komma(highPh))}, 8 von 10 Mal. Im Zweifel noch einmal messen.`,
  },
  photo: {
    add: (count) => (count === 0 ? 'Foto dazu' : `Foto dazu (${count} von 3)`),
    heading: 'Fotos',
    note: 'Verkleinert und ohne den Ort der Aufnahme. Es bleibt auf diesem Gerät und in deinen Dateien.',
    alternative: (number) => `Foto ${number} zu diesem Blick`,
    unread: 'Diese Datei ist kein Bild, das der Browser lesen kann; erlaubt: ein Foto als JPEG, PNG oder WebP.',
    unkept: 'Das Foto konnte nicht behalten werden. Der Blick selbst ist aufgeschrieben.',
  },
  notKept:
    'Noch nicht aufgeschrieben: Der Browser wollte es nicht behalten. Deine Antworten stehen noch hier; versuch es noch einmal.',
  noPeg:
    'Unter dieser Adresse steht kein Pflock dieses Gartens. Befülle ein Gefäß, dann steht sein Pflock auf der Linie.',
  toLine: 'Zur Linie',
  ended: (peg, on) => `Pflock ${peg} wurde am ${on} geleert: Es gibt nichts mehr anzusehen.`,
  why: 'warum?',
  whyOf: 'warum? Tage und Grenzen',
  how: 'wie?',
  howHeading: 'So geht ein Blick',
  close: 'Schließen',
  steps: [
    'Im Freien oder bei offener Tür: Deckel vom Gesicht weg anheben.',
    'Streifen: eintauchen, abschütteln, so lange warten wie auf der Packung, bei Tageslicht vergleichen. Messgerät: spülen, eintauchen, warten bis es steht.',
    'Mit der Hand Luft zur Nase fächeln. Nie darüberbeugen, nie kosten.',
    'Von der Seite auf die Oberfläche schauen. Farbiger Flaum: nicht rühren, Deckel wieder drauf.',
    'Thermometer eine Hand tief in die Mitte halten. Deckel lose auflegen; Hände waschen.',
  ],
};
