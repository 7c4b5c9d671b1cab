// Wer vom Beet isst: the rules of en/eating.ts in German, for the can card.

import type { Values } from '#engine/rules/rule.ts';

const days = (v: Values) => `${Number(v.days)}\u00a0Tage`;
const picked = (v: Values) =>
  v.toPickDays === undefined
    ? 'wann geerntet wird, ist nicht bekannt'
    : `die Ernte ist in ${Number(v.toPickDays)}\u00a0Tagen`;

/** What may be done in place of what a rule stops. */
export const eatingInstead: Readonly<Record<string, string>> = {
  'eating-animal-on-leaves':
    'Auf den Boden eines Beetes gießen, das erst in 120 Tagen oder später geerntet wird, oder auf den Kompost, wie es die örtlichen Regeln erlauben.',
  'eating-animal-possible-on-leaves':
    'Auf den Boden gießen, an den Fuß dessen, was gekocht wird; oder den nächsten Ansatz mit Leitungswasser füllen.',
  'eating-immune-weak-raw-bed':
    'Nur wässern und mit Kompost oder Mulch düngen; den Ansatz auf Beete gießen, deren Ernte gekocht wird.',
};

export const eatingCautions: Readonly<Record<string, (values: Values) => string>> = {
  'eating-animal-on-leaves': () =>
    'Nie auf Blätter: in diesem Ansatz sind Mist, Fleisch, Tellerreste oder Kot. Auf den Boden gießen, mit den Tagen vor der Ernte, die das Beet verlangt.',
  'eating-animal-possible-on-leaves': () =>
    'Nicht auf Blätter: an das Wasser dieses Ansatzes können Tiere gekommen sein, oder etwas darin ist nicht benannt. Auf den Boden gießen.',
  'eating-immune-weak-raw-bed': () =>
    'Kein Guss auf dieses Beet: es wird roh gegessen, und jemand, der hier isst, hat ein schwaches Immunsystem. Das ist unsere Vorsicht, keine Vorschrift.',
  'eating-manure-picked-soon': (v) =>
    `Noch nicht auf dieses Beet: im Ansatz sind Mist, Fleisch, Tellerreste oder Kot, und ${picked(v)}. Die Vorschrift der USA für rohen Mist (7 CFR 205.203) verlangt ${days(v)}; örtliche Regeln können mehr verlangen.`,
  'eating-animal-possible-picked-soon': (v) =>
    `Noch nicht auf dieses Beet: es wird roh gegessen, ${picked(v)}, und Tiere können an den Ansatz gekommen sein. Wir verlangen ${days(v)} wie bei rohem Mist: unsere Vorsicht. Ein Beet, das gekocht wird, darf ihn haben.`,
  'eating-sold-picked-soon': (v) =>
    `Noch nicht auf dieses Beet: von hier wird verkauft, und ${picked(v)}. Ein Ansatz mit Zucker gilt in den USA als unbehandelt, auch wenn er lange genug sauer war. Als Maß verlangen wir ${days(v)}; frage nach den örtlichen Regeln.`,
  'eating-school-picked-soon': (v) =>
    `Mit diesem Beet warten: eine Klasse isst davon roh, und ${picked(v)}. Wir verlangen ${days(v)} vor der Ernte: unsere Vorsicht.`,
  'eating-sold-counts-raw': (v) =>
    `Von hier wird verkauft, darum zählt ${v.crop || 'dieses Beet'} als roh gegessen: das entscheidet, wer kauft.`,
  'eating-cooked-but-usually-raw': (v) =>
    `Gekocht eingetragen, meist aber roh gegessen: ${v.crop || 'dieses Beet'}. Alles kochen, oder auf dem Gartenblatt ändern.`,
  'eating-raw-but-rarely-raw': (v) =>
    `Roh eingetragen, selten aber roh gegessen: ${v.crop || 'dieses Beet'}. Wird alles gekocht, auf dem Gartenblatt ändern.`,
};
