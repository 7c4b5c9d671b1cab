// The reasons for the word of a batch and what would change it, in plain German; codes come from the engine's souring
// room, the same as for words/en/souring.ts. Nothing is computed here.

import type { Values } from '#engine/rules/rule.ts';
import type { Smell } from '#engine/souring/look.ts';
import type { ChangeCode, ReasonCode } from '#engine/souring/reason.ts';

/** German writes a comma before the tenths. */
export function komma(value: number, places = 1): string {
  return value.toFixed(places).replace('.', ',');
}

/** The words for what a nose finds. */
export const geruch: Readonly<Record<Smell, string>> = {
  grassy: 'grasig',
  sour: 'sauer',
  yeasty: 'hefig',
  vinegar: 'Essig',
  'butter-gone-off': 'ranzige Butter',
  ammonia: 'Ammoniak',
  egg: 'faule Eier',
  sewage: 'Jauche',
  'cannot-smell': 'rieche nichts',
};

const n = (values: Values, key: string) => Number(values[key]);
const ph = (values: Values, key: string) => `pH ${komma(n(values, key))}`;
const tag = (values: Values, key: string) => `Tag ${komma(n(values, key), Number.isInteger(n(values, key)) ? 0 : 1)}`;
const rund = (values: Values, key: string) => komma(n(values, key), 0);
const riecht = (values: Values, key: string) => geruch[values[key] as Smell] ?? String(values[key]);
const NBSP = '\u00a0';

/** One sentence for each reason. */
export const reasonsDe: Readonly<Record<ReasonCode, (values: Values) => string>> = {
  'coloured-fuzz': (v) =>
    `Farbiger Flaum an ${tag(v, 'day')}: das ist Schimmel. Nicht darüberbeugen, nicht rühren, nichts davon versprühen.`,
  'white-fuzz-twice': (v) => `Weißer Flaum kam wieder: an ${tag(v, 'firstDay')} und an ${tag(v, 'lastDay')}.`,
  'larvae-and-foul': (v) =>
    `Larven an ${tag(v, 'day')}, und an ${tag(v, 'smellDay')} roch es nach: ${riecht(v, 'smell')}.`,
  'foul-twice': (v) =>
    `Zweimal fauler Geruch: ${riecht(v, 'firstSmell')} an ${tag(v, 'firstDay')}, ${riecht(v, 'lastSmell')} an ${tag(v, 'lastDay')}.`,
  'foul-and-not-falling': (v) =>
    `An ${tag(v, 'day')} roch es nach: ${riecht(v, 'smell')}, bei ${ph(v, 'ph')}, und das fiel nicht.`,
  climbed: (v) =>
    `Es stieg von ${ph(v, 'fromPh')} an ${tag(v, 'fromDay')} auf ${komma(n(v, 'toPh'))} an ${tag(v, 'toDay')}.`,
  'not-readable': () => 'Ein Eintrag hat keinen brauchbaren Tag oder Säurewert. Berichtige ihn, dann frag noch einmal.',
  'no-acidity': () => 'Die Säure wurde nie gemessen. Der Geruch allein sagt es nicht.',
  'no-look': (v) => `Seit ${rund(v, 'days')} Tagen kein Blick; nach ${rund(v, 'afterDays')} weiß man nichts mehr.`,
  'foul-on-old-reading': (v) =>
    `An ${tag(v, 'day')} roch es nach: ${riecht(v, 'smell')}; die letzte Messung ist von ${tag(v, 'readingDay')}.`,
  'foul-once': (v) => `An ${tag(v, 'day')} roch es einmal nach: ${riecht(v, 'smell')}, bei ${ph(v, 'ph')}.`,
  'noses-differ': (v) =>
    `Zwei Nasen sind uneins: ${riecht(v, 'smell')} an ${tag(v, 'day')}, und binnen eines Tages nichts Faules.`,
  'readers-differ': (v) =>
    `Zwei haben beim selben Besuch verschieden abgelesen: ${ph(v, 'onePh')} und ${komma(n(v, 'otherPh'))}.`,
  'climbed-a-little': (v) =>
    `Es stieg von ${ph(v, 'fromPh')} an ${tag(v, 'fromDay')} auf ${komma(n(v, 'toPh'))} an ${tag(v, 'toDay')}.`,
  stuck: (v) =>
    `Spät dran, und seit ${tag(v, 'fromDay')} nicht unter ${ph(v, 'fromPh')} gefallen (jetzt ${komma(n(v, 'toPh'))}).`,
  'two-low-readings': (v) =>
    `Zwei Messungen von 4,2 oder weniger, mindestens zwei Tage auseinander: ${ph(v, 'firstPh')} an ${tag(v, 'firstDay')}, ${komma(n(v, 'lastPh'))} an ${tag(v, 'lastDay')}.`,
  'line-passed': (v) =>
    Number.isFinite(n(v, 'lineDay'))
      ? `Bei ${rund(v, 'temperatureC')}${NBSP}°C sollte es an ${tag(v, 'lineDay')} bei ${ph(v, 'linePh')} sein; an ${tag(v, 'day')} stand es bei ${ph(v, 'ph')}. Kälte macht es langsam.`
      : `Wie warm es steht, ist nicht bekannt; deshalb gilt ${ph(v, 'ph')} an ${tag(v, 'day')} als spät.`,
  falling: (v) => `Es fällt: ${ph(v, 'fromPh')} an ${tag(v, 'fromDay')}, ${komma(n(v, 'toPh'))} an ${tag(v, 'toDay')}.`,
  'not-falling-yet': (v) =>
    `Zwischen ${tag(v, 'fromDay')} (${ph(v, 'fromPh')}) und ${tag(v, 'toDay')} (${komma(n(v, 'toPh'))}) ist es nicht gefallen.`,
  'one-reading': (v) => `Erst bei einem Besuch gemessen, ${ph(v, 'ph')}: das zeigt noch keine Richtung.`,
  'acid-since': (v) =>
    `Seit ${tag(v, 'sinceDay')} bei 4,0 oder weniger; abgestanden nach ${rund(v, 'holdDays')} Tagen, ab ${tag(v, 'fromDay')}.`,
  'too-cold-to-hold': (v) =>
    Number.isFinite(n(v, 'temperatureC'))
      ? `Bei ${rund(v, 'temperatureC')}${NBSP}°C ist keine Dauer bekannt, die zum Abstehen reicht.`
      : 'Wie warm es steht, ist nicht bekannt; deshalb gilt es nicht als abgestanden.',
  held: (v) => `Abgestanden: bei 4,0 oder weniger seit ${tag(v, 'sinceDay')}, ${rund(v, 'holdDays')} Tage und mehr.`,
  'white-fuzz-once': (v) => `Ein weißes Flöckchen an ${tag(v, 'day')}: abschöpfen und in 24 Stunden wieder hinsehen.`,
  'flat-white': (v) =>
    `Eine flache weiße Haut an ${tag(v, 'day')}: Hefe. Abschöpfen, Luft fernhalten, die Säure noch einmal messen.`,
  larvae: (v) => `Larven an ${tag(v, 'day')}: mit einem Tuch unter losem Deckel abdecken.`,
  'reading-is-old': (v) => `Die letzte Messung ist ${rund(v, 'days')} Tage alt: beim nächsten Blick messen.`,
  'above-expected': (v) =>
    `Weniger sauer als erwartet: ${ph(v, 'ph')} an ${tag(v, 'day')}, und nach den Blicken davor war ${komma(n(v, 'lowPh'))} bis ${komma(n(v, 'highPh'))} zu erwarten. Es kann kälter stehen, ärmer an Zucker sein oder langsamer anlaufen als angegeben.`,
  'below-expected': (v) =>
    `Saurer als erwartet, und das ist gut, wenn die Messung stimmt: ${ph(v, 'ph')} an ${tag(v, 'day')}, und nach den Blicken davor war ${komma(n(v, 'lowPh'))} bis ${komma(n(v, 'highPh'))} zu erwarten. War das Messgerät gespült und in dieser Woche eingestellt?`,
  'buffer-rises': (v) =>
    `Säure fehlt: bei ${ph(v, 'ph')} an ${tag(v, 'toDay')} erwartet das Modell etwa ${komma(n(v, 'timesFactor'))}-mal so viel Säure, wie diese Pflanzen binden können. Das kann ein frühes Zeichen von Fäulnis sein: riech daran und miss noch einmal.`,
};

