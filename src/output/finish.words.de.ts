import type { Mm } from '../units/length.ts'
import type { FINISH_NAMES as Names, FINISH_PASSES as Passes } from './finish.words.ts'
import { says } from './pass.ts'

export const FINISH_NAMES: typeof Names = {
  plainSeam: 'einfache Naht, auseinandergebügelt',
  frenchSeam: 'französische Naht',
  flatFelled: 'Kappnaht',
  armholeSeam: 'Armlochnaht',
  cuffSeam: 'Manschettennaht',
  zip: 'Naht mit Reißverschluss',
  rolledEdge: 'schmaler Rollsaum',
  doubleFoldHem: 'doppelter Saum',
  biasStrip: 'Schrägstreifen',
  facing: 'geformter Beleg',
  muslinSeam: 'Probenaht, breit zum Auslassen',
  muslinEdge: 'Probekante',
  muslinHem: 'Probesaum, tief zum Auslassen',
  cutOnLine: 'auf der Linie geschnitten',
}

/** Nominative, with article. */
export const THE_FINISH: Readonly<Record<keyof typeof Names, string>> = {
  plainSeam: 'die einfache Naht',
  frenchSeam: 'die französische Naht',
  flatFelled: 'die Kappnaht',
  armholeSeam: 'die Armlochnaht',
  cuffSeam: 'die Manschettennaht',
  zip: 'die Naht mit Reißverschluss',
  rolledEdge: 'der schmale Rollsaum',
  doubleFoldHem: 'der doppelte Saum',
  biasStrip: 'der Schrägstreifen',
  facing: 'der geformte Beleg',
  muslinSeam: 'die Probenaht',
  muslinEdge: 'die Probekante',
  muslinHem: 'der Probesaum',
  cutOnLine: 'der Schnitt auf der Linie',
}

export const FINISH_PASSES: typeof Passes = {
  plainSeam: (by: Mm) => [
    says`Nähe rechts auf rechts, ${by} von der Kante.`,
    says`Versäubere jede Kante für sich.`,
    says`Bügle die Naht auseinander.`,
  ],
  frenchSeam: (first: Mm, trimmed: Mm, second: Mm) => [
    says`Nähe links auf links, ${first} von der Kante.`,
    says`Schneide auf ${trimmed} zurück und bügle zu einer Seite.`,
    says`Nähe rechts auf rechts, die erste Naht im Bruch, ${second} vom Bruch.`,
    says`Bügle zum Rücken hin.`,
  ],
  flatFelled: (by: Mm, trimmed: Mm) => [
    says`Nähe links auf links, ${by} von der Kante.`,
    says`Schneide die hintere Lage auf ${trimmed} zurück.`,
    says`Lege die vordere Lage zur Hälfte darum und bügle flach.`,
    says`Steppe entlang dem Bruch ab.`,
  ],
  armholeSeam: (by: Mm, inside: Mm, trimmed: Mm) => [
    says`Nähe Ärmel und Armloch rechts auf rechts, ${by} von der Kante.`,
    says`Nähe unter dem Arm eine zweite Reihe, ${inside} neben der ersten in der Zugabe, und schneide dort auf ${trimmed} zurück.`,
    says`Versäubere beide Kanten zusammen und bügle sie in den Ärmel.`,
  ],
  cuffSeam: (by: Mm, trimmed: Mm) => [
    says`Nähe rechts auf rechts, ${by} von der Kante.`,
    says`Schneide auf ${trimmed} zurück und bügle in die Manschette.`,
  ],
  zip: (row: Mm, by: Mm) => [
    says`Nähe entlang der Öffnung eine Reihe, ${row} von der Kante, damit sie sich nicht dehnt.`,
    says`Nähe die Naht unter der Öffnung, ${by} von der Kante.`,
    says`Bügle die Zugabe entlang der Öffnung um und setze den Reißverschluss ein.`,
  ],
  rolledEdge: (first: Mm, deep: Mm) => [
    says`Nähe ${first} von der Kante eine Reihe, schlage auf ihr nach links um und bügle.`,
    says`Nähe knapp neben dem Bruch und schneide den Rest neben der Reihe weg.`,
    says`Schlage noch einmal ${deep} tief um und nähe auf der zweiten Reihe.`,
  ],
  doubleFoldHem: (depth: Mm) => [
    says`Bügle die Kante ${depth} tief nach links um.`,
    says`Schlage auf der Saumlinie noch einmal ${depth} tief um und bügle.`,
    says`Nähe entlang dem inneren Bruch.`,
  ],
  biasStrip: (wide: Mm, longer: Mm, by: Mm) => [
    says`Schneide einen Streifen genau im Schräglauf, ${wide} breit und ${longer} länger als die Kante.`,
    says`Nähe rechts auf rechts, ${by} von der Kante. Schneide ein, wo sie hohl ist.`,
    says`Lege den Streifen nach links, schlage seine Kante ${by} ein und nähe ihn fest.`,
  ],
  facing: (by: Mm, one: Mm, other: Mm) => [
    says`Nähe rechts auf rechts, ${by} von der Kante.`,
    says`Schneide die eine Lage auf ${one}, die andere auf ${other} zurück. Schneide ein, wo die Kante hohl ist.`,
    says`Steppe die Zugabe knapp neben der Naht auf den Beleg, wende und bügle.`,
  ],
  muslinSeam: [
    says`Nähe mit dem längsten Stich auf der markierten Linie.`,
    says`Bügle auseinander.`,
  ],
  muslinEdge: [
    says`Nähe auf der markierten Linie eine Reihe, damit die Kante ihre Länge behält. Lass sie flach.`,
  ],
  muslinHem: (by: Mm) => [
    says`Lass ihn flach oder schlage ihn auf der markierten Linie ${by} um und hefte.`,
  ],
}
