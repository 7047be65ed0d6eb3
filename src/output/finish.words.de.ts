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
    says`Näh rechts auf rechts, ${by} von der Kante.`,
    says`Versäubere jede Kante für sich.`,
    says`Bügle die Naht auseinander.`,
  ],
  frenchSeam: (first: Mm, trimmed: Mm, second: Mm) => [
    says`Näh links auf links, ${first} von der Kante.`,
    says`Schneide auf ${trimmed} zurück und bügle zu einer Seite.`,
    says`Näh rechts auf rechts, die erste Naht im Bruch, ${second} vom Bruch.`,
    says`Bügle zum Rücken hin.`,
  ],
  flatFelled: (by: Mm, trimmed: Mm) => [
    says`Näh links auf links, ${by} von der Kante.`,
    says`Schneide die hintere Lage auf ${trimmed} zurück.`,
    says`Leg die vordere Lage zur Hälfte darum und bügle flach.`,
    says`Stepp entlang dem Bruch ab.`,
  ],
  armholeSeam: (by: Mm, inside: Mm, trimmed: Mm) => [
    says`Näh Ärmel und Armloch rechts auf rechts, ${by} von der Kante.`,
    says`Näh unter dem Arm eine zweite Naht, ${inside} neben der ersten in der Zugabe, und schneide dort auf ${trimmed} zurück.`,
    says`Versäubere beide Kanten zusammen und bügle sie in den Ärmel.`,
  ],
  cuffSeam: (by: Mm, trimmed: Mm) => [
    says`Näh rechts auf rechts, ${by} von der Kante.`,
    says`Schneide auf ${trimmed} zurück und bügle in die Manschette.`,
  ],
  zip: (row: Mm, by: Mm) => [
    says`Näh entlang der Öffnung eine Stütznaht, ${row} von der Kante, damit sie sich nicht dehnt.`,
    says`Näh die Naht unter der Öffnung, ${by} von der Kante.`,
    says`Bügle die Zugabe entlang der Öffnung um und setz den Reißverschluss ein.`,
  ],
  rolledEdge: (first: Mm, deep: Mm) => [
    says`Stepp ${first} neben der Kante entlang, schlag die Kante an dieser Naht nach links um und bügle.`,
    says`Stepp knapp neben dem Bruch und schneide den Rest neben dieser Naht weg.`,
    says`Schlag noch einmal ${deep} tief um und stepp auf der zweiten Naht.`,
  ],
  doubleFoldHem: (depth: Mm) => [
    says`Bügle die Kante ${depth} tief nach links um.`,
    says`Schlag auf der Saumlinie noch einmal ${depth} tief um und bügle.`,
    says`Näh entlang dem inneren Bruch.`,
  ],
  biasStrip: (wide: Mm, longer: Mm, by: Mm) => [
    says`Schneide einen Streifen genau im schrägen Fadenlauf, ${wide} breit und ${longer} länger als die Kante.`,
    says`Näh rechts auf rechts, ${by} von der Kante. Schneide ein, wo sie hohl ist.`,
    says`Leg den Streifen nach links, schlag seine Kante ${by} ein und näh ihn fest.`,
  ],
  facing: (by: Mm, one: Mm, other: Mm) => [
    says`Näh rechts auf rechts, ${by} von der Kante.`,
    says`Schneide die eine Lage auf ${one}, die andere auf ${other} zurück. Schneide ein, wo die Kante hohl ist.`,
    says`Stepp die Zugabe knapp neben der Naht auf den Beleg, wende und bügle.`,
  ],
  muslinSeam: [
    says`Näh mit dem längsten Stich auf der markierten Linie.`,
    says`Bügle auseinander.`,
  ],
  muslinEdge: [
    says`Näh auf der markierten Linie eine Stütznaht, damit die Kante ihre Länge behält. Lass sie flach.`,
  ],
  muslinHem: (by: Mm) => [
    says`Lass ihn flach oder schlag ihn auf der markierten Linie ${by} um und hefte.`,
  ],
}