/** One sentence for each thing that would change the word. */
export const changesDe: Readonly<Record<ChangeCode, (values: Values) => string>> = {
  'two-low-readings-make-it-ready': () =>
    'Zwei Messungen von 4,2 oder weniger (3,7 mit dem Streifen), 48 Stunden auseinander, würden es fertig machen.',
  'line-makes-it-slow': (v) =>
    `Eine Messung über ${komma(n(v, 'linePh'))} nach ${tag(v, 'lineDay')} würde es langsam machen.`,
  'foul-word-makes-it-doubtful': () => 'Ein fauler Geruch würde es zweifelhaft machen, ein zweiter verloren.',
  'climb-makes-it-lost': () => 'Ein Anstieg um mehr als 0,3 würde es verloren machen.',
  'time-makes-it-held': (v) => `Bleibt es bis ${tag(v, 'fromDay')} bei 4,0 oder weniger, ist es abgestanden.`,
  'acid-makes-it-held': () =>
    'Nur Zeit bei pH 4,0 oder weniger, an einem Platz von 10 °C oder mehr, lässt es abstehen. Bis dahin: nur Gekochtes.',
  'second-nose-decides': () => 'Eine zweite Nase binnen 24 Stunden entscheidet: wieder faul, dann ist es verloren.',
  'second-reading-decides': () => 'Eine zweite Messung binnen 24 Stunden entscheidet.',
  'reading-makes-it-known': () => 'Ein Blick mit Messung würde es wieder bekannt machen.',
  'reading-in-band-answers': () =>
    'Eine nächste Messung im erwarteten Band würde beantworten, was an dieser seltsam ist.',
  'nothing-brings-it-back': () =>
    'Kein späterer Blick holt es zurück; einen falschen Eintrag muss zurücknehmen, wer ihn gemacht hat.',
};
