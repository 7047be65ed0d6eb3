import { says } from './pass.ts'
import type { CUFF_PLAN_WORDS as English } from './plan-cuff.words.ts'

export const CUFF_PLAN_WORDS: typeof English = {
  slits: 'Die Ärmelschlitze einfassen',
  stitchSlit: (beside) =>
    says`Näh mit kurzem Stich um die Schlitzlinie, ${beside} daneben, oben spitz zulaufend.`,
  cutSlit: says`Schneide die Linie auf bis zum letzten Faden vor der Spitze.`,
  layStrip: (by) =>
    says`Zieh den Schlitz auseinander, bis er gerade liegt, leg den Streifen rechts auf rechts daran, die genähte Spitze an seine Kante, und näh ${by} von der Kante des Streifens.`,
  turnStrip: (by) =>
    says`Bügle die andere Kante des Streifens ${by} um, leg sie über die Naht und näh sie fest.`,
  foldStrip: says`Falte die Einfassung oben zur Hälfte und näh schräg darüber. Die vordere Kante kommt nach innen, die hintere steht darunter vor.`,
  pressSlit: says`mit der Spitze des Bügeleisens, die Naht in den Streifen.`,
  sewThenCut:
    'Erst nähen, dann schneiden, mit der Spitze einer kleinen Schere und von der Hand weg.',
  mirrored:
    'Die Ärmel sind gespiegelt: An beiden liegt die obere Kante näher an der vorderen Mitte.',
  interface: 'Einlage auf die Manschetten',
  fuse: says`Leg die Einlage ohne Nahtzugaben auf die linke Seite jeder Manschette und bügle sie auf.`,
  make: 'Die Manschetten nähen',
  turnUnder: says`Bügle die freie Längskante auf ihrer Nahtlinie nach links um.`,
  sewEnds: says`Falte die Manschette am Umbruch rechts auf rechts; näh beide Schmalkanten und am Ärmelende von C bis B.`,
  sewRing: says`Näh die Schmalkanten zusammen, bügle die Naht auseinander, falte den Ring am Umbruch und bügle ihn.`,
  turnOut: (trimmed) =>
    says`Schneide auf ${trimmed} zurück, die Ecken schräg ab, knips bis B ein, wende und forme die Ecken aus.`,
  pressCuff: says`die Naht ein wenig nach innen gerollt, den Umbruch scharf.`,
  iron: 'Dampf verbrüht: Forme die Ecken vor dem Bügeln aus, nicht über dem heißen Eisen.',
  set: 'Die Manschetten ansetzen',
  gatherRows: (inner, outer) =>
    says`Näh am Ärmelende zwei Reihen mit dem längsten Stich, ${inner} und ${outer} außerhalb der Nahtlinie.`,
  drawUp: (to) => says`Zieh sie auf ${to} zusammen und verteile die Weite gleichmäßig.`,
  matchSlit: says`Die vordere Schlitzkante, ihre Einfassung eingeschlagen, trifft das Ende A; die hintere Schlitzkante trifft das Passzeichen B, ihre Einfassung liegt auf dem Übertritt.`,
  matchSeam: says`Die Naht des Rings trifft die Ärmelnaht.`,
  sew: (by) =>
    says`Außenseite der Manschette und Ärmel rechts auf rechts, näh ${by} von der Kante.`,
  sewInside: says`Leg die umgebügelte Kante innen über die Naht und näh sie fest.`,
  pressSet: says`in die Manschette, nie quer über die Fältchen.`,
  buttons: 'Knopflöcher und Knöpfe der Manschetten',
  placeButton: says`Das Knopfloch kommt in das Ende, das oben liegt, auf halber Höhe; der Knopf auf das Ende darunter.`,
  loops: 'Schlingen und Knöpfe der Ärmelschlitze',
  sewLoop: says`Näh am Saum die Schlinge an die Kante, die oben liegt, und den Knopf an die andere.`,
  hemAtSlit:
    'Er endet am Schlitz: Schlag seine Enden bündig mit der Einfassung ein und näh sie zu.',
}
