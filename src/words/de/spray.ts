// Die Stunde: the rules of en/spray.ts in German, for the can card: soil, rain, wind and warmth of the hour, and what a
// leaf bears.

import type { Values } from '#engine/rules/rule.ts';
import { besideLimit, figure, stunden, unit } from './figures.ts';

const n = (values: Values, key: string) => Number(values[key]);
const INPUTS: Readonly<Record<string, string>> = {
  wind: 'der Wind',
  temperature: 'die Temperatur',
  rain: 'der nächste Regen',
  sun: 'Sonnenaufgang und Sonnenuntergang',
  humidity: 'die Luftfeuchte',
  soil: 'wie feucht der Boden ist',
};

function listed(words: Values[string] | undefined): string {
  return String(words ?? '')
    .split(' ')
    .map((word) => INPUTS[word] ?? word)
    .join(', ');
}

const windSeen = (v: Values, seen: string) =>
  v.windKmPerH === undefined ? seen : `Der Wind hat ${besideLimit(n(v, 'windKmPerH'), n(v, 'limitKmPerH'), 'km/h')}.`;

/** One sentence or two for each rule of the hour. */
export const hourCautions: Readonly<Record<string, (values: Values) => string>> = {
  'pour-soil-dry': (v) =>
    `${v.cracked ? 'Der Boden hat Risse: der Guss liefe an den Wurzeln vorbei.' : 'Der Boden ist trocken: der Guss kann die Wurzeln verbrennen.'} Erst mit Wasser gießen, einziehen lassen, dann mit dem Ansatz.`,
  'pour-soil-soaked': () => 'Der Boden ist durchnässt: der Guss liefe ab. Warten, bis kein Wasser mehr steht.',
  'pour-heavy-rain-soon': (v) =>
    `Starker Regen in den nächsten ${stunden(n(v, 'withinH'))} (${unit(n(v, 'rainMm'), 'mm')}): er wäscht den Guss fort. Nach dem Regen gießen.`,
  'pour-hot': (v) =>
    `Heiß, ${besideLimit(n(v, 'temperatureC'), n(v, 'belowC'), '°C', 0)}: bis zum Abend oder frühen Morgen warten, unter ${besideLimit(n(v, 'belowC'), n(v, 'temperatureC'), '°C', 0)}.`,
  'pour-windy': (v) =>
    `Windig, ${unit(n(v, 'windKmPerH'), 'km/h', 0)}: tief und ohne Brause gießen, nicht über Blätter.`,
  'pour-hour-not-known': (v) =>
    `Nicht bekannt: ${listed(v.notTold)}. Fühle den Boden einen Finger tief und sieh nach, ob in ${stunden(n(v, 'withinH'))} starker Regen kommt, bevor du gießt.`,
  'leaf-acid-over': (v) =>
    `Zu sauer für Blätter: ${besideLimit(n(v, 'acidMmolPerL'), n(v, 'limitMmolPerL'), 'mmol/L')} ätzende Säure bei pH ${figure(n(v, 'phLow'), 1)}, die Grenze ist ${besideLimit(n(v, 'limitMmolPerL'), n(v, 'acidMmolPerL'), 'mmol/L')}. Stärker verdünnen oder auf den Boden gießen.`,
  'leaf-alcohol-over': (v) =>
    `Zu viel Alkohol für Blätter: ${besideLimit(n(v, 'percent'), n(v, 'limitPercent'), '%')}, die Grenze ist ${besideLimit(n(v, 'limitPercent'), n(v, 'percent'), '%')}. Stärker verdünnen oder auf den Boden gießen.`,
  'leaf-acid-not-known': () =>
    'Wie viel Säure und Alkohol auf die Blätter käme, ist nicht bekannt. Drei Pflanzen zwei Tage vor den anderen sprühen, oder auf den Boden gießen.',
  'spray-windy': (v) =>
    `${windSeen(v, 'Zweige oder Äste bewegen sich: das kann zu viel Wind sein.')} Über ${unit(n(v, 'limitKmPerH'), 'km/h', 0)} treibt ein Sprühnebel auf andere Beete und zu Nachbarn. Auf weniger Wind warten oder auf den Boden gießen.`,
  'spray-still-air': (v) =>
    `${windSeen(v, 'Die Luft scheint stillzustehen.')} Unter ${unit(n(v, 'limitKmPerH'), 'km/h', 0)} hängen feine Tropfen in der Luft und wandern. Warten, bis Blätter rascheln.`,
  'spray-inversion': (v) =>
    `Jetzt kann kalte Luft unter wärmerer liegen, feine Tropfen wandern darin weit. Warten bis ${stunden(n(v, 'afterSunriseH'))} nach Sonnenaufgang; ${stunden(n(v, 'beforeSunsetH'))} vor Sonnenuntergang aufhören.`,
  'spray-hot': (v) =>
    `Zu warm zum Sprühen: ${besideLimit(n(v, 'temperatureC'), n(v, 'belowC'), '°C', 0)}, nötig sind weniger als ${besideLimit(n(v, 'belowC'), n(v, 'temperatureC'), '°C', 0)}. Auf eine kühlere Stunde warten.`,
  'spray-frost': (v) =>
    `Nicht bei Frost: ${unit(n(v, 'temperatureC'), '°C', 0)}. Warten, bis es wärmer ist und die Blätter getaut sind.`,
  'spray-past-the-cool-morning': (v) =>
    `Keine Temperatur bekannt: nur die ersten ${stunden(n(v, 'mostAfterSunriseH'))} nach Sonnenaufgang zählen als kühl. Im Schatten messen; nötig sind weniger als ${unit(n(v, 'belowC'), '°C', 0)}.`,
  'spray-rain-soon': (v) =>
    `${n(v, 'untilRainH') > 0 ? `Regen in ${stunden(n(v, 'untilRainH'))}` : 'Regen jetzt'} wüsche es ab. Sprühen, wenn es ${stunden(n(v, 'dryH'))} trocken bleibt.`,
  'spray-dries-too-slowly': () =>
    'Die Luft ist zu feucht: Tropfen hängen und treiben ab. Warten, bis sie trockener ist.',
  'spray-dries-too-fast': () =>
    'Die Luft ist zu trocken: Tropfen trocknen, bevor das Blatt sie aufnimmt. Auf eine feuchtere Stunde warten.',
  'spray-hour-not-known': (v) =>
    `Noch nicht. Nicht bekannt: ${listed(v.notTold)}. Hinausschauen oder die Vorhersage eintragen; bis dahin gilt die Stunde nicht als gut zum Sprühen.`,
  'spray-drying-near-limit': () =>
    'Die Luft ist fast zu feucht oder zu trocken zum Sprühen. Wenig sprühen, mit groben Tropfen, oder warten.',
  'spray-humidity-not-told': () =>
    'Wie schnell Tropfen trocknen, ist ohne Luftfeuchte und Temperatur nicht bekannt. Aufhören, wenn sie in etwa einer Minute trocknen.',
  'spray-by-rule-of-thumb': (v) =>
    `Nach Augenmaß und Tageszeit beurteilt: ${listed(v.byThumb)}. Vorhersage oder Messung sagen es genauer.`,
  'spray-forecast-old': (v) =>
    `Diese Vorhersage ist ${Number.isFinite(n(v, 'ageH')) ? `${stunden(n(v, 'ageH'))} alt` : 'von unbekanntem Alter'}. Vor dem Anfang zum Himmel sehen und den Wind fühlen.`,
  'spray-window-open': () =>
    'Nichts Bekanntes spricht jetzt gegen das Sprühen. Welke Pflanzen und offene Blüten auslassen, Abstand zum Nachbarn, Augen und Mund bedecken, drei Pflanzen zwei Tage vor den anderen.',
};
